import { foldedName } from '../contenderNames.ts';
import { freeSlug, slugOf } from './slugOf.ts';

/**
 * An id for each name, plain enough for addresses. No id is spelled like the name of another: in a session file it
 * would stand for both.
 */
export function contenderIds(names: readonly string[], fallback = 'contender'): readonly string[] {
  const folded = names.map(foldedName);
  const taken = new Set<string>();
  return names.map((name, index) => {
    const ofAnother = (slug: string): boolean =>
      folded.some((other, position) => position !== index && other === slug);
    const id = freeSlug(slugOf(name) || fallback, (slug) => taken.has(slug) || ofAnother(slug));
    taken.add(id);
    return id;
  });
}

const numbers = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** Ids for hitters, which must not give away a name. */
export function hitterIds(names: readonly string[]): readonly string[] {
  const folded = new Set(names.map(foldedName));
  const taken = new Set<string>();
  const count = Math.max(names.length, 1);
  return Array.from({ length: count }, (_, index) => {
    const wanted = numbers[index] ?? `golfer-${index + 1}`;
    const id = freeSlug(wanted, (slug) => taken.has(slug) || folded.has(slug));
    taken.add(id);
    return id;
  });
}
