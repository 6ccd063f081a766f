import { halfStep, problemOf, readingsOf, written, type Check } from './check.ts';

const tangent = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

/**
 * C12: a ball comes down steeper than it went up, and rises at least to carry x tan(launch) / 4, the height of a flight
 * without air.
 */
export const checkFlightShape: Check = (session) => {
  const { columns } = session;
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
  const [first] = shallow;
  const [lowest] = low;
  return [
    ...(first === undefined
      ? []
      : problemOf('descent-shallow', session, {
          metric: 'descent_angle',
          shots: shallow.map(({ shot }) => shot),
          expected: 'a descent angle above the launch angle',
          found: `${written(first.value.descent_angle, 'descent_angle', columns.descent_angle)} after ${written(first.value.launch_angle, 'launch_angle', columns.launch_angle)}`,
          cure: 'check the sign of the descent angle (down is positive) and that the columns are not exchanged',
        })),
    ...(lowest === undefined
      ? []
      : problemOf('apex-low', session, {
          metric: 'apex',
          shots: low.map(({ shot }) => shot),
          expected: 'a height that this carry and launch angle need',
          found: `${written(lowest.value.apex, 'apex', columns.apex)} for ${written(lowest.value.carry, 'carry', columns.carry)}`,
          cure: 'check the unit of the height: feet, yards and metres are easily mixed up',
        })),
  ];
};
