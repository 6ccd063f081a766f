import { expect, it } from 'vitest';
import { checkSigns } from '../../../../src/intake/shots/checks/signs.ts';
import { said, sessionOf } from './sessionOf.ts';

const faces = [-3, -2, -2, -1, -1, 0, 1, 1, 2, 2, 3, 3];
const noise = [0.5, -0.4, 0.8, -0.9, 0.2, 0.1, -0.3, 0.6, -0.7, 0.4, -0.2, 0.3];

it('accepts an axis that goes with face to path', () => {
  expect(
    checkSigns(
      sessionOf(faces.map((face, i) => ({ face_to_path: face, spin_axis: 4 * face + (noise[i] ?? 0) }))),
      {},
    ),
  ).toEqual([]);
});

it('refuses an axis that goes against it', () => {
  const rows = faces.map((face, i) => ({
    face_angle: face,
    club_path: 0,
    spin_axis: -4 * face + (noise[i] ?? 0),
  }));
  const [problem] = checkSigns(sessionOf(rows), {});
  expect(problem).toMatchObject({ kind: 'sign-flipped', severity: 'error', columnName: 'spin axis' });
  expect(said(problem)).toMatchInlineSnapshot(
    `"expected a spin axis tilted to the right when the face is open to the path; found the opposite (correlation -1.00 over 12 shots); Check which side spin axis, face and path count as positive, and whether the hitter's hand is stated right; "positive: left" under "columns" in the report turns a column."`,
  );
});

it('only warns where few shots or a weak link leave room for chance', () => {
  // R 4.2, the twelve shots below: cor.test(faces, axis, alternative = "less") gives r = -0.0425, p = 0.448.
  const weak = [3, -2, -4, 4, 1, -5, 2, -3, 5, -1, -4, 1];
  const rows = faces.map((face, i) => ({ face_to_path: face, spin_axis: weak[i] ?? 0 }));
  const [problem] = checkSigns(sessionOf(rows), {});
  expect(problem?.severity).toBe('warning');
  const few = checkSigns(
    sessionOf(faces.slice(0, 9).map((face) => ({ face_to_path: face, spin_axis: -face }))),
    {},
  );
  expect(few[0]?.severity).toBe('warning');
});

it('looks at the curve too: side less what the start direction explains', () => {
  const rows = faces.map((face, i) => ({
    face_to_path: face,
    carry: 250,
    launch_direction: noise[i] ?? 0,
    side: 250 * Math.tan(((noise[i] ?? 0) * Math.PI) / 180) - 5 * face,
  }));
  expect(checkSigns(sessionOf(rows), {})[0]).toMatchObject({
    kind: 'sign-flipped',
    severity: 'error',
    columnName: 'side',
  });
});
