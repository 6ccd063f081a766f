/** Seeded uniform numbers in [0, 1): Mulberry32, good enough to invent shots and the same everywhere. */
export function uniform(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** Seeded normal numbers of mean 0 and standard deviation 1, by Box and Muller. */
export function normal(next: () => number): () => number {
  return () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
}

/** The items in a random order (Fisher and Yates). */
export function shuffled<Item>(items: readonly Item[], next: () => number): Item[] {
  const mixed = [...items];
  for (let last = mixed.length - 1; last > 0; last--) {
    const pick = Math.floor(next() * (last + 1));
    const [here, there] = [mixed[last], mixed[pick]];
    if (here !== undefined && there !== undefined) [mixed[last], mixed[pick]] = [there, here];
  }
  return mixed;
}
