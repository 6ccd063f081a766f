import { expect, it } from 'vitest';
import { checkFaceToPath } from '../../../../src/intake/shots/checks/faceToPath.ts';
import { said, sessionOf } from './sessionOf.ts';

it('accepts the difference within the rounding of three columns', () => {
  expect(checkFaceToPath(sessionOf([{ face_angle: 1.2, club_path: 3.1, face_to_path: -1.8 }]), {})).toEqual(
    [],
  );
});

it('refuses a difference with the sign turned', () => {
  const [problem] = checkFaceToPath(sessionOf([{ face_angle: 1.2, club_path: 3.1, face_to_path: 1.9 }]), {});
  expect(problem).toMatchObject({ kind: 'face-to-path-mismatch', severity: 'error', line: 2 });
  expect(said(problem)).toMatchInlineSnapshot(
    `"expected -1.9 deg, which is face angle less club path; found face to path 1.9 deg beside face angle 1.2 deg and club path 3.1 deg; Check which side each of the three columns counts as positive, and say so under "columns" in the report."`,
  );
});
