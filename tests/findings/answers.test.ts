import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/findings/analyse.ts';
import { aheadBy, statusOf } from '../../src/findings/answerStatus.ts';
import type { Findings, MetricFindings, PairFindings } from '../../src/findings/findings.ts';
import { pooledGap } from '../../src/findings/pooledGap.ts';
import { turnedPair } from '../../src/findings/turnedPair.ts';
import { pairingsWon } from '../../src/stats/pairings.ts';
import { metrics } from '../../src/trade/metrics.ts';
import { expectInterval } from '../stats/close.ts';
import { inputFor, inTurn, lastApart, oneAfterAnother, yd, type Swing } from './sessions.ts';

/** What the findings decide besides the interval. Figures were worked out by hand or with SciPy before the code. */

type Options = NonNullable<Parameters<typeof inputFor>[1]>;
const found = (swings: readonly Swing[], options: Options = {}): Findings =>
  analyse(inputFor(swings, options), []);
function carryIn(findings: Findings): MetricFindings {
  const [metric] = findings.metrics;
  if (metric === undefined) throw new Error('no metric');
  return metric;
}
function pairIn(swings: readonly Swing[], options: Options = {}): PairFindings {
  const [pair] = carryIn(found(swings, options)).pairs;
  if (pair === undefined) throw new Error('no pair');
  return pair;
}

/** Twelve deviations that neither drift nor cluster; sum 0. */
const scatter = [-3, 2, 1, -1, 4, -2, 3, -4, 0, 2, -3, 1];
const around = (mean: number, n = 12, size = 1): number[] =>
  Array.from({ length: n }, (_, index) => mean + size * (scatter[index % 12] ?? 0));

describe('the answer as printed', () => {
  test.each([
    ['clear', 'contender', false, 'clear'],
    ['size-unsure', 'contender', false, 'size-uncertain'],
    ['maybe-small', 'contender', false, 'size-uncertain'],
    ['small', 'contender', false, 'small'],
    ['level', 'contender', false, 'level'],
    ['too-close', 'contender', false, 'cannot-tell'],
    ['not-judged', 'open', false, 'not-judged'],
    ['clear', 'open', true, 'cause-unclear'],
    ['small', 'open', false, 'cause-unclear'],
    ['level', 'open', false, 'cannot-tell'],
    ['too-close', 'open', false, 'cannot-tell'],
    ['clear', 'contender', true, 'not-confirmed'],
    ['level', 'contender', true, 'not-confirmed'],
  ] as const)('%s, credit %s, leans %s: %s', (verdict, credit, leans, status) => {
    expect(statusOf({ verdict, credit, leans })).toBe(status);
  });

  test.each([
    [2, 'more', 'a'],
    [-2, 'more', 'b'],
    [2, 'less', 'b'],
    [-2, 'less', 'a'],
    [2, 'neither', 'a'],
    [0, 'more', null],
  ] as const)('%d, %s wanted: ahead is %s', (estimate, better, side) => {
    expect(aheadBy(estimate, better)).toBe(side);
  });

  test('stands with each pair, and whoever is ahead however unsure', () => {
    const pair = pairIn(inTurn({ a: around(200), b: around(200.5).toReversed() }));
    expect([pair.verdict, pair.status, pair.ahead]).toEqual(['level', 'level', 'b']);
    const open = pairIn(oneAfterAnother({ a: around(220), b: around(200) }));
    expect([open.verdict, open.status, open.ahead]).toEqual(['clear', 'cause-unclear', 'a']);
    const none = pairIn(inTurn({ a: around(220), b: around(200, 4) }));
    expect([none.status, none.ahead, none.singleShot]).toEqual(['not-judged', null, null]);
  });

  test('less distance from the line is ahead', () => {
    const swings = inTurn({ a: around(200), b: around(200) }).map((swing, index) => ({
      ...swing,
      values: { ...swing.values, side: yd(swing.contender === 'a' ? 1 + (index % 3) : 20 + (index % 5)) },
    }));
    const [straighter] = found(swings).straighter ?? [];
    expect([straighter?.ahead, straighter?.estimate ?? 0]).toEqual(['a', expect.any(Number)]);
    expect(straighter?.estimate).toBeLessThan(0);
  });

  test('a first look under eight counted shots with either', () => {
    const firstLook = (n: number): boolean => pairIn(inTurn({ a: around(220), b: around(200, n) })).firstLook;
    expect([firstLook(7), firstLook(8)]).toEqual([true, false]);
  });

  test('several reports together are judged here too', () => {
    const gaps = [5.5, 6, 6.5].map((estimate, index) => ({
      date: `2026-01-0${index + 1}`,
      estimate,
      hitters: [`g${index}`],
    }));
    // mean 6, t(2) s / sqrt 3 = 4.3027 x 0.5 / 1.7321 = 1.242: 4.758 to 7.242
    expect(pooledGap(gaps, { matters: 4.7, better: 'more' })).toMatchObject({
      verdict: 'clear',
      status: 'clear',
      ahead: 'a',
    });
    expect(pooledGap(gaps, { matters: 5, better: 'less' })).toMatchObject({
      verdict: 'size-unsure',
      status: 'size-uncertain',
      ahead: 'b',
    });
  });
});

