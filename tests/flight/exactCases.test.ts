import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { standardAir } from '../../src/flight/air.ts';
import { ruleBall } from '../../src/flight/ball.ts';
import { flightModel } from '../../src/flight/flightModel.ts';
import { naruo2004 } from '../../src/flight/naruo2004.ts';
import { fly, flyAlong } from '../../src/flight/trajectory.ts';
import { constantDrag, linearInSpeed } from './otherSets.ts';
import { inFeet, inMph, inYards, launchInMph } from './tradeUnits.ts';

// Cases whose answer follows from mechanics alone (parabola; linear resistance; Newton's law straight up).

const vacuum = flightModel({ air: { density: 0, viscosity: standardAir.viscosity } });
const gravity = 9.80665;
const drive = launchInMph(161.2, 13.3, 2888);

describe('without air', () => {
  test('161.2 mph at 13.3 degrees', () => {
    const flight = fly(drive, vacuum);
    expect(Math.abs(inYards(flight.carry) - 259.3047)).toBeLessThan(0.0001);
    expect(Math.abs(inFeet(flight.apex) - 45.9728)).toBeLessThan(0.0001);
    expect(Math.abs(flight.hangTime - 3.380979)).toBeLessThan(1e-6);
  });

  test('any launch is the parabola', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 90, noNaN: true }),
        fc.double({ min: 1, max: 89, noNaN: true }),
        (speed, angle) => {
          const flight = fly(
            { ballSpeed: speed, launchAngle: angle, launchDirection: 0, spinRate: 3000, spinAxis: 5 },
            vacuum,
          );
          const radians = (angle * Math.PI) / 180;
          expect(flight.carry).toBeCloseTo((speed ** 2 * Math.sin(2 * radians)) / gravity, 6);
          expect(flight.apex).toBeCloseTo((speed * Math.sin(radians)) ** 2 / (2 * gravity), 6);
          expect(flight.hangTime).toBeCloseTo((2 * speed * Math.sin(radians)) / gravity, 8);
          expect(flight.descentAngle).toBeCloseTo(angle, 6);
        },
      ),
    );
  });
});

describe('forces linear in speed', () => {
  const speedPerReynolds = standardAir.viscosity / (standardAir.density * ruleBall.diameter);

  test('with lift, 150 mph at 10 degrees', () => {
    const flight = fly(
      launchInMph(150, 10, 3000),
      flightModel({ coefficients: linearInSpeed(speedPerReynolds, true) }),
    );
    expect(Math.abs(inYards(flight.carry) - 212.2844)).toBeLessThan(0.0001);
    expect(Math.abs(inFeet(flight.apex) - 75.7908)).toBeLessThan(0.0001);
    expect(Math.abs(flight.hangTime - 6.43034)).toBeLessThan(0.00001);
    expect(Math.abs(flight.descentAngle - 44.1672)).toBeLessThan(0.0001);
  });

  test('without lift, 161.2 mph at 13.3 degrees', () => {
    const flight = fly(drive, flightModel({ coefficients: linearInSpeed(speedPerReynolds, false) }));
    expect(Math.abs(inYards(flight.carry) - 157.7984)).toBeLessThan(0.0001);
    expect(Math.abs(inFeet(flight.apex) - 35.5797)).toBeLessThan(0.0001);
    expect(Math.abs(flight.hangTime - 2.98744)).toBeLessThan(0.00001);
  });
});

describe('straight up against constant drag', () => {
  test('100 mph, drag coefficient 0.25', () => {
    const { flight, path } = flyAlong(
      launchInMph(100, 90, 0),
      flightModel({ coefficients: constantDrag(0.25), step: 0.01 }),
    );
    expect(inFeet(flight.apex)).toBeCloseTo(233.571, 3);
    const top = path.reduce((highest, point) => (point.y > highest.y ? point : highest));
    expect(Math.abs(top.time - 3.59895)).toBeLessThan(0.01);
    expect(inMph(-flight.landingVelocity.y)).toBeCloseTo(71.2194, 4);
  });

  test('any speed and drag come back at v0 vt / sqrt(v0^2 + vt^2)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 90, noNaN: true }),
        fc.double({ min: 0.05, max: 0.6, noNaN: true }),
        (speed, drag) => {
          const area = (Math.PI * ruleBall.diameter ** 2) / 4;
          const terminal = Math.sqrt((2 * ruleBall.mass * gravity) / (1.225 * area * drag));
          const flight = fly(
            { ballSpeed: speed, launchAngle: 90, launchDirection: 0, spinRate: 0, spinAxis: 0 },
            flightModel({ coefficients: constantDrag(drag) }),
          );
          expect(flight.apex).toBeCloseTo(
            (terminal ** 2 / (2 * gravity)) * Math.log(1 + speed ** 2 / terminal ** 2),
            4,
          );
          expect(-flight.landingVelocity.y).toBeCloseTo((speed * terminal) / Math.hypot(speed, terminal), 4);
        },
      ),
      { numRuns: 40 },
    );
  });
});

