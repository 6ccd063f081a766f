import { meanPlaces } from '../stats/lever.ts';
import { onceEach } from '../stats/onceEach.ts';
import { leverEven } from './thresholds.ts';

const placesOf = onceEach(meanPlaces);

/** Mean place of a's shots less that of b's, in one golfer's shots; null where the golfer did not hit both. */
export function placesApart(sequence: readonly string[], a: string, b: string): number | null {
  const places = placesOf(sequence);
  const [first, second] = [places.get(a), places.get(b)];
  return first === undefined || second === undefined ? null : first - second;
}

/**
 * What share of a steady drift over the session goes into a gap, signed: above 0 where `a` was hit later. A golfer's own
 * is (mean place of a - of b) / (N - 1); with several golfers that of the mean of their gaps, the mean of theirs.
 * Null where nobody hit both.
 *
 * @param sequences contender of each shot, in hit order, a golfer each
 */
export function leverOf(sequences: readonly (readonly string[])[], a: string, b: string): number | null {
  const own = sequences.flatMap((sequence) => {
    const apart = placesApart(sequence, a, b);
    return apart === null ? [] : [apart / Math.max(1, sequence.length - 1)];
  });
  return own.length === 0 ? null : own.reduce((sum, lever) => sum + lever, 0) / own.length;
}

/** Whether golfers' orders even out for a pair: some hit one earlier, some the other, and by as much. */
export function isEven(sequences: readonly (readonly string[])[], a: string, b: string): boolean {
  const lever = leverOf(sequences, a, b);
  const apart = sequences.flatMap((sequence) => placesApart(sequence, a, b) ?? []);
  return (
    lever !== null &&
    Math.abs(lever) < leverEven &&
    apart.some((places) => places < 0) &&
    apart.some((places) => places > 0)
  );
}
