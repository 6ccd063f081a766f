import { at } from './at.ts';
/**
 * P values adjusted for being several, in the order given: Holm 1979 (Scandinavian Journal of Statistics 6),
 * step down from the smallest, each times the number not yet passed, never falling, at most 1. Holds whatever
 * the dependence between the tests.
 */
export function holm(ps: readonly number[]): readonly number[] {
  const order = ps.map((_, i) => i).toSorted((a, b) => at(ps, a) - at(ps, b));
  const adjusted = new Array<number>(ps.length).fill(1);
  let highest = 0;
  order.forEach((place, rank) => {
    highest = Math.max(highest, Math.min(1, at(ps, place) * (ps.length - rank)));
    adjusted[place] = highest;
  });
  return adjusted;
}
