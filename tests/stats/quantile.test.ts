import fc from 'fast-check';
import { expect, test } from 'vitest';
import { outerQuantiles, quantile } from '../../src/stats/quantile.ts';

test('outer quantiles are those of the sorted values, to the last bit', () => {
  const values = fc.array(fc.double({ noNaN: true, noDefaultInfinity: true }), {
    minLength: 1,
    maxLength: 60,
  });
  fc.assert(
    fc.property(values, fc.double({ min: 0, max: 1, noNaN: true }), fc.boolean(), (some, p, ties) => {
      const own = ties ? some.map((value) => Math.sign(value)) : some;
      const [low, high] = [Math.min(p, 1 - p), Math.max(p, 1 - p)];
      const found = outerQuantiles(Float64Array.from(own), low, high);
      // A minus zero has no place of its own in an order.
      expect(found.map((value) => value + 0)).toEqual([quantile(own, low) + 0, quantile(own, high) + 0]);
    }),
  );
});

test('none, or quantiles the wrong way round, are refused', () => {
  expect(() => outerQuantiles(new Float64Array(0), 0.1, 0.9)).toThrow('at least 1 values');
  expect(() => outerQuantiles(Float64Array.of(1), 0.9, 0.1)).toThrow('p must be 0 to 1');
});
