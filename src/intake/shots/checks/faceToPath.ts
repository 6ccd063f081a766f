import { epsilon, halfStep, problemOf, readingsOf, written, type Check } from './check.ts';

/** C3: face to path is face angle less club path, within the rounding of all three. */
export const checkFaceToPath: Check = (session) => {
  const { columns } = session;
  const room =
    2 * halfStep(session, 'face_to_path') +
    halfStep(session, 'face_angle') +
    halfStep(session, 'club_path') +
    epsilon;
  const failing = readingsOf(session, ['face_angle', 'club_path', 'face_to_path']).filter(
    ({ value }) => Math.abs(value.face_to_path - (value.face_angle - value.club_path)) > room,
  );
  const [first] = failing;
  if (first === undefined) return [];
  const { value } = first;
  return problemOf(
    'face-to-path-mismatch',
    session,
    'face_to_path',
    failing.map(({ shot }) => shot),
    {
      expected: `${(value.face_angle - value.club_path).toFixed(1)} deg, which is face angle less club path`,
      found: `${written(value.face_to_path, 'face_to_path', columns.face_to_path)} beside ${written(value.face_angle, 'face_angle', columns.face_angle)} and ${written(value.club_path, 'club_path', columns.club_path)}`,
      cure: 'check which side each of the three columns counts as positive, and say so under "columns" in the report',
    },
  );
};
