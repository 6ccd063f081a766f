import { epsilon, halfStep, problemOf, readingsOf, written, type Check } from './check.ts';

const degrees = (radians: number): number => (radians * 180) / Math.PI;

/** C8: total spin squared is back spin squared plus side spin squared, and the axis is the angle between the two. */
export const checkSpinParts: Check = (session) => {
  const { columns } = session;
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
  const [total] = totals;
  const [axis] = axes;
  const beside = (value: { readonly back_spin: number; readonly side_spin: number }): string =>
    `beside ${written(value.back_spin, 'back_spin', columns.back_spin)} and ${written(value.side_spin, 'side_spin', columns.side_spin)}`;
  return [
    ...(total === undefined
      ? []
      : problemOf('spin-parts-mismatch', session, {
          metric: 'spin_rate',
          shots: totals.map(({ shot }) => shot),
          expected: `${Math.round(Math.hypot(total.value.back_spin, total.value.side_spin))} rpm, which back and side spin make together`,
          found: `${written(total.value.spin_rate, 'spin_rate', columns.spin_rate)} ${beside(total.value)}`,
          cure: 'check that the three columns are what their headings say; a column headed spin may be back spin',
        })),
    ...(axis === undefined
      ? []
      : problemOf('spin-parts-mismatch', session, {
          metric: 'spin_axis',
          shots: axes.map(({ shot }) => shot),
          expected: `${degrees(Math.atan2(axis.value.side_spin, axis.value.back_spin)).toFixed(1)} deg, which back and side spin make together`,
          found: `${written(axis.value.spin_axis, 'spin_axis', columns.spin_axis)} ${beside(axis.value)}`,
          cure: 'check which side the spin axis and the side spin count as positive, and say so under "columns" in the report',
        })),
  ];
};
