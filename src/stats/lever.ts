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
  let sum = 0;
  let count = 0;
  sequence.forEach((member, i) => {
    if (member !== group) return;
    sum += i + 1;
    count += 1;
  });
  requireAtLeast('meanPlace', `shots of ${group}`, count, 1);
  return sum / count;
}
