/** Ranks from 1, equal values sharing the mean of theirs; `ties` lists the sizes of the ties (2 or more). */
export interface Midranks {
  readonly ranks: readonly number[];
  readonly ties: readonly number[];
}

export function midranks(values: readonly number[]): Midranks {
  const order = values.map((_, i) => i).toSorted((a, b) => (values[a] ?? 0) - (values[b] ?? 0));
  const ranks = new Array<number>(values.length).fill(0);
  const ties: number[] = [];
  for (let from = 0; from < order.length;) {
    let to = from + 1;
    while (to < order.length && values[order[to] ?? 0] === values[order[from] ?? 0]) to++;
    for (const place of order.slice(from, to)) ranks[place] = (from + 1 + to) / 2;
    if (to - from > 1) ties.push(to - from);
    from = to;
  }
  return { ranks, ties };
}