describe('why a cause is open', () => {
  test('the reason, and nobody hit later where all were', () => {
    const pair = pairIn(oneAfterAnother({ a: around(220), b: around(200) }));
    expect([pair.openBecause, pair.hitLater]).toEqual(['one-after-another', null]);
    expect(pairIn(inTurn({ a: around(220), b: around(200) })).openBecause).toBeNull();
  });

  test('with a lever, who was hit later on the whole', () => {
    const hit = (sequence: string): PairFindings =>
      pairIn(
        [...sequence].map((contender, index): Swing => ({
          contender,
          values: { carry: yd(200 + (scatter[index % 12] ?? 0)) },
        })),
        { contenders: ['a', 'b'] },
      );
    expect(hit('aaaabaaaaabaabbabbbbbabbbb')).toMatchObject({ openBecause: 'lever', hitLater: 'b' });
    expect(hit('bbbbabbbbbabbaabaaaaabaaaa')).toMatchObject({ openBecause: 'lever', hitLater: 'a' });
  });

  test('the drift that alone would make the difference, from first to last shot', () => {
    // twelve and twelve: mean places 6.5 and 18.5 of 24, lever -12/23; a gap of 10 takes 10 x -23/12 = -19.1667
    const open = pairIn(oneAfterAnother({ a: around(210), b: around(200) }));
    expect(open.driftNeeded).toBeCloseTo(yd(-230 / 12), 9);
    expect(pairIn(inTurn({ a: around(210), b: around(200) })).driftNeeded).toBeNull();
    expect(pairIn(oneAfterAnother({ a: around(200), b: around(200) })).driftNeeded).toBeNull();
    const stated = pairIn(oneAfterAnother({ a: around(210), b: around(200) }), { statedOrder: 'unknown' });
    expect([stated.status, stated.driftNeeded]).toEqual(['cause-unclear', null]);
  });
});

