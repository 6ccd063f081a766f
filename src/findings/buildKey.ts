import type { Contender } from '../intake/authored/contender.ts';
import type { Front } from '../intake/authored/front.ts';
import type { Sheet } from '../intake/authored/sheet.ts';

/** What lay on the tee or in the hand is a condition of a test, not a part of what was built. */
const conditions = new Set(['ball', 'ball_model', 'ball_state', 'tee', 'glove', 'notes']);

/**
 * Everything recorded about how a contender was built, its own sheet and what was held the same, in one order: two
 * reports hit the same build only where these are equal letter by letter. Null without a sheet of its own, since then
 * nothing shows that they did.
 */
export function buildKey(
  { build = {} }: Contender,
  { held, varied }: Pick<Front, 'held' | 'varied'>,
): string | null {
  const own = entries(build);
  if (own.length === 0) return null;
  return JSON.stringify([varied, own, entries(held).filter(([item]) => !conditions.has(item))]);
}

function entries({ also = {}, ...known }: Sheet): readonly (readonly [string, string])[] {
  return [
    ...Object.entries(known),
    ...Object.entries(also).map(([item, value]) => [`also ${item}`, value] as const),
  ]
    .flatMap(([item, value]) => (typeof value === 'string' ? [[item, value.trim()] as const] : []))
    .toSorted(([x], [y]) => (x < y ? -1 : 1));
}
