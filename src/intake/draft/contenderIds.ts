import { createHash } from 'node:crypto';
import { foldedName } from '../contenderNames.ts';
import { freeSlug, shortSlug, slugOf } from './slugOf.ts';

/**
 * An id for each name, plain enough for addresses. No id is spelled like the name of another: in a session file it
 * would stand for both.
 */
export function contenderIds(names: readonly string[]): readonly string[] {
  const folded = names.map(foldedName);
  const taken = new Set<string>();
  return names.map((name, index) => {
    const ofAnother = (slug: string): boolean =>
      folded.some((other, position) => position !== index && other === slug);
    const id = freeSlug(shortSlug(name) || 'contender', (slug) => taken.has(slug) || ofAnother(slug));
    taken.add(id);
    return id;
  });
}

/** Room for a report's name in an id of 40 characters. */
const longestReport = 24;

/**
 * Ids for hitters, which must not give away a name. They are made of the report's: an id that two drafts shared by
 * accident would make one golfer of two.
 */
export function hitterIds(names: readonly string[], report: string): readonly string[] {
  const folded = new Set(names.map(foldedName));
  const taken = new Set<string>();
  const count = Math.max(names.length, 1);
  const own = slugOf(report);
  const short = createHash('sha256').update(report).digest('hex').slice(0, 8);
  const from = own !== '' && own.length <= longestReport ? own : short;
  return Array.from({ length: count }, (_, index) => {
    const wanted = `golfer-${from}${count === 1 ? '' : `-${index + 1}`}`;
    const id = freeSlug(wanted, (slug) => taken.has(slug) || folded.has(slug));
    taken.add(id);
    return id;
  });
}