describe('why a pair was not judged', () => {
  const reason = (swings: readonly Swing[], options: Options = {}): PairFindings['notJudged'] =>
    pairIn(swings, { contenders: ['a', 'b'], ...options }).notJudged;
  const golfers = (count: number, b: (golfer: number) => number[]): Swing[] =>
    Array.from({ length: count }, (_, golfer) =>
      inTurn({ a: around(205), b: b(golfer) }, `g${golfer}`),
    ).flat();

  test('it was', () => {
    expect(reason(inTurn({ a: around(200), b: around(201) }))).toBeNull();
  });

  test('no reading with one', () => {
    expect(reason(inTurn({ a: around(200) }))).toEqual({
      because: 'no-reading',
      contenders: ['b'],
      fewest: null,
    });
  });

  test('too few shots', () => {
    expect(reason(inTurn({ a: around(200, 3), b: around(201, 4) }))).toEqual({
      because: 'too-few-shots',
      contenders: ['a', 'b'],
      fewest: 3,
    });
  });

  test('a golfer hit too few', () => {
    const swings = golfers(3, (golfer) => around(200, golfer === 1 ? 2 : 12));
    expect(reason(swings)).toEqual({ because: 'golfer-too-few-shots', contenders: ['b'], fewest: 2 });
  });

  test('fewer than six golfers hit both', () => {
    const swings = golfers(7, (golfer) => (golfer < 5 ? around(200) : []));
    expect(reason(swings)).toEqual({ because: 'too-few-golfers', contenders: ['a', 'b'], fewest: 5 });
  });

  test('golfers whose averages leave nothing to judge by', () => {
    // the same difference to the last digit for each
    const swings = Array.from({ length: 6 }, (_, golfer) =>
      inTurn({ a: around(205 + golfer), b: around(200 + golfer) }, `g${golfer}`),
    ).flat();
    expect(reason(swings)).toEqual({
      because: 'golfers-not-comparable',
      contenders: ['a', 'b'],
      fewest: null,
    });
  });

  test('one and the same number with each, the numbers apart', () => {
    const swings = inTurn({ a: Array<number>(9).fill(205), b: Array<number>(9).fill(200) });
    expect(reason(swings)).toEqual({ because: 'each-alike', contenders: ['a', 'b'], fewest: null });
  });

  test('one and the same number throughout', () => {
    const swings = inTurn({ a: Array<number>(9).fill(200), b: Array<number>(9).fill(200) });
    expect(reason(swings)).toEqual({ because: 'all-alike', contenders: ['a', 'b'], fewest: null });
  });
});

describe('checks are held against the answer that is printed', () => {
  // When a is far up, b is far down in the same round: as a gap two of three checks fail.
  const seesaw = {
    a: [202, 208, 202, 206, 210, 200, 202, 205],
    b: [202, 195, 203, 199, 195, 205, 204, 198],
  };

  test('too little to matter holds although there being a gap does not', () => {
    const gap = pairIn(lastApart(seesaw), { matters: { carry: yd(1) } });
    expect(gap.holds.map(({ state }) => state)).toEqual(['fails', 'fails', 'agrees']);
    const little = pairIn(lastApart(seesaw), { matters: { carry: yd(30) } });
    expect([little.verdict, little.status]).toEqual(['small', 'small']);
    expect(little.holds.map(({ state }) => state)).toEqual(['agrees', 'agrees', 'agrees']);
    expect(little.holds.map(({ estimate, ci }) => [estimate, ci])).toEqual(
      gap.holds.map(({ estimate, ci }) => [estimate, ci]),
    );
  });

  test('nothing that matters fails where a check finds what matters', () => {
    // 36 of 40 carry 5.25 farther with a, four far shorter: averages alike, usual strikes not
    const jitter = (index: number): number => (index % 2 === 0 ? 0.1 : -0.1);
    const a = Array.from({ length: 40 }, (_, index) => (index % 10 === 5 ? 152.75 : 205.25) + jitter(index));
    const b = Array.from({ length: 40 }, (_, index) => 200 + jitter(index + 1));
    const pair = pairIn(inTurn({ a, b }), { matters: { carry: yd(5.2) } });
    expect(pair.verdict).toBe('level');
    const usual = pair.holds.find(({ check }) => check === 'usual-strikes');
    expect(usual?.state).toBe('fails');
    expect(usual?.estimate).toBeCloseTo(yd(5.25), 1);
  });
});

describe('one shot with each', () => {
  // 201 beats 2 of 200, 205, 206, 199, 204; 205 beats 3 and ties 1, twice; 210 and 212 beat 5: 2 + 7 + 10 = 19 of 25
  const lists = { a: [201, 205, 205, 210, 212], b: [200, 205, 206, 199, 204] };

  test('pairings won, ties as a half', () => {
    expect(pairingsWon(lists.a, lists.b)).toBe(19);
    expect(pairingsWon(lists.b, lists.a)).toBe(6);
    expect(pairingsWon([], lists.a)).toBe(0);
    expect(pairingsWon([1, 1], [1, 1, 1])).toBe(3);
  });

  test('in which the one ahead was ahead', () => {
    expect(pairIn(inTurn(lists)).singleShot).toEqual({ more: 19, of: 25 });
    expect(pairIn(inTurn({ a: lists.b, b: lists.a })).singleShot).toEqual({ more: 19, of: 25 });
    const less = pairIn(inTurn(lists), { better: { carry: 'less' } });
    expect([less.ahead, less.singleShot]).toEqual(['b', { more: 19, of: 25 }]);
  });

  test('golfers each on their own, added up', () => {
    const taller = { a: lists.a.map((carry) => carry + 40), b: lists.b.map((carry) => carry + 40) };
    const pair = pairIn([...inTurn(lists, 'one'), ...inTurn(taller, 'two')]);
    expect(pair.singleShot).toEqual({ more: 38, of: 50 });
  });

  test('not where the cause is open', () => {
    expect(pairIn(oneAfterAnother(lists)).singleShot).toBeNull();
  });
});

