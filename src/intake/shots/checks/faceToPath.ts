import { epsilon, halfStep } from './check.ts';
import { followsFrom } from './followsFrom.ts';

/** C3: face to path is face angle less club path, within the rounding of all three. */
export const checkFaceToPath = followsFrom({
  kind: 'face-to-path-mismatch',
  whole: 'face_to_path',
  parts: ['face_angle', 'club_path'],
  fails: ({ face_to_path: own, face_angle: face, club_path: path }, session) =>
    Math.abs(own - (face - path)) >
    2 * halfStep(session, 'face_to_path') +
      halfStep(session, 'face_angle') +
      halfStep(session, 'club_path') +
      epsilon,
  expected: ({ face_angle: face, club_path: path }) =>
    `${(face - path).toFixed(1)} deg, which is face angle less club path`,
  cure: 'check which side each of the three columns counts as positive, and say so under "columns" in the report',
});
