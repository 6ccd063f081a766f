import { halfStep, readingsOf, type Check } from './check.ts';
import { readingsProblem } from './readingsProblem.ts';

const tangent = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

/**
 * C12: a ball comes down steeper than it went up, and rises at least to carry x tan(launch) / 4, the height of a flight
 * without air.
 */
export const checkFlightShape: Check = (session) => {
  const rounding = halfStep(session, 'descent_angle') + halfStep(session, 'launch_angle');
  const shallow = readingsOf(session, ['descent_angle', 'launch_angle']).filter(
    ({ value }) => value.launch_angle > 0 && value.descent_angle < value.launch_angle - rounding,
  );
  const low = readingsOf(session, ['apex', 'carry', 'launch_angle']).filter(({ value }) => {
    const least =
      ((value.carry - halfStep(session, 'carry')) *
        tangent(value.launch_angle - halfStep(session, 'launch_angle'))) /
      4;
    return value.launch_angle > 0 && value.apex + halfStep(session, 'apex') < least;
  });
  return [
    ...readingsProblem('descent-shallow', session, shallow, ({ print }) => ({
      metric: 'descent_angle',
      expected: 'a descent angle above the launch angle',
      found: `${print('descent_angle')} after ${print('launch_angle')}`,
      cure: 'check the sign of the descent angle (down is positive) and that the columns are not exchanged',
    })),
    ...readingsProblem('apex-low', session, low, ({ print }) => ({
      metric: 'apex',
      expected: 'a height that this carry and launch angle need',
      found: `${print('apex')} for ${print('carry')}`,
      cure: 'check the unit of the height: feet, yards and metres are easily mixed up',
    })),
  ];
};
