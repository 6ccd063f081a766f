import { array, assert, constantFrom, double, property } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { roundedNumber, roundedNumbers } from '../../src/charts/roundedNumbers.ts';

describe('roundedNumber', () => {
  test('keeps as many decimals as asked for, and no zeros at their end', () => {
    const rounded = [12.345, 12.04, 12.999, -0.04, -12.345, 7].map((number) => [
      roundedNumber(number, 1),
      roundedNumber(number, 2),
    ]);
    expect(rounded).toEqual([
      ['12.3', '12.35'],
      ['12', '12.04'],
      ['13', '13'],
      ['0', '-0.04'],
      ['-12.3', '-12.34'],
      ['7', '7'],
    ]);
  });

  test('halves go up from either side of what a computer keeps of them', () => {
    expect([1.25, 1.2499999999, 1.2500000001].map((number) => roundedNumber(number, 1))).toEqual([
      '1.3',
      '1.3',
      '1.3',
    ]);
  });

  test('is within half a step of every number, and the same twice', () => {
    assert(
      property(double({ min: -12_000, max: 12_000, noNaN: true }), (number) => {
        const text = roundedNumber(number, 1);
        expect(text).toMatch(/^-?\d+(?:\.[1-9])?$/);
        expect(Math.abs(Number(text) - number)).toBeLessThan(0.0500003);
        expect(roundedNumber(number, 1)).toBe(text);
      }),
    );
  });
});

describe('roundedNumbers', () => {
  test('rounds what has a fraction or an exponent and leaves the rest', () => {
    expect(roundedNumbers('translate(12.345,-0.04) rotate(45)', 1)).toBe('translate(12.3,0) rotate(45)');
    expect(roundedNumbers('M1e-7,2.5e1L.55-3.21V100', 1)).toBe('M0,25L0.6-3.2V100');
  });

  test('finds the numbers that their grammar finds in any text', () => {
    const number = /-?\d*\.\d+(?:e[-+]?\d+)?|-?\d+e[-+]?\d+/g;
    const pieces = constantFrom(...'0123456789--..ee+,M ', '12.345', '-.5', '6e-7');
    assert(
      property(array(pieces, { maxLength: 12 }), (parts) => {
        const text = parts.join('');
        const expected = text.replaceAll(number, (found) => roundedNumber(Number(found), 2));
        expect(roundedNumbers(text, 2)).toBe(expected);
      }),
      { numRuns: 2000 },
    );
  });
});
