import { z } from 'zod';
import { meaningOf, takesOf } from './takes.ts';

/** One key that a shop may write, as the reference in `content/README.md` tells of it. */
interface Field {
  /** From the block on: `label`, `price.amount`. */
  readonly key: string;
  /** Markdown. */
  readonly takes: string;
  /** Whether the block that it stands in is refused without it. */
  readonly required: boolean;
  /** Markdown. */
  readonly means: string;
}

/** The keys of one block, told together. */
export interface FieldBlock {
  /** The way from the top of the file, empty for the top itself: `contenders.<id>`, `exclusions[] (a limit)`. */
  readonly path: string;
  readonly fields: readonly Field[];
  /** The path of a block with the same keys that has been told before, in place of `fields`. */
  readonly like: string | null;
}

type Inside = readonly (readonly [step: string, schema: z.ZodType])[];

/**
 * All keys that a schema of authored answers knows, block by block. A block that has been told once, here or in
 * `told` (which is added to), is not told again.
 */
export function fieldBlocks(schema: z.ZodType, told: Map<Inside, string> = new Map()): readonly FieldBlock[] {
  return blocksAt('', takesOf(schema).inside ?? [], told);
}

function blocksAt(path: string, inside: Inside, told: Map<Inside, string>): readonly FieldBlock[] {
  const before = told.get(inside);
  if (before !== undefined) return [{ path, fields: [], like: before }];
  told.set(inside, path);
  const named = inside.filter(([step]) => step.startsWith('.') && !step.startsWith('.<'));
  const fields = named.map(([step, schema]): Field => ({
    key: step.slice(1),
    takes: takesOf(schema).words,
    required: !(schema instanceof z.ZodExactOptional),
    means: meaningOf(schema) ?? '',
  }));
  const below = inside.flatMap(([step, schema]) => {
    const further = takesOf(schema).inside;
    return further === undefined ? [] : blocksAt(`${path}${step}`.replace(/^\./, ''), further, told);
  });
  // A block under keys of the shop's choice, with one answer under each: there is nothing to be like.
  if (fields.length === 0 && below.length === 0) told.delete(inside);
  return fields.length === 0 ? below : [{ path, fields, like: null }, ...below];
}
