import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { HitterGap, PairFindings } from '../../../src/findings/findings.ts';
import { golfersOf } from '../../../src/prose/golfers.ts';
import { golferWords, onlyThese, sayGolfers } from '../../../src/prose/english/golfers.ts';
import type { Telling } from '../../../src/prose/telling.ts';
import { loadSite } from '../../../src/site/siteContent.ts';
import { toCanonical } from '../../../src/trade/units.ts';
import { around, reportOf } from '../../findings/reportOf.ts';
import { metricOf, tellingFor, type Told } from '../tellings.ts';

const yd = (yards: number): number => toCanonical(yards, 'yd');
const gap = (hitter: string, estimate: number, ci: readonly [number, number] | null): HitterGap => ({
  hitter,
  estimate: yd(estimate),
  ci: ci === null ? null : [yd(ci[0]), yd(ci[1])],
});

/** Speeds and bands as the front matter gives them; `three` has no speed. */
const labels: Readonly<Record<string, string>> = {
  one: '88 mph, handicap 16-20',
  two: '103 mph, handicap 6-10',
  three: 'golfer three',
};

/** What is said of Alder and Birch, golfer by golfer; the slowest golfer stands first in the report. */
function said(
  pair: Partial<PairFindings>,
  told: Partial<Told> = {},
  unit: 'shot' | 'hitter' = 'shot',
): readonly string[] {
  const metric = metricOf({ metric: 'carry', verdict: 'clear', ...told, pair });
  const ids = Object.keys(labels);
  const telling: Telling = {
    ...tellingFor([metric], {
      varied: 'shaft',
      design: {
        hitters: unit === 'hitter' ? 8 : 3,
        unit,
        golfers: ids.map((id) => ({ id, clubSpeed: null, shots: 24 })),
      },
    }),
    golfer: (id) => labels[id] ?? id,
  };
  return golfersOf(metric, telling.findings).flatMap(({ statements }) =>
    statements.map((one) => sayGolfers(one, telling)),
  );
}

describe('two to five golfers, each by himself', () => {
  const own = [gap('three', -4, [-9.4, 1.2]), gap('two', 2, null), gap('one', 15, [11, 19])];

  test('by speed and handicap, the slowest first; never by the order of the file', () => {
    expect(said({ byHitter: own })).toEqual([
      '88 mph, handicap 16-20: Alder carried about 16 yards farther than Birch, likely 10 to 20.',
      '103 mph, handicap 6-10: Alder carried about 2 yards farther than Birch, from too few shots to judge.',
      'Golfer three: we cannot tell whether Birch or Alder carried farther, anything from 10 yards for Birch to 2 for Alder.',
    ]);
  });

  test('two golfers differ only where the findings say so, and in no stronger words', () => {
    const apart = (hittersDiffer: PairFindings['hittersDiffer']): readonly string[] =>
      said({ byHitter: own, hittersDiffer }).filter((words) => words.includes('not the same'));
    expect(apart([])).toEqual([]);
    expect(apart([{ x: 'three', y: 'one' }])).toEqual([
      'The carry difference between Alder and Birch is not the same for all: Alder gained more for one golfer (88 mph, handicap 16-20) than for another (golfer three).',
    ]);
    expect(
      apart([
        { x: 'one', y: 'three' },
        { x: 'one', y: 'two' },
      ])[0],
    ).toContain(
      'for one golfer (88 mph, handicap 16-20) than for two golfers (golfer three; 103 mph, handicap 6-10).',
    );
  });

  test('of golfers who do not all differ from each other nothing is said of those who do not', () => {
    const pairs = [
      { x: 'one', y: 'two' },
      { x: 'two', y: 'three' },
    ];
    const lines = said({ byHitter: own, hittersDiffer: pairs }).filter((words) =>
      words.includes('not the same'),
    );
    expect(lines.map((words) => words.split('all: ')[1])).toEqual([
      'Alder gained more for one golfer (88 mph, handicap 16-20) than for another (103 mph, handicap 6-10).',
      'Alder gained more for one golfer (103 mph, handicap 6-10) than for another (golfer three).',
    ]);
  });

  test('nothing about other golfers', () => {
    expect(said({ byHitter: own, newHitter: null, whoGained: null }).join(' ')).not.toMatch(
      /another golfer|golfers like/i,
    );
    expect(onlyThese(3)).toBe('This is for these three golfers; other golfers cannot be judged from three.');
  });

  test('where less is wanted, the one with less is told as ahead', () => {
    const metric = metricOf({
      metric: 'spin_rate',
      verdict: 'clear',
      better: 'less',
      pair: { byHitter: [{ hitter: 'one', estimate: 700, ci: [300, 1100] }] },
    });
    const telling = tellingFor([metric], {
      design: { hitters: 2, golfers: [{ id: 'one', clubSpeed: null, shots: 20 }] },
    });
    const [first] = golfersOf(metric, telling.findings).flatMap(({ statements }) => statements);
    expect(first === undefined ? '' : sayGolfers(first, telling)).toBe(
      'Golfer one: Birch spun about 700 rpm less than Alder, likely 300 to 1,100.',
    );
  });
});

