import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/findings/analyse.ts';
import type { Findings, OverlayId, PairFindings } from '../../src/findings/findings.ts';
import { onlyLeans } from '../../src/findings/holds.ts';
import { seededRandom } from '../../src/stats/random.ts';
import { power } from '../../src/stats/power.ts';
import {
  inputFor,
  inTurn,
  inVisits,
  lastApart,
  oneAfterAnother,
  tenthYard,
  yd,
  type Swing,
} from './sessions.ts';

/** Each overlay fires on a session made for it and stays away from its neighbour, which differs in that one thing. */
const random = seededRandom('overlays');

/** Standard normal scores of n shots, shuffled by place so that they neither drift nor cluster; mean 0. */
function scores(n: number): number[] {
  const values = Array.from({ length: n }, () => random.normal());
  const mean = values.reduce((sum, value) => sum + value, 0) / n;
  const sd = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (n - 1));
  return values.map((value) => (value - mean) / sd);
}
const shots = (n: number, mean: number, sd: number): number[] => scores(n).map((score) => mean + sd * score);

type Options = NonNullable<Parameters<typeof inputFor>[1]>;
function pairIn(swings: readonly Swing[], options: Options = {}, metric = 0): PairFindings {
  const pair = analyse(inputFor(swings, options), []).metrics[metric]?.pairs[0];
  if (pair === undefined) throw new Error('no pair');
  return pair;
}
const has = (pair: PairFindings, overlay: OverlayId): boolean => pair.overlays.includes(overlay);

const twelve = { a: shots(12, 215, 4), b: shots(12, 200, 4) };

describe('always', () => {
  test('one example of each; one golfer', () => {
    const pair = pairIn(inTurn(twelve));
    expect(pair.overlays).toEqual(['one-hitter', 'one-example']);
  });

  test('two to five hitters are few, six are not', () => {
    const by = (hitters: number): Swing[] =>
      Array.from({ length: hitters }, (_, index) =>
        inTurn({ a: shots(6, 215, 4), b: shots(6, 200, 4) }, `h${index}`),
      ).flat();
    expect(has(pairIn(by(2)), 'few-hitters')).toBe(true);
    expect(has(pairIn(by(5)), 'few-hitters')).toBe(true);
    expect(has(pairIn(by(6)), 'few-hitters')).toBe(false);
    expect(has(pairIn(by(2)), 'one-hitter')).toBe(false);
  });

  test('what was not planned is said of exploratory metrics only', () => {
    const swings = inTurn(twelve).map((swing) => ({
      ...swing,
      values: { ...swing.values, total: (swing.values.carry ?? 0) + yd(20) },
    }));
    expect(has(pairIn(swings, {}, 0), 'not-planned')).toBe(false);
    expect(has(pairIn(swings, {}, 1), 'not-planned')).toBe(true);
  });
});

describe('few shots', () => {
  test.each([
    [4, 'not-judged', false],
    [5, 'clear', true],
    [9, 'clear', true],
    [10, 'clear', false],
  ] as const)('%i with the one that has fewer', (n, verdict, few) => {
    const pair = pairIn(inTurn({ a: shots(n, 230, 4), b: shots(12, 200, 4) }));
    expect(pair.verdict).toBe(verdict);
    expect(has(pair, 'few-shots')).toBe(few);
  });
});

describe('readings', () => {
  test.each([
    ['measured', false],
    ['derived', false],
    ['modelled', true],
    ['estimated', true],
  ] as const)('%s', (kind, said) => {
    expect(has(pairIn(inTurn(twelve), { classes: { carry: kind } }), 'modelled-reading')).toBe(said);
  });
});

