import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stepOver, stepsBetween, tickText } from '../../src/charts/steps.ts';

describe('stepOver', () => {
  test.each([
    [18.06, 5, 5],
    [20, 5, 5],
    [3, 5, 1],
    [0.3, 3, 0.1],
    [2140, 5, 500],
  ])('%d in at most %d steps goes by %d', (span, most, step) => {
    expect(stepOver(span, most)).toBe(step);
  });

  test('is 1, 2 or 5 times a power of ten, covers the span, and no smaller one would', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-4, max: 1e6, noNaN: true }),
        fc.integer({ min: 2, max: 10 }),
        (span, most) => {
          const step = stepOver(span, most);
          const leading = Number(step.toExponential().slice(0, 1));
          expect([1, 2, 5]).toContain(leading);
          expect(step * most).toBeGreaterThanOrEqual(span * (1 - 1e-6));
          const smaller = leading === 5 ? step / 2.5 : step / 2;
          expect(smaller * most).toBeLessThan(span * (1 + 1e-6));
        },
      ),
    );
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('refuses a span of %d', (span) => {
    expect(() => stepOver(span, 5)).toThrow('A scale cannot span');
  });
});

test('steps do not drift', () => {
  expect(stepsBetween(-0.3, 0.3, 0.1)).toEqual([-0.3, -0.2, -0.1, 0, 0.1, 0.2, 0.3]);
});

test('numbers have the decimals of their step, a minus sign and thousands set off', () => {
  expect([tickText(0.30000000000000004, 0.1), tickText(-2500, 500), tickText(-0, 5)]).toEqual([
    '0.3',
    '−2,500',
    '0',
  ]);
});
