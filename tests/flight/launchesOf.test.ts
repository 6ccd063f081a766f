import { describe, expect, test } from 'vitest';
import { launchesOf } from '../../src/flight/launchesOf.ts';

describe('launches of readings', () => {
  const full = { ball_speed: 70, launch_angle: 12, launch_direction: 1, spin_rate: 2700, spin_axis: -4 };

  test('total spin and axis as read', () => {
    expect(launchesOf([full])).toEqual([
      { ballSpeed: 70, launchAngle: 12, launchDirection: 1, spinRate: 2700, spinAxis: -4 },
    ]);
  });

  test('total spin and axis from their parts', () => {
    const [launch] = launchesOf([{ ball_speed: 70, launch_angle: 12, back_spin: 3000, side_spin: -400 }]);
    expect((launch?.spinRate ?? 0) ** 2).toBeCloseTo(3000 ** 2 + 400 ** 2, 6);
    expect(Math.tan(((launch?.spinAxis ?? 0) * Math.PI) / 180)).toBeCloseTo(-400 / 3000, 12);
  });

  test('a shot without ball speed, launch angle or spin has no launch', () => {
    expect(
      launchesOf([
        { ...full, ball_speed: null },
        { ...full, spin_rate: null },
        { launch_angle: 12 },
        { ...full, spin_rate: null, back_spin: 2500 },
      ]),
    ).toEqual([null, null, null, null]);
  });

  test('direction and axis count only where every shot has them', () => {
    const launches = launchesOf([full, { ...full, launch_direction: null }, { ...full, spin_rate: null }]);
    expect(launches.map((launch) => launch?.launchDirection)).toEqual([0, 0, undefined]);
    expect(launches.map((launch) => launch?.spinAxis)).toEqual([-4, -4, undefined]);
    // a shot that has no launch does not take direction from the others
    const others = launchesOf([full, { ...full, spin_rate: null, launch_direction: null }]);
    expect(others[0]?.launchDirection).toBe(1);
  });
});
