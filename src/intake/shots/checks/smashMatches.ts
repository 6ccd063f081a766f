import { epsilon, halfStep, problemOf, readingsOf, written, type Check } from './check.ts';

/** C1: the smash factor of the file is ball speed over club speed, within the rounding of all three. */
export const checkSmashMatches: Check = (session) => {
  const { columns } = session;
  const [ball, club] = [halfStep(session, 'ball_speed'), halfStep(session, 'club_speed')];
  // Devices cut digits off as often as they round, so a whole step is allowed here.
  const smash = 2 * halfStep(session, 'smash') + epsilon;
  const failing = readingsOf(session, ['ball_speed', 'club_speed', 'smash']).filter(({ value }) => {
    const low = (value.ball_speed - ball) / (value.club_speed + club);
    const high = (value.ball_speed + ball) / (value.club_speed - club);
    return value.smash < low - smash || value.smash > high + smash;
  });
  const [first] = failing;
  if (first === undefined) return [];
  const { value } = first;
  return problemOf(
    'smash-mismatch',
    session,
    'smash',
    failing.map(({ shot }) => shot),
    {
      expected: `${(value.ball_speed / value.club_speed).toFixed(2)}, which is ball speed divided by club speed`,
      found: `${written(value.smash, 'smash', columns.smash)} beside ${written(value.ball_speed, 'ball_speed', columns.ball_speed)} and ${written(value.club_speed, 'club_speed', columns.club_speed)}`,
      cure: 'check the units of both speeds, then the cells of these rows',
    },
  );
};
