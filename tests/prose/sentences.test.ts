import { describe, expect, test } from 'vitest';
import { isGap } from '../../src/findings/verdict.ts';
import { answerOf } from '../../src/prose/answers.ts';
import { cautionsOf } from '../../src/prose/cautions.ts';
import { sayAnswer, sayAnswerAlone } from '../../src/prose/english/answers.ts';
import { sayPair, sayPairInFull } from '../../src/prose/english/pairInWords.ts';
import { sayCaution } from '../../src/prose/english/cautions.ts';
import { sayChance, sayReach } from '../../src/prose/english/reach.ts';
import { saySingleShots } from '../../src/prose/english/sure.ts';
import { answerInList } from '../../src/prose/english/toldAnswer.ts';
import { pairAnswer } from '../../src/prose/pairAnswer.ts';
import { chanceOf, reachOf } from '../../src/prose/reach.ts';
import type { UnitSystem } from '../../src/prose/readerUnits.ts';
import { singleShotsOf } from '../../src/prose/sure.ts';
import type { Telling } from '../../src/prose/telling.ts';
import { metricIds } from '../../src/trade/metrics.ts';
import { groups } from '../specimen/examples.ts';
import { metricOf, tellingFor, waysToComeOut, type Told } from './tellings.ts';

/** Every sentence about a metric that the answer and what stands beside it are made of. */
function allSentences(telling: Telling): readonly string[] {
  const { findings } = telling;
  return [
    ...findings.metrics.flatMap((metric) => {
      const chance = chanceOf(metric);
      const single = singleShotsOf(metric, findings);
      return [
        ...sayAnswer(answerOf(metric, findings), telling),
        ...sayAnswerAlone(answerOf(metric, findings), telling),
        ...metric.pairs.flatMap((pair) => {
          const answer = pairAnswer(pair, metric, findings.design);
          return [sayPair(answer, telling), sayPairInFull(answer, telling)];
        }),
        ...(chance === null ? [] : [sayChance(chance, telling)]),
        ...(single === null ? [] : [saySingleShots(single, telling)]),
        ...reachOf(metric).map((statement) => sayReach(statement, telling)),
      ];
    }),
    ...cautionsOf(findings).map((caution) => sayCaution(caution, telling)),
    answerInList(telling),
  ];
}

/** Never said of a gap, whatever it is (the last: never of one that cannot be told). */
const forbidden: readonly RegExp[] = [
  /\bsignifican/i,
  /\bprove[sdn]?\b/i,
  /guarantee/i,
  /you will/i,
  /\b(best|worst|winner|wins?|beats?|crush\w*|bombs?|upgrade|must-have|game-changing)\b/i,
  // Of a difference that an order could hide: that none was seen.
  /(?<!saw )no difference(?! that matters)/i,
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

describe('names are text, whatever stands in them', () => {
  const odd = [
    'A&B <x>',
    '7 Iron, #2',
    "O'Leary's",
    '\u200fראש\u200f',
    'C.',
    'A|b',
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
  const saysOf = (told: Told, design = {}): string => {
    const metric = metricOf(told);
    const telling = tellingFor([metric], { design });
    return sayAnswer(answerOf(metric, telling.findings), telling).join(' ');
  };

  test('credits nobody where the cause is open, and says why in the same sentence', () => {
    for (const { told, design } of waysToComeOut.filter((way) => way.told.open === true)) {
      const words = saysOf({ metric: 'carry', ...told }, design);
      expect(words).not.toMatch(/likely|clearly|about \d/);
      expect(words).toMatch(/we cannot say that it was the head|could hide one/);
      expect(words).toMatch(
        /hit last|hit first|one after another|order of the shots|an order that is not known|mostly hit later|drift|few spells/,
      );
    }
  });

  test('is no stronger than it was judged', () => {
    const sizes = { clear: /: about .* likely /, 'size-unsure': /uncertain/, 'maybe-small': /uncertain/ };
    for (const { told, design } of waysToComeOut) {
      const words = saysOf({ metric: 'carry', ...told }, design);
      const leans = told.overlays?.includes('leans') === true;
      const weak = told.open === true || leans || told.overlays?.includes('visits-alike') === true;
      if (!isGap(told.verdict)) expect(words, words).not.toMatch(/^(On a first look )?\w+ carried farther/);
      if (weak) expect(words, words).not.toMatch(/: about|likely \d/);
      else if (told.verdict in sizes) expect(words).toMatch(sizes[told.verdict as keyof typeof sizes]);
      if (leans) expect(words).toMatch(/may .*(confirms?|confirm) it\.$/);
    }
  });

  test('of two main measures names each', () => {
    const own = (['carry', 'ball_speed'] as const).map((metric) =>
      metricOf({ metric, verdict: 'too-close' }),
    );
    const telling = tellingFor(own);
    const told = own.map((metric) => sayAnswer(answerOf(metric, telling.findings), telling).join(' '));
    expect(told[0]).toMatch(/^We cannot tell whether Alder or Birch carried farther: /);
    expect(told[1]).toMatch(/^We cannot tell whether Alder or Birch had a higher ball speed: /);
  });

  test('alone says what was tested, and that it was one golfer', () => {
    for (const { told, design } of waysToComeOut) {
      const metric = metricOf({ metric: 'carry', ...told });
      const telling = tellingFor([metric], design === undefined ? {} : { design });
      const [first = ''] = sayAnswerAlone(answerOf(metric, telling.findings), telling);
      if (told.verdict !== 'not-judged') expect(first).toMatch(/^In a test of heads by one golfer, /);
    }
  });

  test('of nothing', () => {
    expect(answerInList(tellingFor([]))).toBe('Nothing was judged.');
  });
});

describe('more than three', () => {
  test.each(groups)('$name', ({ metric }) => {
    const telling = tellingFor([metric]);
    for (const words of sayAnswer(answerOf(metric, telling.findings), telling)) expectWellFormed(words);
  });

  test('nobody who is not clearly behind the leaders is left out of their breath', () => {
    for (const { metric } of groups) {
      const block = answerOf(metric, tellingFor([metric]).findings);
      const told = new Set(
        block.statements.flatMap((statement): readonly string[] => {
          if (statement.kind === 'leaders')
            return [...statement.leaders, ...statement.unplaced, ...(statement.close?.ids ?? [])];
          if (statement.kind === 'together') return statement.ids;
          return [];
        }),
      );
      if (!block.statements.some(({ kind }) => kind === 'leaders')) continue;
      expect((metric.leading ?? []).filter((id) => !told.has(id))).toEqual([]);
    }
  });
});
