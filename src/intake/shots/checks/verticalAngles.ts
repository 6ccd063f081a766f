import { halfStep, readingsOf, type Check } from './check.ts';
import { readingsProblem } from './readingsProblem.ts';

/** Degrees by which launch may exceed dynamic loft. Our judgement. */
const room = 1;

/** C6: the ball leaves above the attack angle and not above the loft at impact. */
export const checkVerticalAngles: Check = (session) => {
  const low = readingsOf(session, ['attack_angle', 'launch_angle']).filter(
    ({ value }) => value.launch_angle < value.attack_angle,
  );
  const rounding = halfStep(session, 'launch_angle') + halfStep(session, 'dynamic_loft');
  const high = readingsOf(session, ['launch_angle', 'dynamic_loft']).filter(
    ({ value }) => value.launch_angle > value.dynamic_loft + room + rounding,
  );
  return [
    ...readingsProblem('launch-below-attack', session, low, ({ print }) => ({
      metric: 'launch_angle',
      expected: 'a launch angle above the attack angle',
      found: `${print('launch_angle')} with ${print('attack_angle')}`,
      cure: 'check the sign of the attack angle; a topped ball does this too',
    })),
    ...readingsProblem('launch-above-loft', session, high, ({ print }) => ({
      metric: 'launch_angle',
      expected: 'a launch angle not above the loft at impact',
      found: `${print('launch_angle')} with ${print('dynamic_loft')}`,
      cure: 'check that the two columns are what their headings say; a strike high on the face does this too',
    })),
  ];
};
