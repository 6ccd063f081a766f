import { ruleBall } from '../../../flight/ball.ts';
import { problemOf, readingsOf, shots, written, type Check, type Reading } from './check.ts';

/** kg; a driver head. An iron's heavier head changes the formula by 2 %. Common practice, no source. */
const headMass = 0.2;
/** Degrees of spin loft beyond which the ball slides on the face and the formula no longer holds. Our judgement. */
const mostSpinLoft = 40;
const share = [0.6, 1.4] as const;

/**
 * Spin in rpm of a ball that leaves the face rolling: tangential speed V sin L / (1 + m/M + 5/2), spin 5/(2r) times it
 * (Penner 2001, Am. J. Phys. 69, for the speed; a uniform sphere for the rest).
 *
 * @param clubSpeed m/s
 * @param spinLoft degrees
 */
export function impactSpin(clubSpeed: number, spinLoft: number): number {
  const tangential =
    (clubSpeed * Math.sin((spinLoft * Math.PI) / 180)) / (1 + ruleBall.mass / headMass + 5 / 2);
  const radiansPerSecond = (5 * tangential) / (2 * (ruleBall.diameter / 2));
  return (radiansPerSecond * 60) / (2 * Math.PI);
}

type SpinIds = 'spin_rate' | 'club_speed' | 'dynamic_loft' | 'attack_angle';

/** C7: measured spin against the impact formula, for drivers and irons. */
export const checkImpactSpin: Check = (session, { club }) => {
  if (club === 'wedge') return [];
  const { columns } = session;
  const ratio = ({ value }: Reading<SpinIds>): number =>
    value.spin_rate / impactSpin(value.club_speed, value.dynamic_loft - value.attack_angle);
  const failing = readingsOf(session, ['spin_rate', 'club_speed', 'dynamic_loft', 'attack_angle']).filter(
    (reading) => {
      const spinLoft = reading.value.dynamic_loft - reading.value.attack_angle;
      if (spinLoft <= 0 || spinLoft > mostSpinLoft) return false;
      return ratio(reading) < share[0] || ratio(reading) > share[1];
    },
  );
  const [first] = failing;
  if (first === undefined) return [];
  const { value } = first;
  const formula = impactSpin(value.club_speed, value.dynamic_loft - value.attack_angle);
  return problemOf(
    'spin-against-impact',
    session,
    'spin_rate',
    failing.map(({ shot }) => shot),
    {
      expected: `spin within 40 % of ${Math.round(formula / 10) * 10} rpm, which club speed and spin loft suggest`,
      found: written(value.spin_rate, 'spin_rate', columns.spin_rate),
      cure: 'ask whether the monitor measured the spin or estimated it; a strike high or low on the face, or a wet ball, does this too',
      forReader: `For ${shots(failing.length)} the spin does not fit the club speed and loft; it may be estimated rather than measured.`,
    },
  );
};