describe('golfers whose differences differ', () => {
  // Cells of five, deviations -2 to 2: variance 2.5, each mean's 0.5, the contrast's 2, df 16.
  const cell = (mean: number): number[] => [-2, 1, 0, -1, 2].map((off) => mean + off);
  const golfer = (id: string, gap: number): Swing[] => inTurn({ a: cell(200 + gap), b: cell(200) }, id);
  const differ = (...gaps: readonly number[]): PairFindings['hittersDiffer'] =>
    pairIn(gaps.flatMap((gap, index) => golfer(`g${index}`, gap))).hittersDiffer;

  test('two: the contrast excludes 0 at 95 %', () => {
    // t(0.975; 16) sqrt 2 = 2.998
    expect(differ(2.99, 0)).toEqual([]);
    expect(differ(3.01, 0)).toEqual([{ x: 'g0', y: 'g1' }]);
    expect(differ(10, -12)).toEqual([{ x: 'g0', y: 'g1' }]);
  });

  test('three: at 1 - 0.05/3 each', () => {
    // t(1 - 0.05/6; 16) sqrt 2 = 3.775
    expect(differ(3.76, 2, 0)).toEqual([]);
    expect(differ(3.79, 2, 0)).toEqual([{ x: 'g0', y: 'g2' }]);
  });

  test('one golfer differs from nobody', () => {
    expect(differ(4)).toEqual([]);
  });
});

describe('what is said of a metric', () => {
  test('what matters: whose it is, and whether it is far from the usual', () => {
    const swings = inTurn({ a: around(200), b: around(201) });
    const of = (options: Options): readonly unknown[] => {
      const { mattersFrom, mattersUnusual } = carryIn(found(swings, options));
      return [mattersFrom, mattersUnusual];
    };
    const usual = metrics.carry.matters;
    expect(of({})).toEqual(['trade', false]);
    expect(of({ matters: { carry: usual } })).toEqual(['report', false]);
    expect(of({ matters: { carry: 3 * usual }, mattersOfShop: ['carry'] })).toEqual(['shop', false]);
    expect(of({ matters: { carry: 3.01 * usual } })).toEqual(['report', true]);
    expect(of({ matters: { carry: usual / 3 } })).toEqual(['report', false]);
    expect(of({ matters: { carry: usual / 3.01 } })).toEqual(['report', true]);
  });

  test('the step of the file', () => {
    expect(carryIn(found(inTurn({ a: around(200), b: around(201) }), { step: yd(0.5) })).resolution).toBe(
      yd(0.5),
    );
  });

  test('a straight line through the own shots of each contender (scipy.stats.linregress)', () => {
    const lists = { a: [200, 203, 201, 206, 204, 209], b: [210, 207, 209, 204, 206, 201] };
    const { trends, drift } = carryIn(found(inTurn(lists)));
    expect(trends.map(({ id }) => id)).toEqual(['a', 'b']);
    const [a, b] = trends;
    expect(a?.slope).toBeCloseTo(yd(0.757142857142857), 9);
    expectInterval(a?.ci ?? [NaN, NaN], [0.1208763334986871, 1.3934093807870271].map(yd), 1e-9);
    expectInterval(b?.ci ?? [NaN, NaN], [-1.3934093807870271, -0.1208763334986871].map(yd), 1e-9);
    expect(Math.abs(drift?.slope ?? 1)).toBeLessThan(yd(0.01));
  });

  test('no such line for several golfers, or where the order is not known', () => {
    const lists = { a: around(200), b: around(201) };
    expect(carryIn(found([...inTurn(lists, 'one'), ...inTurn(lists, 'two')])).trends).toEqual([]);
    expect(carryIn(found(inTurn(lists), { statedOrder: 'unknown' })).trends).toEqual([]);
  });

  test('how many pairs are judged together', () => {
    const together = (n: number): number =>
      carryIn(found(inTurn({ a: around(200), b: around(201), c: around(202, n) }))).judgedTogether;
    expect([together(12), together(4)]).toEqual([3, 1]);
  });

  test('a spread is clearly tighter under p 0.05', () => {
    const clear = (size: number): readonly unknown[] =>
      (carryIn(found(inTurn({ a: around(200), b: around(200, 12, size) }))).spread?.pairs ?? []).map(
        (pair) => [pair.clear, pair.p < 0.05],
      );
    expect([clear(1.2), clear(6)]).toEqual([[[false, false]], [[true, true]]]);
  });
});

