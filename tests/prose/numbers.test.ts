import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatNumber, printAt, printLimit, printStated, roundTo, stepFor } from '../../src/prose/numbers.ts';
import { withUnit } from '../../src/prose/readerUnits.ts';
import { units, type UnitId } from '../../src/trade/units.ts';

const unitIds = Object.keys(units).filter((id): id is UnitId => Object.hasOwn(units, id));
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

describe('rounding by uncertainty', () => {
  // JCGM 100:2008, 7.2.6: it usually suffices to quote an uncertainty to at most two significant digits.
  test.each<readonly [UnitId, number | null, number]>([
    ['yd', 9, 1],
    ['yd', 2, 1],
    ['yd', 1.99, 0.1],
    ['yd', 0.2, 0.1],
    ['yd', 0.19, 0.01],
    ['yd', 0.0001, 0.001],
    ['yd', null, 1],
    ['deg', 1, 0.5],
    ['deg', 0.99, 0.1],
    ['rpm', 100, 50],
    ['rpm', 99, 10],
    ['rpm', 19, 1],
    ['1', 0.02, 0.01],
    ['1', 0.019, 0.001],
    ['s', 0.2, 0.1],
    ['mm', 1.5, 0.1],
  ])('%s known to within %s goes in steps of %d', (unit, halfWidth, step) => {
    expect(stepFor(unit, halfWidth).step).toBe(step);
  });

  test('a step is at most half the uncertainty, and prints no more than two digits of it', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...unitIds),
        fc.double({ min: 0.02, max: 2000, noNaN: true }),
        (unit, half) => {
          const { step } = stepFor(unit, half);
          expect(step).toBeLessThanOrEqual(half / 2 + 1e-12);
          const first = stepFor(unit, null).step;
          if (step < first) expect(half / step).toBeLessThan(100);
        },
      ),
    );
  });

  test('halves go away from nothing on either side, so that a gap reads the same from both', () => {
    fc.assert(
      fc.property(
        value,
        fc.constantFrom(...unitIds),
        fc.double({ min: 0.02, max: 2000, noNaN: true }),
        (number, unit, half) => {
          const step = stepFor(unit, half);
          expect(roundTo(-number, step) + roundTo(number, step)).toBe(0);
          expect(printAt(-number, step).replace(minus, '')).toBe(printAt(number, step).replace(minus, ''));
          expect(printAt(number, step)).not.toMatch(/^−0(\.0*)?$/);
        },
      ),
    );
  });
});

describe('a printed limit', () => {
  const yard = stepFor('yd', 9);
  test.each([
    [4.6, '4.6'],
    [5.4, '5.4'],
    [4.98, '4.98'],
    [5.02, '5.02'],
    [5, '5'],
    [-4.6, '−4.6'],
    [0.4, '0.4'],
    [-0.4, '−0.4'],
    [0.0004, '0.0004'],
    [-0.00000004, '−0.00000004'],
    [0, '0'],
    [6.4, '6'],
    [4.4, '4'],
    [5.000000000000001, '5'],
  ])('of %d beside 0 and 5 is %s', (limit, printed) => {
    expect(printLimit(limit, yard, 'yd', [0, 5, -5])).toBe(printed);
  });

  test('lies on the same side of 0 and of what matters as the true one', () => {
    const near = fc.tuple(fc.constantFrom(0, 1, -1), fc.double({ min: -3, max: 3, noNaN: true }));
    fc.assert(
      fc.property(
        fc.constantFrom(...unitIds),
        fc.double({ min: 0.01, max: 400, noNaN: true }),
        near,
        fc.double({ min: 0.01, max: 2000, noNaN: true }),
        (unit, matters, [at, off], half) => {
          const limit = at * matters + off * 10 ** -Math.round(Math.abs(off) * 3);
          const printed = read(printLimit(limit, stepFor(unit, half), unit, [0, matters, -matters]));
          for (const threshold of [0, matters, -matters]) {
            // what differs by less came with the conversion of units
            if (Math.abs(limit - threshold) < 2e-9) continue;
            expect(Math.sign(printed - threshold)).toBe(Math.sign(limit - threshold));
          }
        },
      ),
      { numRuns: 1000 },
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
