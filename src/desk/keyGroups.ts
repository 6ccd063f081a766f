import type { z } from 'zod';
import { takesOf } from '../intake/authored/takes.ts';

/** Keys of a file that a form asks together, under a heading. */
interface KeyGroup {
  readonly id: string;
  readonly heading: string;
  readonly keys: readonly string[];
}

/**
 * The groups, with every key of the file in one: those that none names are asked last in the first.
 *
 * @param elsewhere keys that the form does not ask
 */
export function keyGroups(
  schema: z.ZodType,
  [first, ...others]: readonly [KeyGroup, ...KeyGroup[]],
  elsewhere: readonly string[],
): readonly KeyGroup[] {
  const placed = new Set([...elsewhere, ...[first, ...others].flatMap(({ keys }) => keys)]);
  const all = (takesOf(schema).inside ?? []).map(([step]) => step.slice(1));
  return [{ ...first, keys: [...first.keys, ...all.filter((key) => !placed.has(key))] }, ...others];
}
