/** Irrational, so that its multiples fall everywhere between whole numbers. */
const goldenShare = (Math.sqrt(5) - 1) / 2;

/**
 * At most `most` of the items: the list cut into so many stretches, one of each. Its place within the stretch changes
 * from one to the next, lest contenders who take turns be met in step. All items where there are no more than `most`.
 */
export function evenlySpread<Item>(items: readonly Item[], most: number): readonly Item[] {
  if (items.length <= most) return items;
  const startOf = (stretch: number): number => Math.floor((stretch * items.length) / most);
  return Array.from({ length: most }, (_, stretch) => {
    const start = startOf(stretch);
    return start + Math.floor(((stretch * goldenShare) % 1) * (startOf(stretch + 1) - start));
  }).flatMap((place) => items.slice(place, place + 1));
}
