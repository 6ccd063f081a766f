import { describe, expect, test } from 'vitest';
import { criticalRange } from '../../src/stats/distributions/criticalRange.ts';
import { noncentralTUpper } from '../../src/stats/distributions/noncentralT.ts';
import {
  studentizedRangeQuantile,
  studentizedRangeUpper,
} from '../../src/stats/distributions/studentizedRange.ts';
import { tTwoSided, tUpper } from '../../src/stats/distributions/t.ts';
import reference from '../reference/studentized-range.json' with { type: 'json' };
import { at, expectClose } from './close.ts';

const dfOf = (row: { readonly df: number | null }): number => row.df ?? Infinity;

describe('against 113-bit quadrature (tests/reference/studentized-range.c)', () => {
  test('the upper tail, df from 1 to infinity, k from 2 to 15: 1e-11 absolute', () => {
    for (const row of reference.tails) {
      const df = dfOf(row);
      const what = `q ${row.q} k ${row.k} df ${df}`;
      expectClose(studentizedRangeUpper(row.q, row.k, df), row.upper, 1e-11, 1, what);
    }
  });

  test('the far tail keeps its relative accuracy: 1e-9', () => {
    for (const row of reference.tails.filter(({ agree }) => agree < 1e-11)) {
      const df = dfOf(row);
      const what = `q ${row.q} k ${row.k} df ${df}`;
      expectClose(studentizedRangeUpper(row.q, row.k, df), row.upper, 1e-9, row.upper, what);
    }
  });

  test('quantiles: 1e-9 relative', () => {
    for (const row of reference.quantiles) {
      const df = dfOf(row);
      const q = studentizedRangeQuantile(row.p, row.k, df);
      expectClose(q, row.q, 1e-9, row.q, `p ${row.p} k ${row.k} df ${df}`);
    }
  });

  test('and by the series in 1 / df: 1e-9 relative', () => {
    for (const row of reference.quantiles) {
      const df = dfOf(row);
      expectClose(criticalRange(row.p, row.k, df), row.q, 1e-9, row.q, `p ${row.p} k ${row.k} df ${df}`);
    }
  });

  test('noncentral t: 1e-11 absolute', () => {
    for (const { t, df, delta, upper } of reference.noncentralT) {
      const what = `t ${t} df ${df} delta ${delta}`;
      expectClose(noncentralTUpper(t, df, delta), upper, 1e-11, 1, what);
      expectClose(noncentralTUpper(-t, df, -delta), 1 - upper, 1e-11, 1, what);
    }
  });
});

test('the series gives the quantile that is worked out, to 12 digits, on either side of its joints', () => {
  for (const p of [0.5, 0.8, 0.95, 0.9875, 0.9999]) {
    for (const k of [2, 4, 12, 13]) {
      for (const df of [1, 1.3, 2, 3.7, 7.99, 8.01, 15.9, 16, 16.1, 22.4, 60, 1e4, Infinity]) {
        const exact = studentizedRangeQuantile(p, k, df);
        expectClose(criticalRange(p, k, df), exact, 1e-12, exact, `p ${p} k ${k} df ${df}`);
      }
    }
  }
});

describe('identities', () => {
  test('two groups: P(Q > q) = P(|T| > q / sqrt 2), far tails too', () => {
    for (const df of [1, 1.5, 2, 3, 5, 8, 12.7, 40, 1000, 1e6, Infinity]) {
      for (const q of [0.01, 0.3, 1, 2.5, 4, 8, 15]) {
        const exact = tTwoSided(q / Math.SQRT2, df);
        expectClose(studentizedRangeUpper(q, 2, df), exact, 1e-10, exact, `q ${q} df ${df}`);
      }
    }
  });

  test('delta 0: the noncentral t is the t', () => {
    for (const df of [1, 4, 22, 300]) {
      for (const t of [-3, 0.2, 2, 7]) expectClose(noncentralTUpper(t, df, 0), tUpper(t, df), 1e-11);
    }
  });

  test('a quantile leads back to its probability, from a half to 1 - 1e-9', () => {
    for (const p of [0.5, 0.7, 0.95, 0.9999, 1 - 1e-9]) {
      for (const [k, df] of [
        [2, 1],
        [3, 2.2],
        [4, 17.3],
        [6, 1000],
        [10, Infinity],
      ] as const) {
        const q = studentizedRangeQuantile(p, k, df);
        expectClose(studentizedRangeUpper(q, k, df), 1 - p, 1e-9, 1 - p, `p ${p} k ${k} df ${df}`);
      }
    }
  });

  test('q falls as df grow and rises with k', () => {
    const q = (k: number, df: number): number => studentizedRangeQuantile(0.95, k, df);
    for (const k of [2, 3, 6]) {
      for (const df of [1, 2, 5, 30, 1e4]) {
        expect(q(k, df)).toBeGreaterThan(q(k, df * 1.01));
        expect(q(k + 1, df)).toBeGreaterThan(q(k, df));
      }
    }
  });
});

