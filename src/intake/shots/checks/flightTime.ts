import { halfStep, readingsOf, type Check } from './check.ts';
import { readingsProblem } from './readingsProblem.ts';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** C11: carry over hang time, the mean speed over the ground, is below the ground speed at the start. */
export const checkFlightTime: Check = (session) => {
  const failing = readingsOf(session, ['carry', 'hang_time', 'ball_speed', 'launch_angle']).filter(
    ({ value }) => {
      const shortest = value.carry - halfStep(session, 'carry');
      const longest = value.hang_time + halfStep(session, 'hang_time');
      const start =
        (value.ball_speed + halfStep(session, 'ball_speed')) * Math.cos(radians(value.launch_angle));
      return shortest / longest >= start;
    },
  );
  return readingsProblem('flight-too-fast', session, failing, ({ value, print }) => {
    const fastest = value.ball_speed * Math.cos(radians(value.launch_angle));
    return {
      metric: 'hang_time',
      expected: `a hang time above ${(value.carry / fastest).toFixed(1)} s for this carry and ball speed`,
      found: `${print('hang_time')} for ${print('carry')}`,
      cure: 'check the units of carry, ball speed and hang time; air only slows a ball down',
    };
  });
};
