import { pairingsWon } from '../stats/pairings.ts';
import type { PairFindings } from './findings.ts';
import type { HitterSamples } from './hitterFindings.ts';

/**
 * One shot with each: in how many pairings of counted shots the one ahead was ahead, ties as a half; several golfers each
 * on their own and added up.
 *
 * @param better which way is wanted; `neither` as `more`
 */
export function singleShot(
  ahead: string,
  behind: string,
  byHitter: readonly HitterSamples[],
  better: 'more' | 'less' | 'neither',
): PairFindings['singleShot'] {
  const own = byHitter.map(({ samples }) => {
    const values = (id: string): readonly number[] =>
      samples.find(({ contender }) => contender === id)?.values ?? [];
    const [first, second] = [values(ahead), values(behind)];
    const of = first.length * second.length;
    const more = pairingsWon(first, second);
    return { more: better === 'less' ? of - more : more, of };
  });
  const sum = (part: (one: { more: number; of: number }) => number): number =>
    own.reduce((total, one) => total + part(one), 0);
  const of = sum((one) => one.of);
  return of === 0 ? null : { more: sum((one) => one.more), of };
}
