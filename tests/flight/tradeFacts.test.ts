import { describe, expect, test } from 'vitest';
import { flightModel } from '../../src/flight/flightModel.ts';
import { totalOf } from '../../src/flight/total.ts';
import { coefficientSets } from '../../src/flight/coefficientSets.ts';
import { airOf } from '../../src/flight/air.ts';
import { fly } from '../../src/flight/trajectory.ts';
import { inYards, launchInMph } from './tradeUnits.ts';

/** Common practice, no source: one strong hitter, one driver; mph, degrees, rpm, carry and total in yards. */
const facts = [
  [161.2, 13.3, 2888, 275.5, 293.7],
  [161.2, 12.95, 2850, 274.9, 294.2],
  [162, 12.95, 2467, 281, 304],
  [162.6, 13.4, 2232, 283, 307.6],
] as const;

const errors = (dragScale: number, air = airOf({})): number[] =>
  facts.map(([mph, angle, rpm, carry]) => {
    return inYards(fly(launchInMph(mph, angle, rpm), flightModel({ dragScale, air })).carry) - carry;
  });

const rms = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);

describe('four averages of the trade', () => {
  test('within 6 % untuned, 5 yards with one drag factor', () => {
    // Their air is not stated. At 20 degrees each is within 6 %; at 15 degrees the last is 6.1 % short.
    const room = airOf({ temperature: 20 });
    errors(1, room).forEach((error, i) => expect(Math.abs(error)).toBeLessThan(0.06 * (facts[i]?.[3] ?? 0)));
    expect(rms(errors(1)) / 278.6).toBeLessThan(0.06);
    expect(rms(errors(1))).toBeCloseTo(14.1, 1);
    expect(Math.max(...errors(0.928).map(Math.abs))).toBeLessThan(5);
    expect(rms(errors(0.928))).toBeCloseTo(3.1, 1);
    expect(rms(errors(0.945))).toBeCloseTo(4.6, 1);
  });

  test('total within 5 yards with the drag factor', () => {
    const model = flightModel({ dragScale: 0.928 });
    for (const [mph, angle, rpm, , total] of facts) {
      expect(
        Math.abs(inYards(totalOf(fly(launchInMph(mph, angle, rpm), model), model)) - total),
      ).toBeLessThan(5);
    }
  });

  test('the rise of carry with less spin is not reproduced: the error runs from plus to minus', () => {
    const [a = 0, b = 0, c = 0, d = 0] = errors(0.928);
    expect([a, b, c, d].map((error) => Math.round(error * 10) / 10)).toEqual([3, 3.1, -2.4, -3.7]);
  });

  // Each set untuned, worked out apart.
  test.each([
    ['naruo-2004', [-11, -10.8, -16.1, -17.2]],
    ['smits-smith-1994', [-31.2, -31, -37.6, -39.5]],
    ['ball-test-2001', [-13.7, -13.8, -20.9, -23]],
  ])('%s untuned', (id, expected) => {
    const coefficients = coefficientSets.find((set) => set.id === id);
    if (coefficients === undefined) throw new Error(`no set ${id}`);
    facts.forEach(([mph, angle, rpm, carry], i) => {
      const found = inYards(fly(launchInMph(mph, angle, rpm), flightModel({ coefficients })).carry) - carry;
      expect(Math.abs(found - (expected[i] ?? 0))).toBeLessThan(0.051);
    });
  });
});

describe('sensitivities of a drive, worked out apart', () => {
  const drive = launchInMph(161.2, 13.3, 2888);
  const carry = (air = airOf({})): number => inYards(fly(drive, flightModel({ air })).carry);

  test('ball speed, launch angle, spin', () => {
    const at = (mph: number, angle: number, rpm: number): number =>
      inYards(fly(launchInMph(161.2 + mph, 13.3 + angle, 2888 + rpm), flightModel()).carry);
    expect(Math.abs((at(1, 0, 0) - at(-1, 0, 0)) / 2 - 1.84)).toBeLessThan(0.006);
    expect(Math.abs((at(0, 1, 0) - at(0, -1, 0)) / 2 - 1.33)).toBeLessThan(0.006);
    expect(Math.abs((at(0, 0, 100) - at(0, 0, -100)) / 2 + 0.16)).toBeLessThan(0.006);
  });

  test.each([
    [5, -4.4],
    [25, 4.3],
    [35, 8.5],
  ])('%i degrees: %f yd against 15', (temperature, change) => {
    const at = (degrees: number): number =>
      carry(airOf({ temperature: degrees, pressure: 101325, humidity: 0.5 }));
    expect(at(temperature) - at(15)).toBeCloseTo(change, 0);
  });

  test.each([
    [400, 4.5],
    [1600, 16.9],
  ])('%i m in standard air: %f yd', (height, change) => {
    expect(carry(airOf({ altitude: height })) - carry()).toBeCloseTo(change, 0);
  });
});
