import { epsilon, halfStep } from './check.ts';
import { followsFrom } from './followsFrom.ts';

/** C1: the smash factor of the file is ball speed over club speed, within the rounding of all three. */
export const checkSmashMatches = followsFrom({
  kind: 'smash-mismatch',
  whole: 'smash',
  parts: ['ball_speed', 'club_speed'],
  fails: (value, session) => {
    const [ball, club] = [halfStep(session, 'ball_speed'), halfStep(session, 'club_speed')];
    // Devices cut digits off as often as they round, so a whole step is allowed here.
    const smash = 2 * halfStep(session, 'smash') + epsilon;
    const low = (value.ball_speed - ball) / (value.club_speed + club);
    const high = (value.ball_speed + ball) / (value.club_speed - club);
    return value.smash < low - smash || value.smash > high + smash;
  },
  expected: (value) =>
    `${(value.ball_speed / value.club_speed).toFixed(2)}, which is ball speed divided by club speed`,
  cure: 'check the units of both speeds, then the cells of these rows',
});
