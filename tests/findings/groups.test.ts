import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/findings/analyse.ts';
import { hitterModelGaps } from '../../src/findings/hitterModelGaps.ts';
import { landingOf as landing } from '../../src/findings/landing.ts';
import { leadingGroup } from '../../src/findings/leadingGroup.ts';
import { seededRandom } from '../../src/stats/random.ts';
import { plainPair as pair } from './plainPair.ts';
import { inputFor, inTurn, sessionOf, yd, type Swing } from './sessions.ts';

const random = seededRandom('groups');
const normal = (n: number, mean: number, sd: number): number[] =>
  Array.from({ length: n }, () => mean + sd * random.normal());

describe('leading group', () => {
  const three = [
    pair('a', 'b', 3, 'too-close'),
    pair('a', 'c', 9, 'clear'),
    pair('b', 'c', 6, 'size-unsure'),
  ];

  test('the best average and all that are not surely behind it', () => {
    expect(leadingGroup(three, 'more')).toEqual(['a', 'b']);
    const less = three.map((own) => ({ ...own, ahead: own.b }));
    expect(leadingGroup(less, 'less')).toEqual(['c']);
  });

  test('none where neither side is better, every cause is open, or nothing was judged', () => {
    expect(leadingGroup(three, 'neither')).toBeNull();
    const open = three.map(({ a, b, estimate, verdict }) =>
      pair(a, b, estimate, verdict, { credit: 'open' }),
    );
    expect(leadingGroup(open, 'more')).toBeNull();
    expect(leadingGroup([pair('a', 'b', null, 'not-judged')], 'more')).toBeNull();
  });

  test('one open pair does not take the lead from credited ones', () => {
    // b to c is open: c is behind a all the same
    const behind = [...three.slice(0, 2), pair('b', 'c', 6, 'size-unsure', { credit: 'open' })];
    expect(leadingGroup(behind, 'more')).toEqual(['a', 'b']);
  });

  test('nobody is behind the best by an open gap, but may be behind another by a credited one', () => {
    const [ab, ac] = [pair('a', 'b', 3, 'too-close'), pair('a', 'c', 9, 'clear', { credit: 'open' })];
    expect(leadingGroup([ab, ac, pair('b', 'c', 6, 'too-close')], 'more')).toEqual(['a', 'b', 'c']);
    expect(leadingGroup([ab, ac, pair('b', 'c', 6, 'clear')], 'more')).toEqual(['a', 'b']);
  });

  test('a gap that mostly does not hold otherwise puts nobody behind', () => {
    const leaning = [
      ...three.slice(0, 1),
      pair('a', 'c', 9, 'clear', { overlays: ['leans'] }),
      ...three.slice(2),
    ];
    expect(leadingGroup(leaning, 'more')).toEqual(['a', 'b', 'c']);
  });

  test('where a pair is missing, who is ahead in a pair is never behind in it', () => {
    // The one gap of a over c makes a's sum the greatest, though b is ahead of a.
    const pairs = [pair('a', 'b', -3, 'clear', { ahead: 'b' }), pair('a', 'c', 20, 'clear')];
    expect(leadingGroup(pairs, 'more')).toEqual(['a', 'b']);
  });

  test('a contender that was not judged stands nowhere', () => {
    const pairs = [
      pair('a', 'b', 3, 'clear'),
      pair('a', 'c', null, 'not-judged'),
      pair('b', 'c', null, 'not-judged'),
    ];
    expect(leadingGroup(pairs, 'more')).toEqual(['a']);
  });

  test('the best is best golfer by golfer, however unevenly they hit', () => {
    // Two golfers, a ahead by 8 for both; the long one hit b three times as often, so that b has the higher plain average.
    const swings = [
      ...inTurn({ a: normal(6, 258, 2), b: normal(18, 250, 2) }, 'long'),
      ...inTurn({ a: normal(18, 208, 2), b: normal(6, 200, 2) }, 'short'),
    ];
    const [carry] = analyse(inputFor(swings, { matters: { carry: yd(1) } }), []).metrics;
    const [a, b] = carry?.byContender ?? [];
    expect(b?.mean).toBeGreaterThan(a?.mean ?? NaN);
    expect(carry?.pairs[0]?.estimate).toBeGreaterThan(yd(5));
    expect(
      leadingGroup(
        (carry?.pairs ?? []).map((own) => ({ ...own, credit: 'contender' as const })),
        'more',
      ),
    ).toEqual(['a']);
  });
});

