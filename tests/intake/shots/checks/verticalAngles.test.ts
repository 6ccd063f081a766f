import { expect, it } from 'vitest';
import { checkVerticalAngles } from '../../../../src/intake/shots/checks/verticalAngles.ts';
import { said, sessionOf } from './sessionOf.ts';

it('accepts attack below launch below loft', () => {
  expect(
    checkVerticalAngles(sessionOf([{ attack_angle: 2, launch_angle: 12, dynamic_loft: 13.5 }]), {}),
  ).toEqual([]);
});

it('warns of the two other orders', () => {
  const problems = checkVerticalAngles(
    sessionOf([
      { attack_angle: 4, launch_angle: 3.5, dynamic_loft: 13.5 },
      { attack_angle: 4, launch_angle: 15.5, dynamic_loft: 13.5 },
    ]),
    {},
  );
  expect(problems.map(({ kind, severity, line }) => [kind, severity, line])).toEqual([
    ['launch-below-attack', 'warning', 2],
    ['launch-above-loft', 'warning', 3],
  ]);
  expect(said(problems[0])).toMatchInlineSnapshot(
    `"expected a launch angle above the attack angle; found launch angle 3.5 deg with attack angle 4.0 deg; Check the sign of the attack angle; a topped ball does this too."`,
  );
  expect(said(problems[1])).toMatchInlineSnapshot(
    `"expected a launch angle not above the loft at impact; found launch angle 15.5 deg with dynamic loft 13.5 deg; Check that the two columns are what their headings say; a strike high on the face does this too."`,
  );
});
