import { expect } from 'vitest';

/** Distance of actual from expected, relative to expected (or to `scale`, where the value may be near 0). */
export function relativeError(actual: number, expected: number, scale = Math.abs(expected)): number {
  if (actual === expected) return 0;
  return Math.abs(actual - expected) / scale;
}

/** Correct digits of the certified value, as NIST counts them: the log relative error, at most 15. */
export function correctDigits(actual: number, certified: number): number {
  const error = relativeError(actual, certified);
  return error === 0 ? 15 : Math.min(15, -Math.log10(error));
}

export function expectClose(
  actual: number,
  expected: number,
  tolerance: number,
  scale = Math.abs(expected),
  what = '',
): void {
  const error = relativeError(actual, expected, scale);
  // a NaN fails too: every comparison with it is false
  if (!(error <= tolerance)) {
    expect.fail(
      `${what} got ${actual}, expected ${expected}: off by ${error} of ${scale}, allowed ${tolerance}`,
    );
  }
  expect(error).toBeLessThanOrEqual(tolerance);
}

export function expectInterval(
  actual: readonly [number, number],
  expected: readonly number[],
  tolerance: number,
  what = '',
): void {
  const [low = NaN, high = NaN] = expected;
  const scale = Math.max(Math.abs(low), Math.abs(high));
  expectClose(actual[0], low, tolerance, scale, `${what} low`);
  expectClose(actual[1], high, tolerance, scale, `${what} high`);
}

/** `items[index]`, or a failed test. */
export function at<T>(items: readonly T[], index: number): T {
  const item = items[index];
  if (item === undefined) expect.fail(`nothing at ${index} of ${items.length}`);
  return item;
}
