import type { Random } from '../../../src/stats/random.ts';

/** Spread of carry of one hitter, in yards; what a gap must reach to matter, in yards. Both assumptions. */
export const CARRY_SD = 8;
export const MATTERS = 5;

/** One in ten shots loses 12 yd plus an exponential of mean 15 (an assumption, no source). */
export function mishitLoss(random: Random): number {
  return random.uniform() < 0.1 ? 12 - 15 * Math.log(1 - random.uniform()) : 0;
}

/** n independent normal shots. */
export function normalShots(n: number, mean: number, sd: number, random: Random): readonly number[] {
  return Array.from({ length: n }, () => mean + sd * random.normal());
}

/** A stationary series of N shots in hit order, standard deviation `sd`, neighbours correlated. */
export function correlatedShots(
  count: number,
  sd: number,
  correlation: number,
  random: Random,
): readonly number[] {
  const fresh = Math.sqrt(1 - correlation * correlation);
  let last = random.normal();
  return Array.from({ length: count }, (_, i) => {
    if (i > 0) last = correlation * last + fresh * random.normal();
    return sd * last;
  });
}
