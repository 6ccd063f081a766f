import { describe, expect, test } from 'vitest';
import { airOf, standardAir } from '../../src/flight/air.ts';
import { viscosityOfAir } from '../../src/flight/viscosityOfAir.ts';
import { cipm2007Density } from './cipm2007.ts';
import { moistAirDensity } from '../../src/flight/moistAir.ts';
import { geopotentialHeight, standardAtmosphere } from '../../src/flight/standardAtmosphere.ts';
import { referenceTable } from './referenceTable.ts';

describe('standard atmosphere', () => {
  // US Standard Atmosphere 1976, table I: density at geometric heights.
  test.each([
    [0, 1.225],
    [1000, 1.1117],
    [2000, 1.0066],
  ])('%i m by the tape: %f kg/m3', (metres, density) => {
    expect(standardAtmosphere(geopotentialHeight(metres)).density).toBeCloseTo(density, 4);
  });

  // Worked from the published constants (ISO 2533), geopotential heights.
  test.each([
    [0, 1.225],
    [500, 1.16727],
    [1000, 1.11164],
    [1600, 1.04759],
  ])('%i m geopotential: %f kg/m3', (metres, density) => {
    expect(standardAtmosphere(metres).density).toBeCloseTo(density, 5);
  });

  // ISO 2533: at 11 km the temperature is -56.5 degrees and the pressure 22632 Pa.
  test('reaches to 11 km and no further', () => {
    const top = standardAtmosphere(11000);
    expect(top.temperature).toBeCloseTo(-56.5, 10);
    expect(top.pressure).toBeCloseTo(22632, -1);
    expect(() => standardAtmosphere(11001)).toThrow('needs a height of -5000 to 11000 m, got 11001');
    expect(() => standardAtmosphere(Number.NaN)).toThrow('got NaN');
  });
});

describe('moist air', () => {
  // Worked values: CIPM-2007 (Picard and others 2008, Metrologia 45, 149-155) and two ideal gases.
  test.each([
    [15, 0, 1.22552, 1.22501],
    [20, 0.5, 1.19931, 1.19888],
    [25, 0.5, 1.17732, 1.17694],
    [35, 0.5, 1.13377, 1.1335],
    [5, 0.5, 1.26766, 1.26699],
  ])('%i C, humidity %f, 101325 Pa: CIPM %f, ideal %f', (temperature, humidity, cipm, ideal) => {
    const air = { temperature, humidity, pressure: 101325 };
    expect(Math.abs(cipm2007Density(air) - cipm)).toBeLessThan(0.00001);
    expect(Math.abs(moistAirDensity(air) - ideal)).toBeLessThan(0.00001);
  });

  test('both formulas as in R (tests/reference/flight/air.R), over the range of CIPM-2007', () => {
    const rows = referenceTable('air.csv');
    expect(rows.length).toBe(27);
    for (const row of rows) {
      const air = {
        temperature: Number(row.temperature),
        pressure: Number(row.pressure),
        humidity: Number(row.humidity),
      };
      expect(cipm2007Density(air)).toBeCloseTo(Number(row.cipm), 10);
      expect(moistAirDensity(air)).toBeCloseTo(Number(row.ideal), 10);
    }
  });

  test('the simple formula lies 0.01 to 0.07 % below CIPM-2007 at sea level', () => {
    for (const temperature of [5, 15, 20, 25, 27, 35]) {
      for (const humidity of [0, 0.5, 1]) {
        const air = { temperature, humidity, pressure: 101325 };
        const below = 1 - moistAirDensity(air) / cipm2007Density(air);
        expect(below).toBeGreaterThan(0.0001);
        expect(below).toBeLessThan(0.0007);
      }
    }
  });
});

describe('air of a session', () => {
  test('nothing known is the standard atmosphere at sea level', () => {
    expect(airOf({}).density).toBeCloseTo(standardAir.density, 6);
    expect(airOf({}).viscosity).toBe(standardAir.viscosity);
  });

  // US Standard Atmosphere 1976: 1.7894e-5 Pa s at 15 degrees (constants of the formula from memory).
  test('viscosity', () => {
    expect(viscosityOfAir(15)).toBeCloseTo(1.7894e-5, 9);
  });

  test('altitude alone takes the temperature of that height; a temperature is believed', () => {
    expect(airOf({ altitude: 1000 }).density).toBeCloseTo(1.1117, 4);
    const warm = airOf({ altitude: 1000, temperature: 20, humidity: 0 });
    expect(warm.density).toBeCloseTo(
      moistAirDensity({
        temperature: 20,
        humidity: 0,
        pressure: standardAtmosphere(geopotentialHeight(1000)).pressure,
      }),
      12,
    );
  });

  test('a pressure of the place itself is believed over altitude', () => {
    const air = airOf({ temperature: 20, humidity: 0.5, pressure: 101325, altitude: 2000 });
    expect(Math.abs(air.density - 1.19888)).toBeLessThan(0.00001);
  });
});