describe('laws that every flight keeps', () => {
  const launches = fc.record({
    ballSpeed: fc.double({ min: 15, max: 85, noNaN: true }),
    launchAngle: fc.double({ min: 3, max: 50, noNaN: true }),
    launchDirection: fc.double({ min: -10, max: 10, noNaN: true }),
    spinRate: fc.double({ min: 500, max: 10000, noNaN: true }),
    spinAxis: fc.double({ min: -30, max: 30, noNaN: true }),
  });

  test('energy never rises in still air', () => {
    fc.assert(
      fc.property(launches, (launch) => {
        const step = 0.01;
        const { path } = flyAlong(launch, flightModel({ step }));
        // speed by central differences is good to 1e-4; a drop is far larger
        const energies = path.slice(1, -2).map((point, i) => {
          const before = path[i] ?? point;
          const after = path[i + 2] ?? point;
          const speed = Math.hypot(after.x - before.x, after.y - before.y, after.z - before.z) / (2 * step);
          return speed ** 2 / 2 + gravity * point.y;
        });
        energies.slice(1).forEach((energy, i) => expect(energy).toBeLessThan((energies[i] ?? 0) + 1e-3));
      }),
      { numRuns: 30 },
    );
  });

  test('spin fades with the way through the air alone', () => {
    fc.assert(
      fc.property(launches, (launch) => {
        const { flight, path } = flyAlong(launch, flightModel({ step: 0.005 }));
        const length = path.slice(1).reduce((sum, p, i) => sum + Math.hypot(...away(p, path[i] ?? p)), 0);
        const expected =
          launch.spinRate * Math.exp((-naruo2004.spinDecay * length) / (ruleBall.diameter / 2));
        expect(Math.abs(flight.landingSpin / expected - 1)).toBeLessThan(1e-6);
      }),
      { numRuns: 20 },
    );
  });

  test('mirrored launch, mirrored flight', () => {
    fc.assert(
      fc.property(launches, (launch) => {
        const right = fly(launch, flightModel());
        const left = fly(
          { ...launch, launchDirection: -launch.launchDirection, spinAxis: -launch.spinAxis },
          flightModel(),
        );
        expect(left.carry).toBeCloseTo(right.carry, 9);
        expect(left.side).toBeCloseTo(-right.side, 9);
        expect(left.apex).toBeCloseTo(right.apex, 9);
      }),
      { numRuns: 50 },
    );
  });

  test('uniform wind is still air flown at the speed through it, shifted by wind times time', () => {
    const wind = { x: -3, y: 0, z: 4 };
    const speed = 70;
    const radians = (12 * Math.PI) / 180;
    const ground = { x: speed * Math.cos(radians), y: speed * Math.sin(radians), z: 0 };
    const air = { x: ground.x - wind.x, y: ground.y - wind.y, z: ground.z - wind.z };
    const level = Math.hypot(air.x, air.z);
    // Spin without tilt lies square to the launch over the ground; the same axis seen from the air is tilted and not
    // quite square, so the check takes a ball without spin.
    const windy = fly(
      { ballSpeed: speed, launchAngle: 12, launchDirection: 0, spinRate: 0, spinAxis: 0 },
      flightModel({ wind }),
    );
    const still = fly(
      {
        ballSpeed: Math.hypot(level, air.y),
        launchAngle: (Math.atan2(air.y, level) * 180) / Math.PI,
        launchDirection: (Math.atan2(air.z, air.x) * 180) / Math.PI,
        spinRate: 0,
        spinAxis: 0,
      },
      flightModel(),
    );
    expect(windy.hangTime).toBeCloseTo(still.hangTime, 10);
    expect(windy.carry).toBeCloseTo(still.carry + wind.x * still.hangTime, 8);
    expect(windy.side).toBeCloseTo(still.side + wind.z * still.hangTime, 8);
  });

  test('the same with spin, in a wind along the line', () => {
    const speed = 70;
    const radians = (12 * Math.PI) / 180;
    const along = speed * Math.cos(radians) + 5;
    const up = speed * Math.sin(radians);
    const windy = fly(
      { ballSpeed: speed, launchAngle: 12, launchDirection: 0, spinRate: 2700, spinAxis: 0 },
      flightModel({ wind: { x: -5, y: 0, z: 0 } }),
    );
    const still = fly(
      {
        ballSpeed: Math.hypot(along, up),
        launchAngle: (Math.atan2(up, along) * 180) / Math.PI,
        launchDirection: 0,
        spinRate: 2700,
        spinAxis: 0,
      },
      flightModel(),
    );
    expect(windy.carry).toBeCloseTo(still.carry - 5 * still.hangTime, 8);
    expect(windy.landingSpin).toBeCloseTo(still.landingSpin, 6);
  });

  test('density and mass scaled together change nothing; density scales as drag and lift do', () => {
    const plain = fly(drive, flightModel());
    const air = { ...standardAir, density: standardAir.density * 1.3 };
    const heavy = fly(drive, flightModel({ air, ball: { ...ruleBall, mass: ruleBall.mass * 1.3 } }));
    expect(heavy.carry).toBeCloseTo(plain.carry, 9);
    const dense = fly(drive, flightModel({ air }));
    const scaled = fly(drive, flightModel({ dragScale: 1.3, liftScale: 1.3 }));
    expect(dense.carry).toBeCloseTo(scaled.carry, 9);
    expect(dense.apex).toBeCloseTo(scaled.apex, 9);
  });
});

function away(
  a: { readonly x: number; readonly y: number; readonly z: number },
  b: { readonly x: number; readonly y: number; readonly z: number },
): readonly [number, number, number] {
  return [a.x - b.x, a.y - b.y, a.z - b.z];
}
