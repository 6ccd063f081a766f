import { expect, test } from 'vitest';
import { ballTest2001 } from '../../src/flight/ballTest2001.ts';
import { flightModel } from '../../src/flight/flightModel.ts';
import { withinMeasured } from '../../src/flight/measuredRange.ts';
import { modelledReadings } from '../../src/flight/modelledReadings.ts';
import { inFeet, inYards, launchInMph } from './tradeUnits.ts';

// The fade of the check table (tests/flight/trajectory.test.ts) in the trade's metrics.
test('a flight as readings', () => {
  const readings = modelledReadings(launchInMph(160, 12, 2700, -1.5, 8), flightModel());
  expect(inYards(readings.carry)).toBeCloseTo(258.673, 2);
  expect(inYards(readings.side)).toBeCloseTo(9.43, 2);
  expect(inFeet(readings.apex)).toBeCloseTo(100.068, 1);
  expect(readings.descent_angle).toBeCloseTo(38.661, 2);
  expect(readings.hang_time).toBeCloseTo(6.736, 2);
  expect(inYards(readings.curve)).toBeCloseTo(9.43 + 258.673 * Math.tan((1.5 * Math.PI) / 180), 1);
  expect(readings.total).toBeGreaterThan(readings.carry + 10);
});

test('how much of a flight rests on measurements', () => {
  const drive = launchInMph(161.2, 13.3, 2888);
  const wedge = launchInMph(85, 28, 9500);
  // drives: spin parameter 0.07 to 0.21, Reynolds number from 2.1e5 down to 0.74e5
  expect(withinMeasured(drive, flightModel()).spinParameter).toBe(1);
  expect(withinMeasured(drive, flightModel()).reynolds).toBeLessThan(1);
  expect(withinMeasured(drive, flightModel()).reynolds).toBeGreaterThan(0.6);
  expect(withinMeasured(drive, flightModel({ coefficients: ballTest2001 })).spinParameter).toBe(1);
  expect(withinMeasured(wedge, flightModel({ coefficients: ballTest2001 })).spinParameter).toBe(0);
  // a wedge's slow half passes even the widest measurements, which end at 1.13
  expect(withinMeasured(wedge, flightModel()).spinParameter).toBeGreaterThan(0.5);
  expect(withinMeasured(wedge, flightModel()).spinParameter).toBeLessThan(0.7);
});
