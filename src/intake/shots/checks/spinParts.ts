import { epsilon, halfStep, readingsOf, type Check } from './check.ts';
import { readingsProblem } from './readingsProblem.ts';

const degrees = (radians: number): number => (radians * 180) / Math.PI;

/** C8: total spin squared is back spin squared plus side spin squared, and the axis is the angle between the two. */
export const checkSpinParts: Check = (session) => {
  const parts = halfStep(session, 'back_spin') + halfStep(session, 'side_spin');
  const totals = readingsOf(session, ['spin_rate', 'back_spin', 'side_spin']).filter(
    ({ value }) =>
      Math.abs(value.spin_rate - Math.hypot(value.back_spin, value.side_spin)) >
      2 * halfStep(session, 'spin_rate') + parts + epsilon,
  );
  const axes = readingsOf(session, ['spin_axis', 'back_spin', 'side_spin']).filter(({ value }) => {
    const size = Math.hypot(value.back_spin, value.side_spin);
    if (size === 0) return false;
    const rounding = 2 * halfStep(session, 'spin_axis') + degrees(parts / size) + epsilon;
    return Math.abs(value.spin_axis - degrees(Math.atan2(value.side_spin, value.back_spin))) > rounding;
  });
  return [
    ...readingsProblem('spin-parts-mismatch', session, totals, ({ value, print }) => ({
      metric: 'spin_rate',
      expected: `${Math.round(Math.hypot(value.back_spin, value.side_spin))} rpm, which back and side spin make together`,
      found: `${print('spin_rate')} beside ${print('back_spin')} and ${print('side_spin')}`,
      cure: 'check that the three columns are what their headings say; a column headed spin may be back spin',
    })),
    ...readingsProblem('spin-parts-mismatch', session, axes, ({ value, print }) => ({
      metric: 'spin_axis',
      expected: `${degrees(Math.atan2(value.side_spin, value.back_spin)).toFixed(1)} deg, which back and side spin make together`,
      found: `${print('spin_axis')} beside ${print('back_spin')} and ${print('side_spin')}`,
      cure: 'check which side the spin axis and the side spin count as positive, and say so under "columns" in the report',
    })),
  ];
};
