import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PairFindings } from '../../src/findings/findings.ts';
import { isGap, type VerdictId } from '../../src/findings/verdict.ts';
import { answerInShort, answerSentences, howMuch } from '../../src/prose/answer.ts';
import { comparativeOf } from '../../src/prose/comparatives.ts';
import { cautions } from '../../src/prose/mind.ts';
import { answerClause, gapNumbers, pairSentence } from '../../src/prose/pairSentence.ts';
import { luckSentence, reachSentences } from '../../src/prose/reachSentences.ts';
import type { UnitSystem } from '../../src/prose/readerUnits.ts';
import type { Telling } from '../../src/prose/telling.ts';
import { toldChecks } from '../../src/prose/english/checks.ts';
import { metricIds, type MetricId } from '../../src/trade/metrics.ts';
import { changes, groups } from '../specimen/examples.ts';
import { metricOf, tellingFor, waysToComeOut, type Told } from './tellings.ts';

/** Every sentence about a metric that a report prints. */
function allSentences(telling: Telling): readonly string[] {
  return [
    ...telling.findings.metrics.flatMap((metric) => [
      ...answerSentences(metric, telling),
      ...metric.pairs.flatMap((pair) => [
        pairSentence(pair, metric, telling),
        gapNumbers(pair, metric, telling),
        `${answerClause(pair, metric, telling)}.`,
      ]),
      ...howMuch(metric, telling),
      ...[luckSentence(metric, telling) ?? []].flat(),
      ...reachSentences(metric, telling),
      ...toldChecks(metric, telling).flatMap(({ lines }) => lines),
    ]),
    ...cautions(telling),
    answerInShort(telling),
  ];
}

/** Never said of a gap, whatever it is (the last: never of one that cannot be told). */
const forbidden: readonly RegExp[] = [
  /\bsignifican/i,
  /\bprove[sdn]?\b/i,
  /guarantee/i,
  /you will/i,
  /\b(best|worst|winner|wins?|beats?|crush\w*|bombs?|upgrade|must-have|game-changing)\b/i,
  /no difference/i,
  /\bcontender\b/i,
  /\bverdict\b/i,
  /drift (was )?(not )?found/i,
];

