import type { Launch } from './launch.ts';
import { smashBound } from './smashBound.ts';

/** What of the swing is priced: canonical units, m/s and degrees. */
export type DeliveryMeasure = 'club_speed' | 'attack_angle' | 'club_path' | 'face_to_path';

/** A shot with what of its delivery is known; null where it was not read. */
export interface Delivery {
  readonly launch: Launch;
  readonly clubSpeed: number | null;
  readonly spinLoft: number | null;
}

// Wood, Henrikson & Broadie 2018: a ball starts 61 to 83 % of the way from path to face, over all clubs.
const towardsFace = [0.61, 0.83] as const;
// The same split holds up and down; used where the loft at impact was not read.
const usualShareOfLoft = 0.8;
const head = { restitution: 0.83, mass: 0.2 };

/**
 * The launches that a change of one delivery measure may lead to, all else held, as pairs of plausible extremes:
 *
 * - club speed: ball speed and spin in proportion (smash factor and spin loft held);
 * - attack angle: with the loft at impact held, spin loft falls by as much as the attack rises, and spin (by its
 *   sine) and ball speed with it, while the launch rises by the share that does not follow the face; or the loft
 *   rises with the attack, and with it the launch alone;
 * - path, face to path held: everything turns;
 * - face to path, path held: the start turns by the face's share, and the spin axis tilts by the angle over the
 *   spin loft.
 *
 * Null where club speed is asked for and was not read.
 */
export function launchesAfter(
  { launch, clubSpeed, spinLoft }: Delivery,
  measure: DeliveryMeasure,
  difference: number,
): readonly Launch[] | null {
  const loft = spinLoft ?? launch.launchAngle / usualShareOfLoft;
  switch (measure) {
    case 'club_speed': {
      if (clubSpeed === null) return null;
      const ratio = (clubSpeed + difference) / clubSpeed;
      return [{ ...launch, ballSpeed: launch.ballSpeed * ratio, spinRate: launch.spinRate * ratio }];
    }
    case 'attack_angle': {
      const flatter = loft - difference;
      const held = towardsFace.map((share) => ({
        ...launch,
        launchAngle: launch.launchAngle + (1 - share) * difference,
        spinRate: (launch.spinRate * sine(flatter)) / sine(loft),
        ballSpeed:
          (launch.ballSpeed * smashBound({ ...head, loft: flatter })) / smashBound({ ...head, loft }),
      }));
      return [...held, { ...launch, launchAngle: launch.launchAngle + difference }];
    }
    case 'club_path':
      return [{ ...launch, launchDirection: launch.launchDirection + difference }];
    case 'face_to_path':
      return towardsFace.map((share) => ({
        ...launch,
        launchDirection: launch.launchDirection + share * difference,
        spinAxis: launch.spinAxis + difference / Math.tan((loft * Math.PI) / 180),
      }));
  }
}

function sine(degrees: number): number {
  return Math.sin((degrees * Math.PI) / 180);
}
