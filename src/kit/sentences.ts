/** A text's sentences. A full stop before a lower-case word or a figure ends none. */
export function sentencesOf(text: string): readonly string[] {
  return text
    .split(/(?<=[.!?])\s+(?=[\p{Lu}“"])/u)
    .map((one) => one.trim())
    .filter((one) => one !== '');
}

/** A sentence and how early it is let in; those with 0 are always in. */
export interface Ranked {
  readonly text: string;
  readonly rank: number;
}

/**
 * The sentences that fit `limit` characters together, in the order given, none twice: those of low rank are let in first, and a
 * sentence is in whole or not at all.
 */
export function fitSentences(ranked: readonly Ranked[], limit: number): string {
  const stated = ranked.filter(
    ({ text }, index) => text !== '' && ranked.findIndex((other) => other.text === text) === index,
  );
  const chosen = new Set(stated.filter(({ rank }) => rank === 0));
  const joined = (): string =>
    stated
      .filter((one) => chosen.has(one))
      .map(({ text }) => text)
      .join(' ');
  for (const one of stated.filter(({ rank }) => rank > 0).toSorted((x, y) => x.rank - y.rank)) {
    chosen.add(one);
    if (joined().length > limit) chosen.delete(one);
  }
  return joined();
}
