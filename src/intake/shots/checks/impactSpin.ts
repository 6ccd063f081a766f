import { impactSpin } from '../../../flight/impactSpin.ts';
import { readingsOf, shots, type Check, type Reading } from './check.ts';
import { readingsProblem } from './readingsProblem.ts';

/** Degrees of spin loft beyond which the ball slides on the face and the formula no longer holds. Our judgement. */
const mostSpinLoft = 40;
const share = [0.6, 1.4] as const;

type SpinIds = 'spin_rate' | 'club_speed' | 'dynamic_loft' | 'attack_angle';

/** C7: measured spin against the impact formula, for drivers and irons. */
export const checkImpactSpin: Check = (session, { club }) => {
  if (club === 'wedge') return [];
  const ratio = ({ value }: Reading<SpinIds>): number =>
    value.spin_rate / impactSpin(value.club_speed, value.dynamic_loft - value.attack_angle);
  const failing = readingsOf(session, ['spin_rate', 'club_speed', 'dynamic_loft', 'attack_angle']).filter(
    (reading) => {
      const spinLoft = reading.value.dynamic_loft - reading.value.attack_angle;
      if (spinLoft <= 0 || spinLoft > mostSpinLoft) return false;
      return ratio(reading) < share[0] || ratio(reading) > share[1];
    },
  );
  return readingsProblem('spin-against-impact', session, failing, ({ value, print }) => {
    const formula = impactSpin(value.club_speed, value.dynamic_loft - value.attack_angle);
    return {
      metric: 'spin_rate',
      expected: `spin within 40 % of ${Math.round(formula / 10) * 10} rpm, which club speed and spin loft suggest`,
      found: print('spin_rate'),
      cure: 'ask whether the monitor measured the spin or estimated it; a strike high or low on the face, or a wet ball, does this too',
      forReader: `For ${shots(failing.length)} the spin does not fit the club speed and loft; it may be estimated rather than measured.`,
    };
  });
};
