import { halfStep, readingsOf, type Check } from './check.ts';
import { readingsProblem } from './readingsProblem.ts';

/** How far along from path to face the ball may start; outside is questioned. Our judgement. */
const share = [0.4, 1.1] as const;
/** Degrees between face and path below which the share says nothing. */
const leastGap = 2;

/**
 * C4: the ball starts between path and face, nearer the face (61 to 83 % of the way across club types: Wood, Henrikson &
 * Broadie 2018, by way of a summary).
 */
export const checkLaunchBetween: Check = (session) => {
  const rounding = halfStep(session, 'launch_direction') + halfStep(session, 'club_path');
  const failing = readingsOf(session, ['launch_direction', 'face_angle', 'club_path']).filter(({ value }) => {
    const gap = value.face_angle - value.club_path;
    if (Math.abs(gap) < leastGap) return false;
    const room = rounding / Math.abs(gap);
    const along = (value.launch_direction - value.club_path) / gap;
    return along < share[0] - room || along > share[1] + room;
  });
  return readingsProblem('launch-outside-face-and-path', session, failing, ({ print }) => ({
    metric: 'launch_direction',
    expected: 'a start direction between club path and face angle, nearer the face',
    found: `${print('launch_direction')} with ${print('face_angle')} and ${print('club_path')}`,
    cure: 'check the sign of the three columns; off-centre strikes and weak face readings do this too',
  }));
};