describe('near what the monitor can tell', () => {
  const near = (accuracy: number, kind: 'modelled' | 'measured'): PairFindings =>
    pairIn(inTurn(twelve), { classes: { carry: kind }, accuracy: { carry: accuracy } });
  const { ci, estimate } = near(yd(1), 'modelled');
  const [lower, upper] = ci ?? [NaN, NaN];

  test('the near end of the interval decides, at the accuracy itself too', () => {
    expect(has(near(lower, 'modelled'), 'near-device')).toBe(true);
    expect(has(near(lower * 0.999999, 'modelled'), 'near-device')).toBe(false);
  });

  test('not where the error is the same for both', () => {
    expect(near(lower, 'measured').device).toBeNull();
    expect(has(near(lower, 'measured'), 'near-device')).toBe(false);
  });

  test('the wider interval adds 1.6 times the accuracy at right angles', () => {
    const pair = near(yd(2), 'modelled');
    const half = Math.sqrt(((upper - lower) / 2) ** 2 + (1.6 * yd(2)) ** 2);
    expect(pair.device?.ci[0]).toBeCloseTo((estimate ?? NaN) - half, 12);
    expect(pair.device?.ci[1]).toBeCloseTo((estimate ?? NaN) + half, 12);
    // JCGM 100:2008 4.3.7 (from memory): a rectangular error of +-a has standard uncertainty a / sqrt 3; the
    // difference of two, twice over for 95 %, is 2 sqrt(2/3) a = 1.63 a.
    expect(2 * Math.sqrt(2 / 3)).toBeCloseTo(1.6, 1);
  });

  test('never beside an answer that is no gap', () => {
    const level = { a: shots(12, 200, 4), b: shots(12, 200, 4) };
    const pair = pairIn(inTurn(level), { classes: { carry: 'modelled' }, accuracy: { carry: yd(3) } });
    expect(pair.verdict).toMatch(/too-close|level/);
    expect(has(pair, 'near-device')).toBe(false);
  });

  test('club speed is read apart for each club whatever its class', () => {
    const swings = inTurn(twelve).map((swing, index) => ({
      ...swing,
      values: {
        ...swing.values,
        club_speed: 40 + (swing.contender === 'a' ? 1 : 0) + 0.2 * ((index * 7) % 5),
      },
    }));
    const pair = pairIn(swings, { primaries: ['club_speed'], accuracy: { club_speed: 2 } });
    expect([pair.verdict, has(pair, 'near-device')]).toEqual(['clear', true]);
  });
});

describe('rests on one shot', () => {
  // Eleven shots each that overlap, and one of a far ahead that carries the whole gap.
  const base = [-4, -3, -2, -1, -1, 0, 0, 1, 2, 3, 5];
  const far = (last: number, shift: number): readonly Swing[] =>
    oneAfterAnother({
      a: [...base.map((value) => 200 + shift + value), last],
      b: [...base.map((value) => 200 + value), 200],
    });

  test('one removal lets the interval include 0, and that shot lies far out', () => {
    const pair = pairIn(far(213, 2));
    expect(pair.ci?.[0]).toBeGreaterThan(0);
    expect(pair.overlays).toContain('rests-on-one-shot');
  });

  test('not a shot that is no farther out than others (3.5 by median and MAD)', () => {
    // without the shot the interval is the same as above; median 202, MAD 2: 0.6745 x 10 / 2 = 3.37
    const pair = pairIn(far(212, 2));
    expect(pair.ci?.[0]).toBeGreaterThan(0);
    expect(pair.overlays).not.toContain('rests-on-one-shot');
  });

  test('not where the gap stands without it', () => {
    const pair = pairIn(far(219, 9));
    expect(pair.overlays).not.toContain('rests-on-one-shot');
  });

  test('never beside too close to call', () => {
    const pair = pairIn(far(216, 0));
    expect(pair.verdict).toMatch(/too-close|level/);
    expect(pair.overlays).not.toContain('rests-on-one-shot');
  });

  test('never under eight shots', () => {
    const seven = { a: [200, 201, 202, 203, 204, 205, 260], b: [190, 191, 192, 193, 194, 195, 196] };
    expect(pairIn(inTurn(seven)).overlays).not.toContain('rests-on-one-shot');
  });
});

describe('depends on what was left out', () => {
  const leftOut = (mishit: number): PairFindings =>
    pairIn(
      inTurn({ a: [...twelve.a, 214], b: [...twelve.b, mishit] }).map((swing, index) => ({
        ...swing,
        leftOut: index === 25,
      })),
    );

  test('where the answer differs with all shots counted', () => {
    const pair = leftOut(330);
    expect(pair.verdict).toBe('clear');
    expect(pair.withLeftOut?.verdict).not.toBe('clear');
    expect(pair.overlays).toContain('depends-on-left-out');
  });

  test('not where it stays the same', () => {
    const pair = leftOut(201);
    expect(pair.withLeftOut?.verdict).toBe('clear');
    expect(pair.overlays).not.toContain('depends-on-left-out');
  });

  test('the figures with all shots are those of the session without exclusions, worked out as the answer is', () => {
    // A round lost its other shot, so the answer is one of shots, and so is the one beside it.
    const all = pairIn(oneAfterAnother({ a: [...twelve.a, 214], b: [...twelve.b, 330] }));
    const pair = leftOut(330);
    expect(pair.withLeftOut).toEqual({ estimate: all.estimate, ci: all.ci, verdict: all.verdict });
  });

  test('nothing left out, nothing to compare', () => {
    expect(pairIn(inTurn(twelve)).withLeftOut).toBeNull();
  });

  test('in visits both are held against visit means', () => {
    // Visits of one contender lie so far apart that a gap over shots does not survive; a left-out shot changes nothing.
    const visit = (level: number): number[] => [0, 1, -1, 0].map((value) => level + value);
    const swings = inVisits({ a: [212, 203, 209].flatMap(visit), b: [203, 204, 202].flatMap(visit) }, 4).map(
      (swing, index) => ({ ...swing, leftOut: index === 0 }),
    );
    const pair = pairIn(swings);
    expect(pair.ci?.[0]).toBeGreaterThan(0);
    expect(pair.overlays).toContain('visits-alike');
    expect([pair.verdict, pair.withLeftOut?.verdict]).toEqual(['too-close', 'too-close']);
    expect(pair.overlays).not.toContain('depends-on-left-out');
  });
});

