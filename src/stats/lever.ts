import { requireAtLeast } from './statisticsError.ts';

/**
 * How far a straight drift can move the gap of groups a and b: |mean place of a's shots - mean place of b's| /
 * (N - 1), from 0 (drift cannot touch it) towards 1 (all of it). A drift of D over the session moves the gap by
 * D x lever.
 *
 * @param sequence group of each of the N shots, in order
 * @throws StatisticsError `sample-too-small` when either group has no shot
 */
export function lever(sequence: readonly string[], a: string, b: string): number {
  return Math.abs(meanPlace(sequence, a) - meanPlace(sequence, b)) / Math.max(1, sequence.length - 1);
}

/** Mean place of a group's shots in the sequence, counted from 1. */
export function meanPlace(sequence: readonly string[], group: string): number {
  const place = meanPlaces(sequence).get(group);
  requireAtLeast('meanPlace', `shots of ${group}`, place === undefined ? 0 : 1, 1);
  return place ?? Number.NaN;
}

/** Mean place of each group's shots, counted from 1. */
export function meanPlaces(sequence: readonly string[]): ReadonlyMap<string, number> {
  const sums = new Map<string, { sum: number; count: number }>();
  sequence.forEach((group, i) => {
    const own = sums.get(group) ?? { sum: 0, count: 0 };
    own.sum += i + 1;
    own.count += 1;
    sums.set(group, own);
  });
  return new Map([...sums].map(([group, { sum, count }]) => [group, sum / count]));
}
