import { halfStep, problemOf, readingsOf, written, type Check } from './check.ts';

/** Degrees that spin loft measured in space may differ from the difference in the plane. Our judgement. */
const room = 0.3;

/** C5: spin loft is dynamic loft less attack angle, and above zero. */
export const checkSpinLoft: Check = (session) => {
  const { columns } = session;
  const rounding =
    halfStep(session, 'spin_loft') + halfStep(session, 'dynamic_loft') + halfStep(session, 'attack_angle');
  const failing = readingsOf(session, ['spin_loft', 'dynamic_loft', 'attack_angle']).filter(
    ({ value }) =>
      value.spin_loft <= 0 ||
      Math.abs(value.spin_loft - (value.dynamic_loft - value.attack_angle)) > room + rounding,
  );
  const [first] = failing;
  if (first === undefined) return [];
  const { value } = first;
  return problemOf(
    'spin-loft-mismatch',
    session,
    'spin_loft',
    failing.map(({ shot }) => shot),
    {
      expected: `${(value.dynamic_loft - value.attack_angle).toFixed(1)} deg, which is dynamic loft less attack angle`,
      found: `${written(value.spin_loft, 'spin_loft', columns.spin_loft)} beside ${written(value.dynamic_loft, 'dynamic_loft', columns.dynamic_loft)} and ${written(value.attack_angle, 'attack_angle', columns.attack_angle)}`,
      cure: 'check the sign of the attack angle, and that the columns are what their headings say',
    },
  );
};