describe('shots of one visit resemble each other', () => {
  const visit = (level: number): number[] => [0, 1, -1, 0].map((value) => level + value);
  const session = (hitters: number, levels: readonly number[]): Swing[] =>
    Array.from({ length: hitters }, (_, index) =>
      inVisits({ a: levels.flatMap(visit), b: [203, 204, 202].flatMap(visit) }, 4, `h${index}`),
    ).flat();

  test('a gap over shots that is none over visits is too close to call', () => {
    const pair = pairIn(session(1, [212, 203, 209]));
    expect([pair.verdict, pair.holds, pair.leaveOneOut]).toEqual(['too-close', [], null]);
  });

  test('a gap that shows in every visit stands', () => {
    const pair = pairIn(session(1, [212, 213, 211]));
    expect(pair.verdict).toBe('clear');
    expect(pair.overlays).not.toContain('visits-alike');
  });

  test('for two golfers side by side as well', () => {
    const apart = [
      ...inVisits({ a: [212, 203, 209].flatMap(visit), b: [203, 204, 202].flatMap(visit) }, 4, 'one'),
      ...inVisits({ a: [201, 214, 200].flatMap(visit), b: [203, 202, 204].flatMap(visit) }, 4, 'two'),
    ];
    const pair = pairIn(apart);
    expect(pair.ci?.[0]).toBeGreaterThan(0);
    expect(pair.overlays).toContain('visits-alike');
    expect(pairIn(session(2, [212, 213, 211])).overlays).not.toContain('visits-alike');
  });
});

describe('leans', () => {
  // When a is far up, b is far down in the same round: over rounds the gap swells and shrinks.
  const seesaw = {
    a: [202, 208, 202, 206, 210, 200, 202, 205],
    b: [202, 195, 203, 199, 195, 205, 204, 198],
  };

  test('where two of three other ways fail', () => {
    const pair = pairIn(lastApart(seesaw), { matters: { carry: yd(1) } });
    expect(pair.verdict).toBe('size-unsure');
    expect(pair.holds.map(({ check, state }) => ({ check, state }))).toEqual([
      { check: 'usual-strikes', state: 'fails' },
      { check: 'by-rounds', state: 'fails' },
      { check: 'drift-taken-out', state: 'agrees' },
    ]);
    expect(pair.overlays).toContain('leans');
  });

  test('not where they hold, and puts nobody behind', () => {
    expect(pairIn(inTurn(twelve)).overlays).not.toContain('leans');
    const leading = (carries: Readonly<Record<string, readonly number[]>>): unknown =>
      analyse(inputFor(inTurn(carries), { matters: { carry: yd(1) } }), []).metrics[0]?.leading;
    expect(leading(twelve)).toEqual(['a']);
    expect(leading(seesaw)).toEqual(['a', 'b']);
  });

  test.each([
    [['fails'], true],
    [['agrees'], false],
    [['fails', 'agrees'], false],
    [['fails', 'narrow'], false],
    [['fails', 'fails'], true],
    [['fails', 'agrees', 'narrow'], false],
    [['fails', 'agrees', 'fails'], true],
    [[], false],
  ] as const)('%j: %s', (states, leaning) => {
    expect(onlyLeans(states.map((state) => ({ state })))).toBe(leaning);
  });
});

describe('found too big', () => {
  const gapOf = (n: number, sd: number): PairFindings =>
    pairIn(inTurn({ a: shots(n, 200 + 3 * sd, sd), b: shots(n, 200, sd) }));

  test('where a gap that matters is found less than every second time', () => {
    expect(power(5 / 8, { n: 5, k: 2, level: 0.95 })).toBeLessThan(0.5);
    expect(gapOf(5, 8).overlays).toContain('found-too-big');
  });

  test('not where it is found more often', () => {
    expect(power(5 / 4, { n: 12, k: 2, level: 0.95 })).toBeGreaterThan(0.5);
    expect(gapOf(12, 4).overlays).not.toContain('found-too-big');
  });

  test('not beside an answer that is no gap', () => {
    const pair = pairIn(inTurn({ a: shots(5, 200, 8), b: shots(5, 200, 8) }));
    expect(pair.verdict).toBe('too-close');
    expect(pair.overlays).not.toContain('found-too-big');
  });
});

