import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { additiveModel } from '../../src/stats/additiveModel.ts';
import { gamesHowell } from '../../src/stats/gamesHowell.ts';
import { holm } from '../../src/stats/holm.ts';
import { moments } from '../../src/stats/moments.ts';
import { orderClass } from '../../src/stats/orderClass.ts';
import { seededRandom, shuffled } from '../../src/stats/random.ts';
import { welchT } from '../../src/stats/welchT.ts';
import { expectClose } from './close.ts';

/** What must hold whatever the data. */
const shot = fc.integer({ min: -4000, max: 4000 }).map((tenths) => tenths / 10);
const group = fc.array(shot, { minLength: 3, maxLength: 20 }).filter((values) => new Set(values).size > 1);

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
