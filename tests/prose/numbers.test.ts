import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatNumber, formatStep, niceStep, printStated, roundTo } from '../../src/prose/numbers.ts';
import { withUnit } from '../../src/prose/readerUnits.ts';
import type { UnitId } from '../../src/trade/units.ts';

const minus = '−';
const read = (printed: string): number => Number(printed.replace(minus, '-').replaceAll(',', ''));
const value = fc.double({ min: -5000, max: 5000, noNaN: true });

describe('a printed number', () => {
  test.each([
    [1234567.891, 2, '1,234,567.89'],
    [-1234, 0, '−1,234'],
    [999, 0, '999'],
    [0, 1, '0.0'],
    [-0, 0, '0'],
    [-0.04, 1, '0.0'],
    [1.005, 2, '1.01'],
    [-1.005, 2, '−1.01'],
    [2.5, 0, '3'],
    [-2.5, 0, '−3'],
  ])('%d with %i decimals', (number, decimals, printed) => {
    expect(formatNumber(number, decimals)).toBe(printed);
  });

  test('has a true minus, never a hyphen, never a minus before nothing', () => {
    fc.assert(
      fc.property(value, fc.constantFrom(0, 1, 2, 3), (number, decimals) => {
        const printed = formatNumber(number, decimals);
        expect(printed).toMatch(/^−?\d{1,3}(,\d{3})*(\.\d+)?$/);
        if (read(printed) === 0) expect(printed).not.toContain(minus);
        expect(Math.abs(read(printed) - number)).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-9);
      }),
    );
  });
});

describe('steps', () => {
  test.each([
    [3.9, 2],
    [2, 2],
    [1.99, 1],
    [0.7, 0.5],
    [0.05, 0.05],
    [1200, 1000],
  ])('at most %d: %d', (most, step) => {
    expect(niceStep(most).step).toBe(step);
  });

  test.each([
    [10, 0.5, '10'],
    [10.4, 0.5, '10.5'],
    [1.4402, 0.005, '1.44'],
    [1.4461, 0.005, '1.445'],
    [9.96, 0.1, '10.0'],
    [2937, 200, '3,000'],
    // 8.2296 m in yards comes out at 8.99999999999997: 9 yards, and half a step of 2 from 8 and from 10.
    [8.99999999999997, 2, '10'],
  ])('%d at %d is %s', (number, step, printed) => {
    expect(formatStep(number, niceStep(step))).toBe(printed);
  });

  test('halves go away from nothing on either side, so that a difference reads the same from both', () => {
    fc.assert(
      fc.property(value, fc.double({ min: 0.02, max: 2000, noNaN: true }), (number, most) => {
        const step = niceStep(most);
        expect(step.step).toBeLessThanOrEqual(most * (1 + 1e-9));
        expect(roundTo(-number, step) + roundTo(number, step)).toBe(0);
        expect(formatStep(-number, step).replace(minus, '')).toBe(
          formatStep(number, step).replace(minus, ''),
        );
        expect(formatStep(number, step)).not.toMatch(/^−0(\.0*)?$/);
      }),
    );
  });
});

describe('a number as it was stated', () => {
  test.each([
    [5, '5'],
    [0.02, '0.02'],
    [0.025, '0.025'],
    [12.5, '12.5'],
    [1500, '1,500'],
    // 5 yd in m, 2 mph in km/h, 10 ft in m: crooked only through the conversion
    [4.572, '4.6'],
    [3.218688, '3.2'],
    [109.36133, '110'],
  ])('%d is %s', (number, printed) => {
    expect(printStated(number)).toBe(printed);
  });
});

describe('a number with its unit', () => {
  test.each<readonly [string, UnitId, string]>([
    ['1', 'yd', '1 yard'],
    ['1.0', 'yd', '1.0 yards'],
    ['0', 'yd', '0 yards'],
    ['12', 'yd', '12 yards'],
    ['1', 'm', '1 metre'],
    ['1', 'ft', '1 foot'],
    ['2', 'ft', '2 feet'],
    ['1', 'deg', '1 degree'],
    ['2.5', 'deg', '2.5 degrees'],
    ['1', 's', '1 second'],
    ['2,600', 'rpm', '2,600 rpm'],
    ['1.46', '1', '1.46'],
    ['3', 'mph', '3 mph'],
    ['5', 'km/h', '5 km/h'],
    ['4', 'mm', '4 mm'],
  ])('%s %s', (printed, unit, words) => {
    expect(withUnit(printed, unit)).toBe(words);
  });
});
