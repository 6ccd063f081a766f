import { expect, test } from 'vitest';
import { flightModel } from '../../src/flight/flightModel.ts';
import { axesAround, launchSpinGrid, plateauDepth } from '../../src/flight/launchSpinGrid.ts';
import { fly } from '../../src/flight/trajectory.ts';
import { toCanonical } from '../../src/trade/units.ts';
import { inYards, launchInMph } from './tradeUnits.ts';

const axes = { launchAngles: [8, 10, 12, 14, 16, 18, 20], spinRates: [1500, 2000, 2500, 3000, 3500] };
const speed = toCanonical(160, 'mph');

test('every cell is its flight', () => {
  const carries = launchSpinGrid(axes, speed, flightModel());
  const direct = fly(launchInMph(160, 14, 2500), flightModel());
  expect(carries[3]?.[2]).toBeCloseTo(direct.carry, 4);
  expect(carries.length).toBe(7);
  expect(carries.every((row) => row.length === 5)).toBe(true);
});

test('a plateau reaches 3 yards below the greatest', () => {
  expect(inYards(plateauDepth)).toBeCloseTo(3, 12);
});

test('axes hold the shots with room, in round steps', () => {
  const { launchAngles, spinRates } = axesAround([launchInMph(160, 9.3, 2130), launchInMph(160, 15.8, 3480)]);
  expect(launchAngles[0]).toBeLessThanOrEqual(5.3);
  expect(launchAngles.at(-1)).toBeGreaterThanOrEqual(19.8);
  expect(spinRates[0]).toBeLessThanOrEqual(1130);
  expect(spinRates.at(-1)).toBeGreaterThanOrEqual(4480);
  for (const values of [launchAngles, spinRates]) {
    expect(values.length).toBeLessThanOrEqual(25);
    const step = (values[1] ?? 0) - (values[0] ?? 0);
    values.slice(1).forEach((value, i) => expect(value - (values[i] ?? 0)).toBeCloseTo(step, 9));
  }
  expect(axesAround([launchInMph(160, 2, 300)]).spinRates[0]).toBeGreaterThanOrEqual(500);
});
