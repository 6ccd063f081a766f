import { halfStep, problemOf, readingsOf, shots, type Check } from './check.ts';

/** Above the first, club speed was probably read at the wrong place of the head; above the second nothing real is left. */
const questioned = 1.5;
const impossible = 1.56;

/**
 * C2: ball speed over club speed against what a collision allows (bound of Penner 2001 for a driver at the limit of
 * the Rules: about 1.49; the two limits are our judgement).
 */
export const checkSmashBound: Check = (session) => {
  const least = readingsOf(session, ['ball_speed', 'club_speed']).map(({ shot, value }) => ({
    shot,
    ratio:
      (value.ball_speed - halfStep(session, 'ball_speed')) /
      (value.club_speed + halfStep(session, 'club_speed')),
  }));
  const beyond = least.filter(({ ratio }) => ratio > impossible);
  const high = least.filter(({ ratio }) => ratio > questioned && ratio <= impossible);
  const found = (ratio: number | undefined): string => `${(ratio ?? 0).toFixed(2)} at the least`;
  return [
    ...problemOf('smash-above-bound', session, {
      metric: 'ball_speed',
      shots: beyond.map(({ shot }) => shot),
      severity: 'error',
      expected: `ball speed at most ${impossible} times club speed`,
      found: found(beyond[0]?.ratio),
      cure: 'check the units of both speeds; if they are right, leave these shots out with that reason',
    }),
    ...problemOf('smash-above-bound', session, {
      metric: 'ball_speed',
      shots: high.map(({ shot }) => shot),
      expected: `ball speed at most about ${questioned.toFixed(2)} times club speed`,
      found: found(high[0]?.ratio),
      cure: 'keep the shots; the monitor reads club speed at one point of the head, and an off-centre strike can do this',
      forReader: `${shots(high.length)} ${high.length === 1 ? 'shows' : 'show'} more ball speed than the club speed allows, so the monitor's club speed is in doubt.`,
    }),
  ];
};