describe('six golfers or more', () => {
  const counted = (whoGained: PairFindings['whoGained'], estimates: readonly number[]): string =>
    said(
      { whoGained, byHitter: estimates.map((yards, index) => gap(String(index), yards, null)) },
      {},
      'hitter',
    )[0] ?? '';

  test('how many gained, and how often as uneven a split comes by chance', () => {
    const seven = {
      more: 7,
      of: 8,
      clearlyMore: 2,
      clearlyLess: 0,
      byLuck: 0.0703,
      share: [0.4, 1],
    } as const;
    expect(counted(seven, [1, 2, 3, 4, 5, 6, 7, -1])).toBe(
      '7 of 8 golfers averaged farther in carry with Alder than with Birch, two clearly so. ' +
        'If the shafts were equal, a split this uneven would turn up in about seven tests of 100.',
    );
    const eight = { more: 0, of: 8, clearlyMore: 0, clearlyLess: 0, byLuck: 0.004, share: [0, 0.4] } as const;
    expect(counted(eight, [-1, -2, -3, -4, -5, -6, -7, -8])).toBe(
      '8 of 8 golfers averaged farther in carry with Birch than with Alder, none clearly so. ' +
        'If the shafts were equal, a split this uneven would turn up in fewer than one test of 100.',
    );
    const even = { more: 4, of: 8, clearlyMore: 0, clearlyLess: 1, byLuck: 1, share: [0.1, 0.9] } as const;
    expect(counted(even, [1, 2, 3, 4, -1, -2, -3, -4])).toBe(
      '4 of 8 golfers averaged farther in carry with Alder than with Birch, none clearly so. No split could be more even.',
    );
  });

  test.each([
    [[-6, 19], 'anything from 19 yards for Alder to 6 for Birch'],
    [[3, 19], '3 to 19 yards for Alder'],
    [[-19, -3], '3 to 19 yards for Birch'],
  ] as const)("another golfer's own test: %j", ([low, high], words) => {
    const lines = said(
      {
        newHitter: [yd(low), yd(high)],
        byHitter: [gap('one', 3, null)],
        estimate: yd(8),
        ci: [yd(5), yd(11)],
      },
      {},
      'hitter',
    );
    expect(lines).toEqual([`In carry, another golfer's own test of this length could show ${words}.`]);
  });
});