describe('the hitter as the unit', () => {
  const sample = (contender: string, values: readonly number[]) => ({ contender, values });
  const table = (hitters: number, cell: (hitter: number, contender: string) => readonly number[]) =>
    Array.from({ length: hitters }, (_, hitter) =>
      ['a', 'b', 'c'].map((contender) => sample(contender, cell(hitter, contender))),
    );
  const usual = (hitter: number, contender: string): number[] =>
    normal(6, 200 + 10 * hitter + (contender === 'a' ? 5 : 0), 3);

  test('cells under three shots drop out where the usual cell has six', () => {
    const small = (shots: number) =>
      hitterModelGaps(
        table(8, (hitter, id) => usual(hitter, id).slice(0, hitter === 0 && id === 'b' ? shots : 6)),
        0.95,
      );
    expect([small(2).cellsLeftOut, small(3).cellsLeftOut]).toEqual([1, 0]);
  });

  test('how many dropped out stands in the findings', () => {
    const swings = Array.from({ length: 7 }, (_, hitter) =>
      inTurn({ a: normal(6, 215, 4), b: normal(hitter === 3 ? 2 : 6, 200, 4) }, `h${hitter}`),
    ).flat();
    const [carry] = analyse(inputFor(swings), []).metrics;
    expect(carry?.cellsLeftOut).toBe(1);
    expect(
      analyse(inputFor(swings.filter(({ hitter }) => hitter === 'h0')), []).metrics[0]?.cellsLeftOut,
    ).toBe(0);
  });

  test('cells under three shots stay where the usual cell is as small', () => {
    const { cellsLeftOut, gaps } = hitterModelGaps(
      table(8, (hitter, id) => usual(hitter, id).slice(0, hitter === 0 ? 1 : 5)),
      0.95,
    );
    expect(cellsLeftOut).toBe(0);
    expect(gaps).toHaveLength(3);
  });

  test('a pair needs six hitters who hit both', () => {
    const gapsWith = (hitC: number): readonly string[] =>
      hitterModelGaps(
        table(8, (hitter, id) => (id === 'c' && hitter >= hitC ? [] : usual(hitter, id))),
        0.95,
      ).gaps.map(({ a, b }) => a + b);
    expect(gapsWith(6)).toEqual(['ab', 'ac', 'bc']);
    expect(gapsWith(5)).toEqual(['ab']);
  });

  test('a contender nobody hit leaves the others judged, under their own names', () => {
    for (const missing of ['a', 'b', 'c']) {
      const { gaps } = hitterModelGaps(
        table(7, (hitter, id) => (id === missing ? [] : usual(hitter, id))),
        0.95,
      );
      expect(gaps.map(({ a, b }) => a + b)).toEqual([
        ['a', 'b', 'c'].filter((id) => id !== missing).join(''),
      ]);
    }
  });

  test('a table in two pieces judges nothing', () => {
    const { gaps, omnibus } = hitterModelGaps(
      table(12, (hitter, id) => ((id === 'c') === hitter >= 6 ? usual(hitter, id) : [])),
      0.95,
    );
    expect([gaps, omnibus]).toEqual([[], null]);
  });

  test('one shot with each is enough', () => {
    const { gaps } = hitterModelGaps(
      table(6, (hitter, id) => usual(hitter, id).slice(0, 1)),
      0.95,
    );
    expect(gaps).toHaveLength(3);
  });
});