/** What is wrong with a sentence as a piece of text; empty where nothing is. */
function faultsOf(words: string): readonly string[] {
  const faults: readonly (readonly [string, boolean])[] = [
    ['a hole', /undefined|null|NaN|Infinity|\[object/.test(words)],
    ['blanks or stops', / {2}|^ | $|\.\.|,,|;;| [.,;:]|\( | \)|,\.|;\.|:\./.test(words)],
    ['no end', !/[.!?]$/.test(words)],
    [
      'a hyphen for a minus, or a minus before nothing',
      /(^|[^\p{L}\d])-\d|−0(?![.\d])|−0\.0+(?!\d)/u.test(words),
    ],
    ...forbidden.map((word) => [`${word}`, word.test(words)] as const),
  ];
  return faults.flatMap(([fault, found]) => (found ? [`${fault}: ${words}`] : []));
}

function expectWellFormed(words: string): void {
  expect(faultsOf(words)).toEqual([]);
}

const systems: readonly UnitSystem[] = ['yards', 'metres'];

test.each(waysToComeOut)(
  '$name: well formed in every metric, either way round, in both systems',
  ({ told, design }) => {
    const faults = metricIds.flatMap((metric) => {
      const sides: readonly (Told['better'] | null)[] =
        metric === 'carry' || metric === 'spin_rate' ? ['more', 'less', 'neither'] : [null];
      return systems.flatMap((system) =>
        sides.flatMap((better) =>
          [false, true].flatMap((turned) => {
            const own = metricOf({ metric, ...told, ...(better == null ? {} : { better }), turned });
            return allSentences(
              tellingFor([own], { system, ...(design === undefined ? {} : { design }) }),
            ).flatMap(faultsOf);
          }),
        ),
      );
    });
    expect(faults).toEqual([]);
  },
);

describe('would the answer change', () => {
  test.each(changes)('$name', ({ told, metric = {} }) => {
    const own = metricOf(told, metric);
    for (const words of allSentences(tellingFor([own]))) expectWellFormed(words);
  });
});

describe('how much, of many contenders without a gap', () => {
  const said = (name: string, change: (pair: PairFindings) => PairFindings = (pair) => pair): string => {
    const metric = groups.find((group) => group.name === name)?.metric;
    if (metric === undefined) throw new Error(`no group ${name}`);
    return howMuch({ ...metric, pairs: metric.pairs.map(change) }, tellingFor([metric])).join(' ');
  };

  // The widest interval of all pairs reaches 10 yards, see tellings.ts.
  test('how far any two could be apart, once', () => {
    expect(said('nobody behind')).toBe(
      'Any two could be up to 10 yards apart; more would not fit these shots.',
    );
  });

  test('not where a pair was not judged, nor where shots of one turn are alike', () => {
    expect(
      said('nobody behind', (pair) => (pair.a === 'c' ? { ...pair, estimate: null, ci: null } : pair)),
    ).toMatch(/^From .* with Alder to /);
    expect(said('nobody behind', (pair) => ({ ...pair, overlays: ['visits-alike'] }))).toMatch(
      /^From .* with Alder to /,
    );
  });
});

describe('names are text, whatever stands in them', () => {
  const odd = [
    'A&B <x>',
    '7 Iron, #2',
    "O'Leary's",
    '\u200fראש\u200f',
    'C.',
    'a|b',
    '9.0°',
    '{{ mean }}',
    '*bold*',
  ];

  test.each(odd)('%s', (name) => {
    for (const { told, design } of waysToComeOut) {
      const own = metricOf({ metric: 'carry', ...told });
      const options = { names: { a: name, b: 'Birch' }, ...(design === undefined ? {} : { design }) };
      const plain = { ...options, names: { a: 'Alder', b: 'Birch' } };
      const [words, usual] = [options, plain].map((one) => allSentences(tellingFor([own], one)));
      // the same sentence with the other name, letter by letter
      expect(words).toEqual(usual?.map((sentence) => sentence.replaceAll('Alder', name)));
    }
  });
});

describe('the answer', () => {
  const clauseOf = (told: Told, design = {}): string => {
    const metric = metricOf(told);
    const [pair] = metric.pairs;
    return pair === undefined ? '' : answerClause(pair, metric, tellingFor([metric], { design }));
  };
  const rowOf = (told: Told, design = {}): string => {
    const metric = metricOf(told);
    const [pair] = metric.pairs;
    return pair === undefined ? '' : pairSentence(pair, metric, tellingFor([metric], { design }));
  };

  // The printed words of each verdict, credit and check
  test.each<readonly [Told, string]>([
    [{ metric: 'carry', verdict: 'clear' }, 'Alder clearly farther than Birch.'],
    [{ metric: 'carry', verdict: 'clear', turned: true }, 'Birch clearly farther than Alder.'],
    [{ metric: 'carry', verdict: 'clear', shots: [7, 12] }, 'First look: Alder clearly farther than Birch.'],
    [{ metric: 'carry', verdict: 'clear', shots: [8, 8] }, 'Alder clearly farther than Birch.'],
    [{ metric: 'carry', verdict: 'size-unsure' }, 'Alder farther than Birch, size unsure.'],
    [{ metric: 'carry', verdict: 'maybe-small' }, 'Alder farther than Birch, size unsure.'],
    [{ metric: 'carry', verdict: 'small' }, 'Alder and Birch: no gap that matters.'],
    [{ metric: 'carry', verdict: 'level' }, 'Alder and Birch: no gap that matters.'],
    [{ metric: 'carry', verdict: 'too-close' }, 'Alder or Birch: cannot tell.'],
    [
      { metric: 'carry', verdict: 'not-judged', shots: [12, 4] },
      'Birch: not judged, four shots are too few.',
    ],
    [{ metric: 'carry', verdict: 'clear', overlays: ['leans'] }, 'Leans to Alder over Birch, not settled.'],
    [{ metric: 'spin_rate', verdict: 'clear', better: 'less' }, 'Birch clearly lower in spin than Alder.'],
    [{ metric: 'ball_speed', verdict: 'size-unsure' }, 'Alder faster off the face than Birch, size unsure.'],
  ])('%j', (told, words) => {
    expect(rowOf(told)).toBe(words);
  });

  test('with open cause', () => {
    const told: Told = { metric: 'carry', verdict: 'clear', open: true, overlays: ['one-after-another'] };
    expect(rowOf(told, { order: 'one-after-another', sequence: ['b', 'a'] })).toBe(
      'Alder, hit last, went farther than Birch, hit first; the cause is open.',
    );
  });

  test('credits nobody where the cause is open, and says why in the same sentence', () => {
    for (const { told, design } of waysToComeOut.filter((way) => way.told.open === true)) {
      for (const words of [
        rowOf({ metric: 'carry', ...told }, design),
        clauseOf({ metric: 'carry', ...told }, design),
      ]) {
        expect(words).not.toContain('clearly');
        expect(words).toMatch(/cause is open|could hide/);
        expect(words).toMatch(
          /hit last|hit first|one after another|order of the shots is not known|hit later|drifted|few turns|few shots at a time/,
        );
      }
    }
  });

  test('is no stronger than its verdict', () => {
    const strength = (words: string): number =>
      /clearly/.test(words) ? 3 : /farther than/.test(words) ? 2 : /no gap that matters/.test(words) ? 1 : 0;
    const most: Readonly<Record<VerdictId, number>> = {
      clear: 3,
      'size-unsure': 2,
      'maybe-small': 2,
      small: 1,
      level: 1,
      'too-close': 0,
      'not-judged': 0,
    };
    for (const { told, design } of waysToComeOut) {
      const whole = { metric: 'carry' as const, ...told };
      for (const words of [rowOf(whole, design), clauseOf(whole, design)]) {
        const allowed = told.open === true ? Math.min(2, isGap(told.verdict) ? 2 : 0) : most[told.verdict];
        expect(strength(words), words).toBeLessThanOrEqual(allowed);
        if (told.overlays?.includes('leans') === true) expect(words).toMatch(/not settled/);
      }
    }
  });

  test('is one sentence for one pair, the first of a report naming for whom', () => {
    for (const { told, design } of waysToComeOut) {
      const metric = metricOf({ metric: 'carry', ...told });
      const sentences = answerSentences(metric, tellingFor([metric], design === undefined ? {} : { design }));
      expect(sentences).toHaveLength(1);
      if (told.verdict !== 'not-judged') expect(sentences[0]).toMatch(/^For this golfer/);
    }
  });

  test.each([
    [1, 'shot', 'For this golfer'],
    [3, 'shot', 'For these three golfers'],
    [8, 'hitter', 'For golfers like these'],
  ] as const)('of %i golfers', (hitters, unit, whom) => {
    const metric = metricOf({ metric: 'carry', verdict: 'clear' });
    expect(answerInShort(tellingFor([metric], { design: { hitters, unit } }))).toBe(
      `${whom} Alder carried clearly farther than Birch.`,
    );
  });

  test('of two primary metrics says which one cannot be told', () => {
    const own = (['carry', 'ball_speed'] as const).map((metric) =>
      metricOf({ metric, verdict: 'too-close' }),
    );
    const telling = tellingFor(own);
    expect(own.map((metric) => answerSentences(metric, telling)).flat()).toEqual([
      'For this golfer these shots cannot tell whether Alder or Birch carried farther.',
      'For this golfer these shots cannot tell whether Alder or Birch was faster off the face.',
    ]);
  });

  test('of nothing', () => {
    expect(answerInShort(tellingFor([]))).toBe('Nothing was judged.');
  });
});

describe('more than three contenders', () => {
  test.each(groups)('$name', ({ metric }) => {
    for (const words of answerSentences(metric, tellingFor([metric]))) expectWellFormed(words);
  });

  test('ahead, behind and neither', () => {
    const own = groups.map(({ metric }) => answerSentences(metric, tellingFor([metric])).join(' '));
    expect(own[0]).toBe(
      'For this golfer, ahead in carry: Alder and Elm. Clearly behind them: Cedar and Dogwood. Birch: cannot tell.',
    );
    expect(own[1]).toBe(
      'For this golfer, ahead in carry: Alder. Clearly behind it: Cedar. Behind it, size unsure: Dogwood. ' +
        'Behind it by too little to matter: Birch.',
    );
    expect(own[3]).toMatch(/hit one after another, so the cause is open/);
  });

  test('no name stands on two sides, and no rank is given', () => {
    for (const { metric } of groups) {
      const words = answerSentences(metric, tellingFor([metric])).join(' ');
      for (const name of ['Alder', 'Birch', 'Cedar', 'Dogwood', 'Elm']) {
        expect(words.split(name).length - 1).toBeLessThanOrEqual(1);
      }
      expect(words).not.toMatch(/\b(first|second|third|1st|2nd|rank)\b/i);
    }
  });
});

describe('what is said of readings and averages that do not count', () => {
  test('calculated readings are named', () => {
    const total = metricOf({ metric: 'total', verdict: 'clear', overlays: ['modelled-reading'] });
    expect(cautions(tellingFor([total]))).toEqual(['Total distance was calculated, not seen.']);
  });

  test.each([
    [0, []],
    [1, ['One golfer hit too few shots with one head for them to count.']],
    [3, ['In three cases a golfer hit too few shots with one head for them to count.']],
  ])('%i averages on too few shots', (cellsLeftOut, words) => {
    const metric = metricOf(
      { metric: 'carry', verdict: 'clear' },
      { detectable: null, shotsNeeded: null, cellsLeftOut },
    );
    expect(reachSentences(metric, tellingFor([metric], { design: { hitters: 8, unit: 'hitter' } }))).toEqual(
      words,
    );
  });
});

describe('words of each metric', () => {
  test('more and less differ, and so do the metrics where they stand side by side', () => {
    for (const id of metricIds) {
      const { more, less } = comparativeOf(id);
      expect(more).not.toBe(less);
    }
    const side: readonly MetricId[] = ['launch_direction', 'side', 'curve'];
    for (const id of side)
      expect(comparativeOf(id)).toMatchObject({ more: 'more to the right', less: 'more to the left' });
  });
});

describe('limits in sentences', () => {
  test('tell the same verdict as the unrounded ones', () => {
    const gaps = fc.record({
      estimate: fc.double({ min: -2.5, max: 2.5, noNaN: true }),
      half: fc.double({ min: 0.02, max: 3, noNaN: true }),
      metric: fc.constantFrom(...metricIds),
      system: fc.constantFrom(...systems),
    });
    fc.assert(
      fc.property(gaps, ({ estimate, half, metric, system }) => {
        const plain = metricOf({ metric, verdict: 'clear' });
        const { matters } = plain;
        const ci: readonly [number, number] = [(estimate - half) * matters, (estimate + half) * matters];
        const pair = {
          ...metricOf({ metric, verdict: 'clear', pair: { estimate: estimate * matters, ci } }).pairs[0],
        };
        const own = metricOf({ metric, verdict: 'clear', pair });
        const telling = tellingFor([own], { system });
        const [whole] = own.pairs;
        if (whole === undefined) return;
        const numbers = gapNumbers(whole, own, telling);
        const excludes = ci[0] > 0 || ci[1] < 0;
        // "7 to 18 would fit" leaves out 0; "10 yards farther with Alder to 3 with Birch would fit" does not.
        expect(numbers.startsWith('About ')).toBe(excludes);
        if (excludes) {
          const lower = Number(/; ([\d.,]+) to /.exec(numbers)?.[1]?.replaceAll(',', ''));
          expect(lower).toBeGreaterThan(0);
        }
      }),
      { numRuns: 600 },
    );
  });
});
