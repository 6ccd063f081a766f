import { describe, expect, test } from 'vitest';
import { designPoints } from '../../src/flight/designPoints.ts';
import { compiled, polynomialFit, powersUpTo } from '../../src/flight/polynomial.ts';
import { polynomialAt } from './polynomialAt.ts';

describe('powers', () => {
  // terms of total degree d or less in p variables: (p + d)! / (p! d!)
  test.each([
    [4, 4, 70],
    [4, 3, 35],
    [5, 2, 21],
    [2, 1, 3],
  ])('%i variables to degree %i: %i terms', (variables, degree, terms) => {
    const powers = powersUpTo(variables, degree);
    expect(powers.length).toBe(terms);
    expect(new Set(powers.map(String)).size).toBe(terms);
  });
});

describe('fit', () => {
  const points = designPoints(86, 4);
  const f = ([a = 0, b = 0, c = 0, d = 0]: readonly number[]): number =>
    3 - a + 2 * b * c - 0.5 * d ** 4 + a * b * c * d - 7 * a ** 3;

  test('finds a polynomial again', () => {
    const polynomial = polynomialFit(powersUpTo(4, 4), points)(points.map(f));
    for (const point of [
      [0, 0, 0, 0],
      [0.3, -0.9, 0.5, 0.1],
      [-1, 1, 1, -1],
      [1.5, -1.2, 0.4, 1.1],
    ]) {
      expect(polynomialAt(polynomial, point)).toBeCloseTo(f(point), 8);
    }
  });

  test('the compiled form gives the same, also where divisors of its terms are missing', () => {
    const odd = powersUpTo(4, 3, (powers) => (powers[3] ?? 0) % 2 === 1);
    const one = polynomialFit(odd, points)(points.map(f));
    const other = polynomialFit(odd, points)(points.map((point) => f(point) ** 2));
    for (const polynomial of [one, other]) {
      const value = compiled(polynomial)(Float64Array.of(0.2, -0.7, 1.1, 0.4));
      expect(value).toBeCloseTo(polynomialAt(polynomial, [0.2, -0.7, 1.1, 0.4]), 12);
    }
  });

  test('too few points are refused', () => {
    const few = designPoints(50, 4);
    expect(() => polynomialFit(powersUpTo(4, 4), few)(few.map(f))).toThrow('no spread left');
  });
});

test('design points fill the cube and repeat nothing', () => {
  const points = designPoints(86, 4);
  expect(new Set(points.map(String)).size).toBe(86);
  for (let i = 0; i < 4; i++) {
    const column = points.map((point) => point[i] ?? 0);
    expect(Math.max(...column)).toBeGreaterThan(0.99);
    expect(Math.min(...column)).toBeLessThan(-0.97);
    expect(Math.abs(column.reduce((sum, x) => sum + x, 0) / 86)).toBeLessThan(0.05);
  }
});
