/**
 * Sum with the rounding errors carried along (Neumaier 1974, the improved Kahan-Babuska sum): about twice the
 * working precision, so that a long column keeps its last digits. Empty gives 0.
 */
export function compensatedSum(values: Iterable<number>): number {
  return compensatedSumOf(values, itself);
}

const itself = (value: number): number => value;

/** The same sum of what `term` makes of each entry, without a list of the terms. */
export function compensatedSumOf<Entry>(entries: Iterable<Entry>, term: (entry: Entry) => number): number {
  let sum = 0;
  let lost = 0;
  for (const entry of entries) {
    const value = term(entry);
    const next = sum + value;
    lost += Math.abs(sum) >= Math.abs(value) ? sum - next + value : value - next + sum;
    sum = next;
  }
  return sum + lost;
}
