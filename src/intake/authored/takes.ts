import { z } from 'zod';

/** What an answer may be, for whoever writes it: the reference in the README is made of these. */
export interface Takes {
  /** The kind of answer, or the answers allowed; Markdown. */
  readonly words: string;
  /** The answers inside it: how each is reached from here (`.label`, `.<id>`, `[]`), and its schema. */
  readonly inside?: readonly (readonly [step: string, schema: z.ZodType])[];
  /** What words may say, where they may stand in place of the answers inside; Markdown. */
  readonly inWords?: string;
  /** The answers allowed, where they are few: as they are typed. */
  readonly choices?: readonly string[];
  /** What a form asks with, where that is not a line of text: the calendar for a day. */
  readonly control?: 'day';
  /** The keys of a block in which every answer is text, each with the words for it. */
  readonly items?: Readonly<Record<string, string>>;
}

const noted = new WeakMap<z.core.$ZodType, Takes>();

/** The schema, with what it takes noted beside it. */
export function taking<S extends z.ZodType>(schema: S, takes: Takes): S {
  noted.set(schema, takes);
  return schema;
}

/** What a schema takes, also one that `describe` has copied; of an optional one, what the answer takes if there is one. */
export function takesOf(schema: z.core.$ZodType): Takes {
  const takes = noted.get(schema);
  if (takes !== undefined) return takes;
  const { parent } = schema._zod;
  if (parent !== undefined) return takesOf(parent);
  if (schema instanceof z.ZodExactOptional) return takesOf(schema.unwrap());
  throw new Error('A schema of authored answers does not say what it takes.');
}

/** What an answer means, in words; null where the schema does not say. */
export function meaningOf(schema: z.core.$ZodType): string | null {
  const description = z.globalRegistry.get(schema)?.description;
  if (description !== undefined) return description;
  return schema instanceof z.ZodExactOptional ? meaningOf(schema.unwrap()) : null;
}

/** Words of an answer as YAML, for Markdown. */
export const code = (typed: string): string => `\`${typed}\``;
