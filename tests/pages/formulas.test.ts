import { describe, expect, test } from 'vitest';
import { formulas } from '../../src/prose/english/method/formulas.ts';
import { mathMl } from '../../src/prose/mathMl.ts';
import { bonettSdInterval } from '../../src/stats/sdInterval.ts';
import { gamesHowell } from '../../src/stats/gamesHowell.ts';
import { moments } from '../../src/stats/moments.ts';
import { studentizedRangeQuantile } from '../../src/stats/distributions/studentizedRange.ts';
import { wilsonInterval } from '../../src/stats/proportion.ts';

const linesOf = (id: string): readonly string[] => formulas.find((one) => one.id === id)?.lines ?? [];

test('every method has its formula, its reason and its source, once', () => {
  expect(formulas.length).toBeGreaterThan(25);
  expect(new Set(formulas.map(({ id }) => id)).size).toBe(formulas.length);
  for (const { lines, where, why, source } of formulas) {
    expect(lines.length).toBeGreaterThan(0);
    // What cannot be read as a formula is thrown.
    expect(lines.map(mathMl).join('')).toMatch(/^(?:<math display="block"><mrow>.+<\/mrow><\/math>)+$/);
    expect(where ?? 'None.').toMatch(/^[A-Za-z].*\.$/);
    expect(why).toMatch(/^[A-Z].*\.$/);
    expect(source).toMatch(/^[A-Z].*\.$/);
  }
});

/** The formulas as they are printed, worked out by hand on ten carries, give what the reports print. */
describe('a formula says what is computed', () => {
  const a = [231, 226, 236, 224, 229];
  const b = [220, 233, 227, 230, 222];
  const mean = (values: readonly number[]): number => values.reduce((sum, x) => sum + x, 0) / values.length;
  const variance = (values: readonly number[]): number =>
    values.reduce((sum, x) => sum + (x - mean(values)) ** 2, 0) / (values.length - 1);

  test('average and gaps', () => {
    const c = [240, 238, 229, 241, 235];
    expect(linesOf('more')).toEqual(['d ± \\frac{q_{0.95; k, f}}{\\sqrt{2}} w']);
    const [ua, ub] = [variance(a) / 5, variance(b) / 5];
    const w = Math.sqrt(ua + ub);
    const f = w ** 4 / (ua ** 2 / 4 + ub ** 2 / 4);
    const half = (studentizedRangeQuantile(0.95, 3, f) / Math.SQRT2) * w;
    const [pair] = gamesHowell([a, b, c].map(moments), 0.95);
    expect(pair?.ci[0]).toBeCloseTo(mean(a) - mean(b) - half, 8);
    expect(pair?.ci[1]).toBeCloseTo(mean(a) - mean(b) + half, 8);
  });

  test('share', () => {
    const [z, n, p] = [1.959963984540054, 12, 8 / 12];
    const half = z * Math.sqrt((p * (1 - p)) / n + (z / (2 * n)) ** 2);
    const at = (sign: number): number => (p + z ** 2 / (2 * n) + sign * half) / (1 + z ** 2 / n);
    const [low, high] = wilsonInterval(8, 12, 0.95);
    expect(low).toBeCloseTo(at(-1), 10);
    expect(high).toBeCloseTo(at(1), 10);
  });

  test('interval of a spread', () => {
    const all = [...a, ...b, 240];
    const n = all.length;
    const z = 1.959963984540054;
    const cut = Math.floor(n / (2 * Math.sqrt(n - 4)));
    const trimmed = mean([...all].sort((x, y) => x - y).slice(cut, n - cut));
    const sum = (power: number, about: number): number =>
      all.reduce((all4, x) => all4 + (x - about) ** power, 0);
    const kurtosis = (n * sum(4, trimmed)) / sum(2, mean(all)) ** 2;
    const c = n / (n - z);
    const half = z * c * Math.sqrt((kurtosis - (n - 3) / n) / (n - 1));
    const [low, high] = bonettSdInterval(all, 0.95);
    expect(low).toBeCloseTo(Math.exp((Math.log(c * variance(all)) - half) / 2), 8);
    expect(high).toBeCloseTo(Math.exp((Math.log(c * variance(all)) + half) / 2), 8);
  });
});
