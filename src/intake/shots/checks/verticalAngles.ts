import { halfStep, problemOf, readingsOf, written, type Check } from './check.ts';

/** Degrees by which launch may exceed dynamic loft. Our judgement. */
const room = 1;

/** C6: the ball leaves above the attack angle and not above the loft at impact. */
export const checkVerticalAngles: Check = (session) => {
  const { columns } = session;
  const low = readingsOf(session, ['attack_angle', 'launch_angle']).filter(
    ({ value }) => value.launch_angle < value.attack_angle,
  );
  const rounding = halfStep(session, 'launch_angle') + halfStep(session, 'dynamic_loft');
  const high = readingsOf(session, ['launch_angle', 'dynamic_loft']).filter(
    ({ value }) => value.launch_angle > value.dynamic_loft + room + rounding,
  );
  const [lowest] = low;
  const [highest] = high;
  return [
    ...(lowest === undefined
      ? []
      : problemOf('launch-below-attack', session, {
          metric: 'launch_angle',
          shots: low.map(({ shot }) => shot),
          expected: 'a launch angle above the attack angle',
          found: `${written(lowest.value.launch_angle, 'launch_angle', columns.launch_angle)} with ${written(lowest.value.attack_angle, 'attack_angle', columns.attack_angle)}`,
          cure: 'check the sign of the attack angle; a topped ball does this too',
        })),
    ...(highest === undefined
      ? []
      : problemOf('launch-above-loft', session, {
          metric: 'launch_angle',
          shots: high.map(({ shot }) => shot),
          expected: 'a launch angle not above the loft at impact',
          found: `${written(highest.value.launch_angle, 'launch_angle', columns.launch_angle)} with ${written(highest.value.dynamic_loft, 'dynamic_loft', columns.dynamic_loft)}`,
          cure: 'check that the two columns are what their headings say; a strike high on the face does this too',
        })),
  ];
};
