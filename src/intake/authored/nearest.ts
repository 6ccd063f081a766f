import { distance } from 'fastest-levenshtein';

const plain = (word: string): string =>
  word
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ')
    .trim();

/** The known word that a mistyped one most likely stands for, or null when none is near. */
export function nearest(word: string, known: readonly string[]): string | null {
  const typed = plain(word.slice(0, 100));
  let best: string | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const candidate of known) {
    const steps = distance(typed, plain(candidate));
    if (steps < least) [best, least] = [candidate, steps];
  }
  return least <= Math.max(1, Math.floor(typed.length * 0.4)) ? best : null;
}
