import { halfStep } from './check.ts';
import { followsFrom } from './followsFrom.ts';

/** Degrees that spin loft measured in space may differ from the difference in the plane. Our judgement. */
const room = 0.3;

/** C5: spin loft is dynamic loft less attack angle, and above zero. */
export const checkSpinLoft = followsFrom({
  kind: 'spin-loft-mismatch',
  whole: 'spin_loft',
  parts: ['dynamic_loft', 'attack_angle'],
  fails: ({ spin_loft: own, dynamic_loft: loft, attack_angle: attack }, session) =>
    own <= 0 ||
    Math.abs(own - (loft - attack)) >
      room +
        (halfStep(session, 'spin_loft') +
          halfStep(session, 'dynamic_loft') +
          halfStep(session, 'attack_angle')),
  expected: ({ dynamic_loft: loft, attack_angle: attack }) =>
    `${(loft - attack).toFixed(1)} deg, which is dynamic loft less attack angle`,
  cure: 'check the sign of the attack angle, and that the columns are what their headings say',
});
