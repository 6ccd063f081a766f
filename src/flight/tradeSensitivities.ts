import { toCanonical } from '../trade/units.ts';
import type { DeliveryMeasure } from './delivery.ts';

export type PricedMetric = 'carry' | 'total' | 'side';

const yards = (low: number, high: number): readonly [number, number] => [
  toCanonical(low, 'yd'),
  toCanonical(high, 'yd'),
];
const yardsPerMph = (low: number, high: number): readonly [number, number] => [
  toCanonical(low, 'yd') / toCanonical(1, 'mph'),
  toCanonical(high, 'yd') / toCanonical(1, 'mph'),
];

const length = {
  // 1 mph is about 1.45 mph of ball speed, 2 to 3 yards
  club_speed: yardsPerMph(2, 3),
  // as 1 degree of launch angle
  attack_angle: yards(0.4, 2.1),
  club_path: yards(0, 0),
  // 4 degrees of tilt either way; our own calculation
  face_to_path: yards(-2, 2),
} as const;

/**
 * Metres per unit (m/s, degree) of a delivery measure for a driver, least and most, where no launch was read: rules
 * of the trade (common practice, no source). Shorter clubs move less.
 */
export const tradeSensitivities: Readonly<
  Record<PricedMetric, Readonly<Record<DeliveryMeasure, readonly [low: number, high: number]>>>
> = {
  carry: length,
  total: length,
  side: {
    club_speed: yards(0, 0),
    attack_angle: yards(0, 0),
    // 4 to 5 yards off line at 230 to 260 yards
    club_path: yards(4, 5),
    // start line by 61 to 83 % of that, and 6 to 12 yards of curve
    face_to_path: yards(0.61 * 4 + 6, 0.83 * 5 + 12),
  },
};
