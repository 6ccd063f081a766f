import { expect, test } from 'vitest';
import { at } from '../../src/stats/at.ts';

test('the element at an index, of a list or a typed array', () => {
  expect(at(['a', 'b'], 1)).toBe('b');
  expect(at(Float64Array.of(3, 0), 1)).toBe(0);
  expect(at([null], 0)).toBeNull();
});

test('an index that misses is named with the length', () => {
  expect(() => at(['a', 'b'], 2)).toThrow(new RangeError('no element at 2 of 2'));
  expect(() => at([], -1)).toThrow('no element at -1 of 0');
  expect(() => at(Int32Array.of(1), 0.5)).toThrow('no element at 0.5 of 1');
});
