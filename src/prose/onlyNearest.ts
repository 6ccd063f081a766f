import { distance } from 'fastest-levenshtein';

const digitsIn = (word: string): string => word.replace(/\D/g, '');

/**
 * The one word that a mistyped one can only stand for: a letter or two away from it, more in long words, with the same
 * digits, and no other as near. Null where there is none: a wrong guess would be another figure.
 */
export function onlyNearest(typed: string, known: readonly string[]): string | null {
  const word = typed.toLowerCase().slice(0, 100);
  const most = word.length < 5 ? 1 : word.length < 9 ? 2 : 3;
  const near = known
    .filter((candidate) => digitsIn(candidate) === digitsIn(word))
    .map((candidate) => ({ candidate, steps: distance(word, candidate.toLowerCase()) }))
    .filter(({ steps }) => steps <= most);
  const least = Math.min(...near.map(({ steps }) => steps));
  const best = near.filter(({ steps }) => steps === least);
  return best.length === 1 ? (best[0]?.candidate ?? null) : null;
}