describe('published tables', () => {
  // H. L. Harter, "Tables of Range and Studentized Range", Annals of Mathematical Statistics 31 (1960), table 3,
  // four figures, as picked out in the test suite of SciPy 1.17: rows df 1 3 10 20 120 infinity, columns k 2 8 14 20
  const ks = [2, 8, 14, 20];
  const dfs = [1, 3, 10, 20, 120, Infinity];
  const tables: readonly (readonly [number, readonly number[]])[] = [
    [
      0.95,
      [
        17.97, 45.4, 54.33, 59.56, 4.501, 8.853, 10.35, 11.24, 3.151, 5.305, 6.028, 6.467, 2.95, 4.768, 5.357,
        5.714, 2.8, 4.363, 4.842, 5.126, 2.772, 4.286, 4.743, 5.012,
      ],
    ],
    [
      0.99,
      [
        90.03, 227.2, 271.8, 298.0, 8.261, 15.64, 18.22, 19.77, 4.482, 6.875, 7.712, 8.226, 4.024, 5.839,
        6.45, 6.823, 3.702, 5.118, 5.562, 5.827, 3.643, 4.987, 5.4, 5.645,
      ],
    ],
    [
      0.999,
      [
        900.3, 2272, 2718, 2980, 18.28, 34.12, 39.69, 43.05, 6.487, 9.352, 10.39, 11.03, 5.444, 7.313, 7.966,
        8.37, 4.772, 6.039, 6.448, 6.695, 4.654, 5.823, 6.191, 6.411,
      ],
    ],
  ];

  test.each(tables)('q at %d meets the printed four figures', (p, table) => {
    dfs.forEach((df, row) => {
      ks.forEach((k, column) => {
        const printed = at(table, row * ks.length + column);
        const q = studentizedRangeQuantile(p, k, df);
        // Harter's fourth figure is up to 1.2 units off: 90.03 for sqrt 2 t(0.995, 1) = 90.0242, 4.772 for
        // sqrt 2 t(0.9995, 120) = 4.7708
        const unit = 10 ** (Math.floor(Math.log10(printed)) - 3);
        expect(Math.abs(q - printed), `k ${k} df ${df}`).toBeLessThanOrEqual(1.3 * unit);
      });
    });
  });

  test('16-figure values of mpmath printed in the test data of SciPy', () => {
    expectClose(studentizedRangeUpper(0.1, 3, 10), 1 - 0.0027520560662338336, 1e-12, 1);
    expectClose(studentizedRangeUpper(1, 3, 10), 1 - 0.23510918942128056, 1e-12, 1);
    expectClose(studentizedRangeUpper(10, 3, 10), 1 - 0.999908236635449, 1e-12, 1);
  });
});

test('outside the domain it throws', () => {
  expect(() => studentizedRangeUpper(3, 1, 10)).toThrow('k must be a whole number of groups from 2, got 1');
  expect(() => studentizedRangeUpper(3, 3, 0)).toThrow('df must be above 0');
  expect(() => studentizedRangeQuantile(1, 3, 10)).toThrow('p must lie between 0 and 1');
  expect(() => studentizedRangeQuantile(0.49, 3, 10)).toThrow('p must be at least 0.5, got 0.49');
  expect(() => studentizedRangeUpper(NaN, 3, 10)).toThrow('q is not a number');
  expect(studentizedRangeUpper(-1, 3, 10)).toBe(1);
});