describe('not judged', () => {
  const causes: readonly (readonly [string, readonly Swing[], Options])[] = [
    ['four shots with one of them', inTurn({ a: shots(4, 215, 4), b: shots(12, 200, 4) }), {}],
    [
      'four counted after one was left out',
      inTurn({ a: shots(5, 215, 4), b: shots(12, 200, 4) }).map((swing, index) => ({
        ...swing,
        leftOut: index === 0,
      })),
      {},
    ],
    [
      'no reading of one of them',
      inTurn(twelve).map((swing) =>
        swing.contender === 'a' ? { ...swing, values: { carry: null } } : swing,
      ),
      {},
    ],
    ['every reading the same', inTurn({ a: Array(8).fill(200), b: Array(8).fill(200) }), {}],
  ];
  test.each(causes)('%s', (_name, swings, options) => {
    const pair = pairIn(swings, options);
    expect(pair).toMatchObject({
      estimate: null,
      ci: null,
      p: null,
      method: null,
      verdict: 'not-judged',
      holds: [],
    });
  });

  test('a golfer of three with four shots is too few, though all together are many', () => {
    const swings = ['one', 'two', 'three'].flatMap((hitter, index) =>
      inTurn({ a: shots(index === 0 ? 4 : 8, 215, 4), b: shots(8, 200, 4) }, hitter),
    );
    expect(pairIn(swings).verdict).toBe('not-judged');
  });

  test('the others are judged among themselves', () => {
    const findings: Findings = analyse(
      inputFor(inTurn({ a: shots(4, 215, 4), b: shots(12, 200, 4), c: shots(12, 215, 4) })),
      [],
    );
    const [ab, ac, bc] = findings.metrics[0]?.pairs ?? [];
    expect([ab?.verdict, ac?.verdict]).toEqual(['not-judged', 'not-judged']);
    // two are left, so it is Welch's t, and the level is that of one pair
    expect([bc?.verdict, bc?.method]).toEqual(['clear', 'welch']);
  });
});

describe('level', () => {
  const swings = inTurn(twelve).map((swing) => ({
    ...swing,
    values: { ...swing.values, side: yd(3), total: (swing.values.carry ?? 0) + yd(random.normal()) },
  }));
  test('is shared by two primaries, 95 % for one and for what was not planned', () => {
    const levels = (primaries: Options['primaries']): number[] =>
      analyse(inputFor(swings, primaries === undefined ? {} : { primaries }), []).metrics.map(
        ({ pairs }) => pairs[0]?.level ?? NaN,
      );
    expect(levels(['carry'])).toEqual([0.95, 0.95, 0.95]);
    expect(levels(['carry', 'total'])).toEqual([0.975, 0.975, 0.95]);
  });
});

test('a spread smaller than rounding makes is not believed', () => {
  // a reads 215 or 215 all the time, in steps of a whole yard: variance w^2 / 12 at least
  const flat = { a: Array<number>(8).fill(215), b: [200, 200, 200, 200, 200, 200, 200, 200.0001] };
  const pair = pairIn(oneAfterAnother(flat), { step: yd(1) });
  const se = Math.sqrt((2 * yd(1) ** 2) / 12 / 8);
  // t(0.975; 14) = 2.144787 (standard tables)
  expect(((pair.ci?.[1] ?? NaN) - (pair.ci?.[0] ?? NaN)) / 2).toBeCloseTo(2.144787 * se, 6);
  expect(tenthYard).toBeLessThan(yd(1));
});

describe('what matters is unusual', () => {
  const swings = inTurn(twelve);
  test.each([
    [50, true],
    [0.1, true],
    [15, false],
    [5, false],
  ])('%d yards: %s', (matters, said) => {
    expect(pairIn(swings, { matters: { carry: yd(matters) } }).overlays.includes('matters-unusual')).toBe(
      said,
    );
  });
});

describe('readings missing unevenly', () => {
  // of twenty shots each, readings missing for so many with a and with b
  const missing = (a: number, b: number, shotsEach = 20): PairFindings => {
    const own = { a: shots(shotsEach, 215, 4), b: shots(shotsEach, 200, 4) };
    const seen = { a: 0, b: 0 };
    const swings = inTurn(own).map((swing): Swing => {
      const id = swing.contender === 'a' ? 'a' : 'b';
      seen[id] += 1;
      return seen[id] <= (id === 'a' ? a : b) ? { ...swing, values: { carry: null } } : swing;
    });
    return pairIn(swings);
  };

  test.each([
    [0, 3, true],
    [3, 0, true],
    [0, 2, false],
    [3, 3, false],
    [2, 5, true],
  ])('%i and %i of twenty: %s', (a, b, uneven) => {
    expect(has(missing(a, b), 'uneven-readings')).toBe(uneven);
  });

  test('never for one shot, however large its share', () => {
    expect(has(missing(0, 1, 6), 'uneven-readings')).toBe(false);
    expect(has(missing(0, 2, 8), 'uneven-readings')).toBe(true);
  });
});
