import { expect, test } from 'vitest';
import { binomialTwoSided } from '../../src/stats/binomialTest.ts';
import { clopperPearsonInterval, wilsonInterval } from '../../src/stats/proportion.ts';
import reference from '../reference/statistics.json' with { type: 'json' };
import { expectClose } from './close.ts';

test('Wilson, Clopper-Pearson and binomial test against prop.test and binom.test of R', () => {
  for (const row of reference.shares) {
    const what = `${row.successes} of ${row.trials}`;
    const near = (own: readonly [number, number], expected: readonly number[]): void => {
      expectClose(own[0], expected[0] ?? NaN, 1e-10, 1, `${what} low`);
      expectClose(own[1], expected[1] ?? NaN, 1e-10, 1, `${what} high`);
    };
    near(wilsonInterval(row.successes, row.trials, 0.95), row.wilson);
    near(clopperPearsonInterval(row.successes, row.trials, 0.95), row.clopperPearson);
    near(clopperPearsonInterval(row.successes, row.trials, 0.9), row.clopperPearson90);
    expectClose(binomialTwoSided(row.successes, row.trials), row.p, 1e-9, row.p, what);
    expectClose(binomialTwoSided(row.successes, row.trials, 0.3), row.p30, 1e-9, row.p30, what);
  }
});

test('seven of eight: 18 of 256 ways', () => {
  expectClose(binomialTwoSided(7, 8), 18 / 256, 1e-14);
});

test('counts that cannot be are refused', () => {
  expect(() => wilsonInterval(6, 5, 0.95)).toThrow('needs 0 <= successes <= trials, got 6 of 5');
  expect(() => clopperPearsonInterval(1.5, 5, 0.95)).toThrow('got 1.5 of 5');
  expect(() => binomialTwoSided(0, 0)).toThrow('0 of 0');
});