describe('who hit', () => {
  const speeds = { fast: [40, 41, 42, 43, 44, 45], slow: [35, 36, 36, 37, 38, 39], unread: [] };
  const swings = Object.entries(speeds).flatMap(([hitter, own]) =>
    Array.from({ length: 6 }, (_, index): Swing => ({
      contender: index % 2 === 0 ? 'a' : 'b',
      hitter,
      values: { carry: yd(200 + index), club_speed: own[index] ?? null },
      leftOut: hitter === 'unread' && index === 5,
    })),
  );

  test('by club speed, 10th to 90th percentile (numpy.percentile), the slowest first', () => {
    const { golfers, clubSpeed } = found(swings).design;
    expect(golfers).toEqual([
      { id: 'slow', clubSpeed: { low: 35.5, high: 38.5 }, shots: 6 },
      { id: 'fast', clubSpeed: { low: 40.5, high: 44.5 }, shots: 6 },
      { id: 'unread', clubSpeed: null, shots: 5 },
    ]);
    expect(clubSpeed?.low).toBeCloseTo(36, 9);
    expect(clubSpeed?.high).toBeCloseTo(43.9, 9);
  });
});

describe('what was looked at besides', () => {
  test('the measures that were judged, straighter among them, and what chance makes of as many', () => {
    const swings = inTurn({ a: around(200), b: around(201) }).map((swing, index) => ({
      ...swing,
      values: {
        ...swing.values,
        side: yd((scatter[index % 12] ?? 0) * 2),
        apex: 30 + (scatter[(index + 3) % 12] ?? 0),
        hang_time: 6,
      },
    }));
    // side, apex and the distance from the line; hang time is one and the same number throughout
    const { explored } = found(swings);
    expect(explored.looked).toBe(3);
    expect(explored.byChance).toBeCloseTo(0.15, 12);
    expect(found(inTurn({ a: around(200), b: around(201) })).explored).toEqual({ looked: 0, byChance: 0 });
  });
});

describe('a pair the other way round', () => {
  const lists = { a: around(206), b: around(200, 12, 2) };
  const swings = [...inTurn(lists, 'one'), ...inTurn({ a: around(230), b: around(231) }, 'two')].map(
    (swing, index) => ({ ...swing, leftOut: index === 7 }),
  );

  test.each([
    ['one golfer', inTurn(lists)],
    ['two golfers, a shot left out', swings],
    ['one after another', oneAfterAnother(lists)],
  ] as const)('%s: is the pair of a report that lists them so', (_name, own) => {
    const options: Options = { classes: { carry: 'modelled' }, accuracy: { carry: 1 } };
    const [there] = carryIn(found(own, { ...options, contenders: ['a', 'b'] })).pairs;
    const [back] = carryIn(found(own, { ...options, contenders: ['b', 'a'] })).pairs;
    if (there === undefined || back === undefined) throw new Error('no pair');
    expect(rounded(turnedPair(there))).toEqual(rounded(back));
    expect(turnedPair(turnedPair(there))).toEqual(there);
  });

  const rounded = (pair: PairFindings): unknown =>
    JSON.parse(
      JSON.stringify(pair, (_key, value: unknown) =>
        typeof value === 'number' ? Number(value.toPrecision(9)) + 0 : value,
      ),
    );
});
