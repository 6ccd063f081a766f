import { z } from 'zod';
import type { ProblemKind } from '../../problems/kinds.ts';

/** What an answer may be, for whoever writes it: the reference in `content/README.md` is made of these. */
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

/** What is said where an answer is missing or cannot be used. */
export interface Sayings {
  /** Of the problem with an answer that cannot be used, where that has a kind of its own. */
  readonly kind?: ProblemKind;
  readonly expected: string;
  /** What to do about an answer that cannot be used; a missing one is added to its block. */
  readonly cure: string | ((typed: unknown) => string);
}

/** What a schema says of its answer beside what zod knows of it. */
interface Told {
  readonly takes?: Takes;
  readonly sayings?: Sayings;
  /** What is said of a key that a block does not know; `near` is the one that was probably meant. */
  readonly unknownKey?: (
    key: string,
    near: string | null,
  ) => { readonly expected: string; readonly cure: string };
  /** What was expected where there is no answer and several forms of it would do. */
  readonly ifMissing?: string;
  /** What the answer is made of, where it is read by a function. */
  readonly structure?: z.ZodType;
  /** The question as a draft of a report puts it, at its top. */
  readonly drafted?: string;
  /** What an editor holds the answer to, in JSON Schema, beside or in place of what zod makes of it. */
  readonly inEditor?: Readonly<Record<string, unknown>>;
}

/** Not a registry of zod, whose types go through all that is registered: schemas hold schemas here. */
const told = new WeakMap<z.core.$ZodType, Told>();

/** The schema, with what it says of its answer; what was said before stays where nothing is said anew. */
export function telling<S extends z.ZodType>(schema: S, more: Told): S {
  told.set(schema, { ...told.get(schema), ...more });
  return schema;
}

/** What a schema itself says of its answer, also one that `describe` has copied. */
export function toldBy(schema: z.core.$ZodType): Told {
  const { parent } = schema._zod;
  return { ...(parent === undefined ? {} : toldBy(parent)), ...told.get(schema) };
}

/** A schema and what it wraps, from without to within, as far as it is one answer. */
export function layersOf(schema: z.core.$ZodType): readonly z.core.$ZodType[] {
  const inner = wrappedIn(schema);
  return inner === null ? [schema] : [schema, ...layersOf(inner)];
}

function wrappedIn(schema: z.core.$ZodType): z.core.$ZodType | null {
  const { structure } = toldBy(schema);
  if (structure !== undefined) return structure;
  if (schema instanceof z.ZodExactOptional) return schema.unwrap();
  if (!(schema instanceof z.ZodPipe)) return null;
  return schema.in instanceof z.ZodTransform ? schema.out : schema.in;
}

/** The first thing that a schema, or one that it wraps, says. */
export function firstTold<K extends keyof Told>(schema: z.core.$ZodType, key: K): Told[K] | undefined {
  return layersOf(schema)
    .map((layer) => toldBy(layer)[key])
    .find((said) => said !== undefined);
}

/** What a schema takes; of an optional one, what the answer takes if there is one. */
export function takesOf(schema: z.core.$ZodType): Takes {
  const takes = firstTold(schema, 'takes');
  if (takes === undefined) throw new Error('A schema of authored answers does not say what it takes.');
  return takes;
}

/** What an answer means, in words; null where the schema does not say. */
export function meaningOf(schema: z.core.$ZodType): string | null {
  const descriptions = layersOf(schema).map((layer) => z.globalRegistry.get(layer)?.description);
  return descriptions.find((description) => description !== undefined) ?? null;
}

/** Words of an answer as YAML, for Markdown. */
export const code = (typed: string): string => `\`${typed}\``;
