import { describe, expect, test } from 'vitest';
import { airOf } from '../../src/flight/air.ts';
import { ballTest2001 } from '../../src/flight/ballTest2001.ts';
import { calibrate, type Calibration } from '../../src/flight/calibration.ts';
import { carriesInAir } from '../../src/flight/carriesInAir.ts';
import { carryResiduals } from '../../src/flight/carryResiduals.ts';
import { flightModel, type FlightModel } from '../../src/flight/flightModel.ts';
import { meanFlight } from '../../src/flight/meanFlight.ts';
import { leastModelledGap, modelError, spinTrendError } from '../../src/flight/modelError.ts';
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
      expect(Math.abs(error)).toBeLessThan(inYards(modelError.calibrated));
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
    expect(found?.residuals.map((rest) => Math.round(rest * 1e6) / 1e6)).toEqual([2, 3, 4, 5]);
    expect(found?.mean).toBeCloseTo(3.5, 9);
    expect(found?.sd).toBeCloseTo(Math.sqrt(5 / 3), 9);
    expect(single).toMatchObject({ sd: null });
    expect(none).toEqual({ residuals: [], mean: null, sd: null });
  });

  test('limits of trust', () => {
    expect(modelError.untuned).toBe(0.06);
    expect(inYards(leastModelledGap)).toBeCloseTo(5, 12);
    expect(inYards(spinTrendError * 100)).toBeCloseTo(1.02, 2);
  });
});

describe('other air', () => {
  test('the same air changes nothing; thin air adds what the model says', () => {
    const model = flightModel({ dragScale: 0.928 });
    expect(carriesInAir(facts, model, {})).toEqual(facts.map(({ carry }) => carry));
    const [high = 0] = carriesInAir(facts, flightModel(), { air: airOf({ altitude: 1600 }) });
    // +16.9 yd at 1600 m, worked out apart
    expect(Math.abs(inYards(high) - 275.5 - 16.9)).toBeLessThan(0.1);
  });

  test('there and back is the carry read', () => {
    const model = flightModel({ dragScale: 0.95, air: airOf({ temperature: 8 }) });
    const standard = flightModel({ dragScale: 0.95 });
    const there = carriesInAir(facts, model, { air: standard.air });
    const back = carriesInAir(
      facts.map(({ launch }, i) => ({ launch, carry: there[i] ?? 0 })),
      standard,
      { air: model.air },
    );
    back.forEach((carry, i) => expect(carry).toBeCloseTo(facts[i]?.carry ?? 0, 9));
    expect(there[0]).toBeGreaterThan(facts[0]?.carry ?? 0);
  });
});

describe('mean flight', () => {
  test('flies the mean launch; views share their length', () => {
    const launches = [launchInMph(158, 11, 2500, -2, 4), launchInMph(162, 13, 2900, 0, 8)];
    const mean = meanFlight(launches, flightModel());
    const direct = fly(launchInMph(160, 12, 2700, -1, 6), flightModel());
    expect(mean.flight.carry).toBeCloseTo(direct.carry, 4);
    expect(mean.fromSide.length).toBe(mean.fromAbove.length);
    expect(mean.fromSide.length).toBeLessThan(100);
    expect(mean.fromSide.at(-1)).toEqual([mean.flight.carry, 0]);
    expect(mean.fromAbove.at(-1)).toEqual([mean.flight.carry, mean.flight.side]);
    expect(Math.max(...mean.fromSide.map(([, up]) => up))).toBeCloseTo(direct.apex, 1);
    expect(() => meanFlight([], flightModel())).toThrow('needs at least 1 values');
  });
});
