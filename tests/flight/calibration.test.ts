import { describe, expect, test } from 'vitest';
import { airOf } from '../../src/flight/air.ts';
import { ballTest2001 } from '../../src/flight/ballTest2001.ts';
import { calibrate, type Calibration } from '../../src/flight/calibration.ts';
import { carryResiduals } from '../../src/flight/carryResiduals.ts';
import { flightModel, type FlightModel } from '../../src/flight/flightModel.ts';
import { leastModelledGap, spinTrendError } from '../../src/flight/modelError.ts';
import { smitsSmith1994 } from '../../src/flight/smitsSmith1994.ts';
import { fly } from '../../src/flight/trajectory.ts';
import { inYards, launchInMph } from './tradeUnits.ts';

/** Common practice, no source: one strong hitter, one driver. */
const facts = [
  { launch: launchInMph(161.2, 13.3, 2888), carry: 275.5 * 0.9144 },
  { launch: launchInMph(161.2, 12.95, 2850), carry: 274.9 * 0.9144 },
  { launch: launchInMph(162, 12.95, 2467), carry: 281 * 0.9144 },
  { launch: launchInMph(162.6, 13.4, 2232), carry: 283 * 0.9144 },
];

function fitted(calibration: Calibration): Exclude<Calibration, { state: 'not-possible' }> {
  if (calibration.state === 'not-possible') throw new Error(`not possible: ${calibration.why}`);
  return calibration;
}

describe('drag factor', () => {
  // Each worked out apart: the factor that zeroes the mean, and the error left, in yards.
  const cases: readonly (readonly [string, Partial<FlightModel>, number, number])[] = [
    ['recommended set', {}, 0.928, 3.1],
    ['Smits and Smith', { coefficients: smitsSmith1994 }, 0.819, 3.8],
    ['ball test', { coefficients: ballTest2001 }, 0.905, 4.6],
  ];
  test.each(cases)('%s', (_, changes, dragScale, rms) => {
    const calibration = fitted(calibrate(facts, flightModel(changes)));
    expect(Math.abs(calibration.dragScale - dragScale)).toBeLessThan(0.00051);
    expect(Math.abs(inYards(calibration.rms) - rms)).toBeLessThan(0.051);
    expect(calibration).toMatchObject({ state: 'usual', n: 4 });
  });

  test.each([
    [20, 0, 0.939],
    [25, 0, 0.949],
    [30, 0, 0.959],
    [25, 300, 0.968],
  ])('at %i degrees and %i m it takes up the weather: %f', (temperature, altitude, dragScale) => {
    const air = airOf({ temperature, altitude, humidity: 0.5 });
    expect(fitted(calibrate(facts, flightModel({ air }))).dragScale).toBeCloseTo(dragScale, 2);
  });

  test('leaving one group out, the others predict it to within 5 yards', () => {
    // +4.0, +4.2, -3.2 and -4.9 yd, worked out apart
    const expected = [4, 4.2, -3.2, -4.9];
    facts.forEach((fact, i) => {
      const others = facts.filter((other) => other !== fact);
      const { dragScale } = fitted(calibrate(others, flightModel()));
      const error = inYards(fly(fact.launch, flightModel({ dragScale })).carry - fact.carry);
      expect(Math.abs(error - (expected[i] ?? 0))).toBeLessThan(0.06);
      expect(Math.abs(error)).toBeLessThan(inYards(leastModelledGap));
    });
  });

  test('finds a factor that it was given', () => {
    for (const dragScale of [0.7, 0.9, 1, 1.2]) {
      const shots = facts.map(({ launch }) => ({
        launch,
        carry: fly(launch, flightModel({ dragScale })).carry,
      }));
      const calibration = fitted(calibrate(shots, flightModel()));
      expect(calibration.dragScale).toBeCloseTo(dragScale, 5);
      expect(calibration.rms).toBeLessThan(1e-4);
      expect(calibration.state).toBe(dragScale >= 0.88 && dragScale <= 1.05 ? 'usual' : 'unusual');
    }
  });

  test('carries beyond any drag are said to be', () => {
    const far = facts.map((fact) => ({ ...fact, carry: 900 }));
    expect(calibrate(far, flightModel())).toEqual({ state: 'not-possible', why: 'carry-out-of-reach' });
    expect(calibrate([], flightModel())).toEqual({ state: 'not-possible', why: 'no-shots' });
  });
});

describe('residuals', () => {
  test('carry read minus modelled, group by group', () => {
    const model = flightModel({ dragScale: 0.93 });
    const longer = facts.map(({ launch }, i) => ({ launch, carry: fly(launch, model).carry + 2 + i }));
    const [found, single, none] = carryResiduals([longer, longer.slice(0, 1), []], model);
    expect(found?.map((rest) => Math.round(rest * 1e6) / 1e6)).toEqual([2, 3, 4, 5]);
    expect(single).toHaveLength(1);
    expect(none).toEqual([]);
  });

  test('limits of trust', () => {
    expect(inYards(leastModelledGap)).toBeCloseTo(5, 12);
    expect(inYards(spinTrendError * 100)).toBeCloseTo(1.02, 2);
  });
});
