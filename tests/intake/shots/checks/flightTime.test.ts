import { expect, it } from 'vitest';
import { checkFlightTime } from '../../../../src/intake/shots/checks/flightTime.ts';
import { said, sessionOf } from './sessionOf.ts';

const shot = { ball_speed: 155, launch_angle: 12, carry: 250 };

it('accepts a flight that air has slowed', () => {
  expect(checkFlightTime(sessionOf([{ ...shot, hang_time: 6.2 }]), {})).toEqual([]);
});

it('refuses a flight faster over the ground than it began', () => {
  // 250 yd = 228.6 m; 155 mph x cos 12 deg = 67.777 m/s; 228.6 / 67.777 = 3.37 s.
  const [problem] = checkFlightTime(sessionOf([{ ...shot, hang_time: 3 }]), {});
  expect(problem).toMatchObject({ kind: 'flight-too-fast', severity: 'error' });
  expect(said(problem)).toMatchInlineSnapshot(
    `"expected a hang time above 3.4 s for this carry and ball speed; found hang time 3.0 s for carry 250.0 yd; Check the units of carry, ball speed and hang time; air only slows a ball down."`,
  );
});
