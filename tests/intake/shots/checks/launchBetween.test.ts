import { expect, it } from 'vitest';
import { checkLaunchBetween } from '../../../../src/intake/shots/checks/launchBetween.ts';
import { said, sessionOf } from './sessionOf.ts';

it('accepts a start direction 61 to 83 % of the way from path to face', () => {
  // Wood, Henrikson & Broadie 2018, by way of a summary: the share across club types.
  const rows = [0.61, 0.7, 0.83].map((share) => ({
    club_path: 2,
    face_angle: -2,
    launch_direction: 2 - 4 * share,
  }));
  expect(checkLaunchBetween(sessionOf(rows), {})).toEqual([]);
});

it('says nothing where face and path are within two degrees', () => {
  expect(checkLaunchBetween(sessionOf([{ club_path: 1, face_angle: 2, launch_direction: -4 }]), {})).toEqual(
    [],
  );
});

it('warns of a start outside', () => {
  const [problem] = checkLaunchBetween(
    sessionOf([{ club_path: 4, face_angle: 0, launch_direction: 4.4 }]),
    {},
  );
  expect(problem).toMatchObject({ kind: 'launch-outside-face-and-path', severity: 'warning', line: 2 });
  expect(said(problem)).toMatchInlineSnapshot(
    `"expected a start direction between club path and face angle, nearer the face; found launch direction 4.4 deg with face angle 0.0 deg and club path 4.0 deg; Check the sign of the three columns; off-centre strikes and weak face readings do this too."`,
  );
});
