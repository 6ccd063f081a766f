import { expect, it } from 'vitest';
import { checkFlightShape } from '../../../../src/intake/shots/checks/flightShape.ts';
import { said, sessionOf } from './sessionOf.ts';

it('accepts an ordinary flight', () => {
  expect(
    checkFlightShape(sessionOf([{ launch_angle: 12, descent_angle: 38, carry: 250, apex: 95 }]), {}),
  ).toEqual([]);
});

it('warns of a flat landing and of a height in the wrong unit', () => {
  // A parabola of 250 yd at 12 deg rises 250 x tan 12 / 4 = 13.3 yd = 39.9 ft; 29 "ft" is a height in metres.
  const problems = checkFlightShape(
    sessionOf([{ launch_angle: 12, descent_angle: -38, carry: 250, apex: 29 }]),
    {},
  );
  expect(problems.map(({ kind, severity }) => [kind, severity])).toEqual([
    ['descent-shallow', 'warning'],
    ['apex-low', 'warning'],
  ]);
  expect(said(problems[0])).toMatchInlineSnapshot(
    `"expected a descent angle above the launch angle; found descent angle -38.0 deg after launch angle 12.0 deg; Check the sign of the descent angle (down is positive) and that the columns are not exchanged."`,
  );
  expect(said(problems[1])).toMatchInlineSnapshot(
    `"expected a height that this carry and launch angle need; found apex 29.0 ft for carry 250.0 yd; Check the unit of the height: feet, yards and metres are easily mixed up."`,
  );
});