describe('with side and carry', () => {
  const session = (n: number, hitters = 1, across = (): number => 10 * random.normal()): Swing[] =>
    Array.from({ length: hitters }, (_, hitter) =>
      inTurn({ a: normal(n, 215, 6), b: normal(n, 205, 6) }, `h${hitter}`).map((swing) => ({
        ...swing,
        values: { ...swing.values, side: yd(across()) },
      })),
    ).flat();
  const landingOf = (swings: readonly Swing[], step?: number) => {
    const { landing } = analyse(inputFor(swings, step === undefined ? {} : { step }), []);
    if (landing === null) throw new Error('no landing');
    return landing.byContender;
  };

  test('counts of left, right and within 15 yards, ends included, left-out shots not', () => {
    const sides = [-20, -15, -0.1, 0, 0.1, 15, 15.1, 30, 30, 30, 30, 30];
    const swings = sides.flatMap((across, index): Swing[] => [
      { contender: 'a', values: { carry: yd(200 + index), side: yd(across) }, leftOut: index >= 10 },
      { contender: 'b', values: { carry: yd(190 + index), side: null } },
    ]);
    const [a, b] = landingOf(swings);
    expect(a).toMatchObject({ n: 10, left: 3, right: 6, within: 5 });
    // Wilson 1927: 5 of 10 at 95 %: centre 0.5, half-width 0.2634 (z = 1.959964)
    expect(a?.withinShare?.[0]).toBeCloseTo(0.5 - 0.26341, 4);
    expect(a?.withinShare?.[1]).toBeCloseTo(0.5 + 0.26341, 4);
    expect(b).toEqual({
      id: 'b',
      n: 0,
      meanSide: null,
      meanCarry: null,
      within: 0,
      withinShare: null,
      left: 0,
      right: 0,
      nextShot: null,
    });
  });

  test('a curve from ten shots up, for one golfer', () => {
    expect(landingOf(session(9)).map(({ nextShot }) => nextShot)).toEqual([null, null]);
    expect(landingOf(session(10)).every(({ nextShot }) => nextShot !== null)).toBe(true);
    expect(landingOf(session(10, 2)).every(({ nextShot }) => nextShot === null)).toBe(true);
  });

  test('no curve where carry and side say the same, or rounding makes the spread', () => {
    const line = inTurn({ a: normal(12, 215, 6), b: normal(12, 205, 6) }).map((swing) => ({
      ...swing,
      values: { ...swing.values, side: 0.5 * (swing.values.carry ?? 0) + 0.01 * random.normal() },
    }));
    expect(landingOf(line).map(({ nextShot }) => nextShot)).toEqual([null, null]);
    expect(
      landingOf(
        session(12, 1, () => 0.1 * random.normal()),
        yd(1),
      ).map(({ nextShot }) => nextShot),
    ).toEqual([null, null]);
  });

  test('nine of ten next shots land inside the curve', () => {
    let inside = 0;
    const trials = 2000;
    for (let trial = 0; trial < trials; trial++) {
      const swings = session(10);
      const next: readonly [number, number] = [yd(10 * random.normal()), yd(215 + 6 * random.normal())];
      const curve = landing(sessionOf(swings))?.byContender[0]?.nextShot;
      if (curve === null || curve === undefined) continue;
      const [x, y] = [next[0] - curve.centre[0], next[1] - curve.centre[1]];
      const [along, off] = [
        x * Math.cos(curve.angle) + y * Math.sin(curve.angle),
        y * Math.cos(curve.angle) - x * Math.sin(curve.angle),
      ];
      if ((along / curve.halfAxes[0]) ** 2 + (off / curve.halfAxes[1]) ** 2 <= 1) inside += 1;
    }
    // binomial: 4 standard errors of 0.9 in 2,000 are 0.027
    expect(Math.abs(inside / trials - 0.9)).toBeLessThan(0.027);
  });

  test('straighter is the gap in distance from the line, judged as any gap that was not planned', () => {
    const swings = session(20).map((swing, index) => ({
      ...swing,
      values: {
        ...swing.values,
        // a lies 4 yards off, now left, now right; b 20
        side: yd((index % 4 < 2 ? 1 : -1) * (swing.contender === 'a' ? 4 : 20) + 0.5 * random.normal()),
      },
    }));
    const findings = analyse(inputFor(swings), []);
    const [straighter] = findings.straighter ?? [];
    expect(straighter?.verdict).toBe('clear');
    expect(straighter?.estimate).toBeCloseTo(yd(-16), 0);
    expect(straighter?.overlays).toContain('not-planned');
    expect(findings.metrics.find(({ id }) => id === 'side')?.pairs[0]?.verdict).not.toBe('clear');
  });

  test('straighter is not judged where shots lie over 15 yards off the line and no target is stated', () => {
    const aimedAt = (yards: number, target?: string) => {
      const swings = session(12, 1, () => 2 * random.normal()).map((swing) => ({
        ...swing,
        values: { ...swing.values, side: (swing.values.side ?? 0) + yd(yards) },
      }));
      const input = inputFor(swings, { contenders: ['a', 'b'] });
      const conditions = target === undefined ? {} : { target };
      const findings = analyse({ ...input, written: { ...input.written, conditions } }, []);
      return findings.straighter?.[0];
    };
    for (const off of [18, -18])
      expect(aimedAt(off)).toMatchObject({
        status: 'not-judged',
        notJudged: { because: 'aim-off-line', contenders: ['a', 'b'], fewest: null },
        estimate: null,
        ahead: null,
      });
    expect(aimedAt(12)?.notJudged).toBeNull();
    expect(aimedAt(18, 'a line on the net')?.notJudged).toBeNull();
  });

  test('no side, no landing and nothing straighter', () => {
    const findings = analyse(inputFor(inTurn({ a: normal(12, 215, 6), b: normal(12, 205, 6) })), []);
    expect([findings.landing, findings.straighter]).toEqual([null, null]);
  });
});

describe('spread', () => {
  const spreadOf = (counts: Readonly<Record<string, number>>, hitter = 1) => {
    const carries = Object.fromEntries(
      Object.entries(counts).map(([id, n], index) => [id, normal(n, 200, 2 + 6 * index)]),
    );
    const swings = Array.from({ length: hitter }, (_, index) => inTurn(carries, `h${index}`)).flat();
    return analyse(inputFor(swings), []).metrics[0]?.spread;
  };

  test('is not judged under twelve shots with either', () => {
    expect(spreadOf({ a: 11, b: 30 })).toBeNull();
    expect(spreadOf({ a: 12, b: 12 })?.pairs).toHaveLength(1);
    expect(spreadOf({ a: 12, b: 11, c: 12 })?.pairs.map(({ a, b }) => a + b)).toEqual(['ac']);
    expect(spreadOf({ a: 12, b: 12 }, 2)).toBeNull();
  });

  test('names the tighter one and the ratio of standard deviations', () => {
    const [found] = spreadOf({ a: 40, b: 40 })?.pairs ?? [];
    expect(found?.tighter).toBe('a');
    expect(found?.ratio).toBeLessThan(0.6);
    expect(found?.p).toBeLessThan(0.001);
  });

  test('no interval of a spread under eight shots', () => {
    const sdCi = (n: number) =>
      analyse(inputFor(inTurn({ a: normal(n, 200, 5), b: normal(n, 200, 5) })), []).metrics[0]?.byContender[0]
        ?.sdCi;
    expect(sdCi(7)).toBeNull();
    expect(sdCi(8)).not.toBeNull();
  });
});
