import { describe, expect, test } from 'vitest';
import { flightModel } from '../../src/flight/flightModel.ts';
import { axesAround, launchSpinGrid, plateauDepth } from '../../src/flight/launchSpinGrid.ts';
import { fly } from '../../src/flight/trajectory.ts';
import { toCanonical } from '../../src/trade/units.ts';
import { inYards, launchInMph } from './tradeUnits.ts';

const axes = { launchAngles: [8, 10, 12, 14, 16, 18, 20], spinRates: [1500, 2000, 2500, 3000, 3500] };
const speed = toCanonical(160, 'mph');

describe('launch and spin at a ball speed', () => {
  const grid = launchSpinGrid(axes, speed, flightModel());

  test('every cell is its flight', () => {
    const direct = fly(launchInMph(160, 14, 2500), flightModel());
    expect(grid.carry.metres[3]?.[2]).toBeCloseTo(direct.carry, 4);
    expect(grid.carry.metres.length).toBe(7);
    expect(grid.carry.metres.every((row) => row.length === 5)).toBe(true);
  });

  test('the plateau holds all within 3 yards of the greatest and no other', () => {
    expect(inYards(plateauDepth)).toBeCloseTo(3, 12);
    for (const { metres, plateau, top } of [grid.carry, grid.total()]) {
      expect(top.distance).toBe(Math.max(...metres.flat()));
      metres.forEach((row, i) =>
        row.forEach((value, j) => expect(plateau[i]?.[j]).toBe(inYards(top.distance - value) <= 3)),
      );
    }
  });

  // Common practice, no source: the longest total asks for less spin and less height than the longest carry.
  test('total runs longer and wants less spin than carry', () => {
    expect(grid.total().top.spinRate).toBeLessThanOrEqual(grid.carry.top.spinRate);
    expect(grid.total().top.launchAngle).toBeLessThan(grid.carry.top.launchAngle);
    grid.carry.metres
      .flat()
      .forEach((carry, i) => expect(grid.total().metres.flat()[i]).toBeGreaterThan(carry));
  });

  test('a greatest cell on the rim is said to be on it', () => {
    const narrow = launchSpinGrid(
      { launchAngles: [6, 7, 8], spinRates: [2000, 2500, 3000] },
      speed,
      flightModel(),
    );
    expect(narrow.carry.top).toMatchObject({ launchAngle: 8, atEdge: true });
    const wide = launchSpinGrid(
      { launchAngles: [5, 10, 15, 20, 25, 30], spinRates: [500, 1500, 2500, 3500, 4500, 5500] },
      speed,
      flightModel(),
    );
    expect(wide.carry.top.atEdge).toBe(false);
  });
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
