import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { additiveModel } from '../../src/stats/additiveModel.ts';
import { gamesHowell } from '../../src/stats/gamesHowell.ts';
import { leaveOneOut, leaveOneOutRange } from '../../src/stats/leaveOneOut.ts';
import { holm } from '../../src/stats/holm.ts';
import { moments } from '../../src/stats/moments.ts';
import { orderClass } from '../../src/stats/orderClass.ts';
import { seededRandom, shuffled } from '../../src/stats/random.ts';
import { welchT } from '../../src/stats/welchT.ts';
import { expectClose } from './close.ts';

/** What must hold whatever the data. */
const shot = fc.integer({ min: -4000, max: 4000 }).map((tenths) => tenths / 10);
const group = fc.array(shot, { minLength: 3, maxLength: 20 }).filter((values) => new Set(values).size > 1);

describe('leaving one out', () => {
  const spread = fc.array(fc.oneof(shot, fc.constantFrom(0, 5e3, 1e9)), { minLength: 3, maxLength: 40 });
  const groups = fc.array(
    spread.filter((values) => new Set(values).size > 2),
    { minLength: 2, maxLength: 4 },
  );
  const plainly = (all: readonly (readonly number[])[], group: number, place: number) => {
    const rest = all.with(group, (all[group] ?? []).toSpliced(place, 1));
    const [own] = gamesHowell(
      rest.map((values) => moments(values)),
      0.95,
    );
    if (own === undefined) expect.fail('no gap');
    return own;
  };

  test('every gap is the one worked out anew from what is left', () => {
    fc.assert(
      fc.property(groups, (all) => {
        const left = leaveOneOut(all, 0, 1, 0.95);
        expect(left).toHaveLength((all[0] ?? []).length + (all[1] ?? []).length);
        for (const { group: of, place, gap } of left) {
          const [own, expected] = [gap(), plainly(all, of, place)];
          expectClose(own.estimate, expected.estimate, 1e-12, expected.standardError);
          expectClose(own.standardError, expected.standardError, 1e-12);
          expectClose(own.df, expected.df, 1e-11);
          expectClose(own.ci[0], expected.ci[0], 1e-10, expected.standardError);
          expectClose(own.ci[1], expected.ci[1], 1e-10, expected.standardError);
        }
      }),
    );
  });

  test('the range is that of all of them, to the last bit', () => {
    fc.assert(
      fc.property(fc.array(group, { minLength: 2, maxLength: 4 }), (all) => {
        const estimates = [0, 1].flatMap((of) =>
          (all[of] ?? []).map((_, place) => {
            const rest = all.with(of, (all[of] ?? []).toSpliced(place, 1));
            return moments(rest[0] ?? []).mean - moments(rest[1] ?? []).mean;
          }),
        );
        expect(leaveOneOutRange(all, 0, 1)).toEqual([Math.min(...estimates), Math.max(...estimates)]);
      }),
    );
  });
});

describe('gaps', () => {
  test('turned round, a gap changes its sign and nothing else', () => {
    fc.assert(
      fc.property(group, group, (a, b) => {
        const there = welchT(moments(a), moments(b), 0.95);
        const back = welchT(moments(b), moments(a), 0.95);
        expect(back.estimate).toBeCloseTo(-there.estimate, 9);
        expectClose(back.df, there.df, 1e-12);
        expectClose(back.p, there.p, 1e-9);
        expect(back.ci[0]).toBeCloseTo(-there.ci[1], 9);
      }),
    );
  });

  test('another unit and another zero scale the gap and leave df and p', () => {
    fc.assert(
      fc.property(fc.array(group, { minLength: 3, maxLength: 4 }), (groups) => {
        const plain = gamesHowell(
          groups.map((values) => moments(values)),
          0.95,
        );
        const metres = groups.map((values) => moments(values.map((value) => value * 0.9144 + 1000)));
        gamesHowell(metres, 0.95).forEach((gap, i) => {
          const own = plain[i];
          if (own === undefined) expect.fail('pairs differ in number');
          expectClose(gap.estimate, own.estimate * 0.9144, 1e-9, own.standardError);
          expectClose(gap.df, own.df, 1e-9);
          expectClose(gap.p, own.p, 1e-8, Math.max(own.p, 1e-12));
        });
      }),
    );
  });

  test('an interval leaves out 0 exactly when p is below 1 - level', () => {
    fc.assert(
      fc.property(fc.array(group, { minLength: 2, maxLength: 5 }), (groups) => {
        for (const { ci, p } of gamesHowell(
          groups.map((values) => moments(values)),
          0.95,
        )) {
          if (Math.abs(p - 0.05) < 1e-9) continue;
          expect(ci[0] > 0 || ci[1] < 0).toBe(p < 0.05);
        }
      }),
    );
  });

  test('blocks may differ by any amount: the additive model does not see it', () => {
    const row = fc.tuple(shot, shot, shot, shot);
    fc.assert(
      fc.property(fc.array(row, { minLength: 3, maxLength: 8 }), (rows) => {
        const cells = (lift: (block: number) => number) =>
          rows.flatMap(([, ...values], block) =>
            values.map((value, treatment) => ({ block, treatment, value: value + lift(block) })),
          );
        const varied = new Set(rows.map(([, a, b, c]) => [a - b, b - c].join())).size > 1;
        fc.pre(varied);
        const plain = additiveModel(
          cells(() => 0),
          0.95,
        );
        const lifted = additiveModel(
          cells((block) => rows[block]?.[0] ?? 0),
          0.95,
        );
        expectClose(lifted.residualVariance, plain.residualVariance, 1e-7);
        plain.gaps.forEach((gap, i) => {
          expectClose(
            lifted.gaps[i]?.estimate ?? NaN,
            gap.estimate,
            1e-7,
            Math.max(1, Math.abs(gap.estimate)),
          );
        });
      }),
    );
  });
});

test('Holm: never below the p value, never above Bonferroni or 1, same order', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 12 }),
      (ps) => {
        const adjusted = holm(ps);
        adjusted.forEach((value, i) => {
          const p = ps[i] ?? NaN;
          expect(value).toBeGreaterThanOrEqual(p);
          expect(value).toBeLessThanOrEqual(Math.min(1, p * ps.length));
          adjusted.forEach((other, j) => {
            if (p < (ps[j] ?? NaN)) expect(value).toBeLessThanOrEqual(other);
          });
        });
      },
    ),
  );
});

test('shuffled rounds are a rotation, whatever the shuffle', () => {
  fc.assert(
    fc.property(
      fc.string(),
      fc.integer({ min: 3, max: 6 }),
      fc.integer({ min: 3, max: 12 }),
      (seed, k, rounds) => {
        const random = seededRandom(seed);
        const groups = Array.from({ length: k }, (_, i) => `club ${i}`);
        const sequence = Array.from({ length: rounds }, () => shuffled(groups, random)).flat();
        const order = orderClass(sequence);
        expect(order).toMatchObject({ kind: 'rotation', complete: rounds });
      },
    ),
  );
});