/** Ten golfers, four brands of ball (McClave and Sincich, Statistics; figures from memory). */
describe('ten golfers of a textbook', () => {
  const [report] = loadSite(resolve('tests/cases/ten-golfers/content')).reports;
  if (report === undefined) throw new Error('tests/cases/ten-golfers has no report');
  const { telling, findings } = report;
  const [metric] = findings.metrics;
  if (metric === undefined) throw new Error('no carry');
  const saidOf = (a: string, b: string): readonly string[] =>
    golfersOf(metric, findings)
      .filter(({ answer: { about } }) => about.a === a && about.b === b)
      .flatMap(({ statements }) => statements.map((one) => sayGolfers(one, telling)));

  // Counted by hand in the table of the textbook; 2 x 0.5^10 is 2 in 1,000 tests.
  test('all ten one way', () => {
    expect(saidOf('a', 'c')).toContain(
      '10 of 10 golfers averaged farther in carry with Brand C than with Brand A, none clearly so. ' +
        'If the balls were equal, a split this uneven would turn up in fewer than one test of 100.',
    );
  });

  // Binomial tails of ten golfers by hand: eight or more one way, 2 x 56 / 1024 = 11 in 100.
  test('eight of ten one way is not much', () => {
    expect(saidOf('a', 'd')[0]).toMatch(/^8 of 10 golfers .* about 11 tests of 100\.$/);
  });

  // R 4.2.2 (reference/cases/ten-golfers.R): -12.71 to 24.26 m, which is -13.9 to 26.5 yards.
  test('what another golfer would see, each limit outwards by the step of the report', () => {
    expect(saidOf('a', 'd')[1]).toMatch(/could show anything from 28 yards for Brand A to 14 for Brand D\.$/);
  });

  test('at once the surest pair, with the details all of them', () => {
    const { atOnce, pairs } = golferWords([metric], telling);
    expect(atOnce.filter((line) => /averaged farther/.test(line))).toHaveLength(1);
    expect(pairs).toHaveLength(6);
    expect(pairs[0]?.pair).toMatch(/^Carry: Brand . and Brand .$/);
  });
});

test('golfers of a report, from their own shots: ordered and labelled by speed', () => {
  const speeds: Readonly<Record<string, number>> = { fast: 105, slow: 85 };
  const rows = Object.entries(speeds).flatMap(([golfer, speed]) =>
    ['alder', 'birch'].flatMap((club) =>
      around(club === 'alder' && golfer === 'slow' ? 220 : 200).map(
        (carry, turn) => `${golfer},${club},${carry},${speed + (turn % 2) * 0.1}`,
      ),
    ),
  );
  const { findings, telling } = reportOf({
    csv: ['Golfer,Club,Carry (yd),Club Speed (mph)', ...rows, ''].join('\n'),
    front: {
      hitters:
        '{fast: {role: customer, handicap_band: 6-10, consent: yes}, slow: {role: customer, handicap_band: 16-20, consent: yes}}',
      contenders:
        '{alder: {label: Alder, supplied_by: us, sold_here: new}, birch: {label: Birch, supplied_by: us, sold_here: new}}',
    },
  });
  const [metric] = findings.metrics;
  const primaries = metric === undefined ? [] : [metric];
  const { atOnce } = golferWords(primaries, telling);
  expect(golferWords(primaries, { ...telling, system: 'metres' }).atOnce[0]).toMatch(
    /^137 km\/h, handicap 16-20: Alder carried about 18.5 metres /,
  );
  expect(atOnce[0]).toMatch(
    /^85 mph, handicap 16-20: Alder carried about 20 yards farther than Birch, likely /,
  );
  expect(atOnce[1]).toMatch(/^105 mph, handicap 6-10: we cannot tell whether /);
  expect(atOnce[2]).toMatch(
    /Alder gained more for one golfer \(85 mph, handicap 16-20\) than for another \(105 mph, /,
  );
});

test('one golfer has no such sentences', () => {
  const { findings, telling } = reportOf({});
  const [metric] = findings.metrics;
  expect(golferWords(metric === undefined ? [] : [metric], telling)).toEqual({ atOnce: [], pairs: [] });
});
