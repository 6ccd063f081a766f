import { describe, expect, test } from 'vitest';
import { isEven, leverOf } from '../../src/findings/lever.ts';

const rows = (text: string): readonly string[] => [...text];
/** Twelve shots in turn: a lever of 1 / 11, under the 0.1 that evens out. */
const [aFirst, bFirst] = [rows('abababababab'), rows('babababababa')];

describe('golfers’ orders even out', () => {
  test('where some hit one earlier and some the other', () => {
    expect(isEven([aFirst, bFirst], 'a', 'b')).toBe(true);
    expect(isEven([aFirst, aFirst, bFirst], 'b', 'a')).toBe(true);
  });

  test('never where all hit the same one earlier, by however little', () => {
    expect(Math.abs(leverOf([aFirst, aFirst], 'a', 'b') ?? 1)).toBeLessThan(0.1);
    expect(isEven([aFirst, aFirst], 'a', 'b')).toBe(false);
    expect(isEven([bFirst, bFirst], 'a', 'b')).toBe(false);
  });

  test('nor where the one way outweighs the other', () => {
    const late = rows('aaaaaabbbbbb');
    expect(isEven([late, late, bFirst], 'a', 'b')).toBe(false);
  });
});
