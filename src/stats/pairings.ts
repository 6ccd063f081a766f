import { sorted } from './quantile.ts';

/**
 * In how many of all pairings of one value from either group the first group's is greater, ties as a half: Mann and
 * Whitney's U (1947, Annals of Mathematical Statistics 18). 0 where a group is empty.
 */
export function pairingsWon(first: readonly number[], second: readonly number[]): number {
  const others = sorted(second);
  let below = 0;
  let notAbove = 0;
  let won = 0;
  for (const value of sorted(first)) {
    while ((others[below] ?? Infinity) < value) below++;
    while ((others[notAbove] ?? Infinity) <= value) notAbove++;
    won += (below + notAbove) / 2;
  }
  return won;
}
