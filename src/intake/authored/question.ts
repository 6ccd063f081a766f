import type { z } from 'zod';

interface Words {
  readonly words: string;
}

interface YesOrNo {
  readonly yesOrNo: string;
}

/** What becomes of an answer beside being printed; what is not said does not come about. */
interface Uses<Answer> {
  /** What `findings.json` says that it holds, under the same key in camel case: words, or yes or no. */
  readonly published?: Answer extends string ? Words : Answer extends boolean ? YesOrNo : never;
  /** That it is read for praise and other words to be careful with. */
  readonly readForPraise?: Answer extends string ? true : never;
  /** That `shop.yaml` may give it under `defaults`, for every report that does not say otherwise. */
  readonly inDefaults?: true;
}

type Use = keyof Uses<unknown>;

interface Asked<Schema> {
  /** How it is answered, and what that means. */
  readonly answer: Schema;
  /** As a draft puts it; null: a draft does not ask it. */
  readonly drafted: string | null;
}

/**
 * One question of a block, with what becomes of its answer as far as its block has that: a table of them is what the
 * schema and the draft are made of, and the published data and the linter.
 */
export type Question<Has extends Use = Use> = Asked<z.ZodType> & {
  readonly [Each in Use]?: Each extends Has ? Uses<string | boolean>[Each] : never;
};

export type Questions<Has extends Use = Use> = Readonly<Record<string, Question<Has>>>;

/** A question that must be answered. */
export function required<Schema extends z.ZodType>(answer: Schema, drafted: string | null): Asked<Schema> {
  return { answer, drafted };
}

/** A question that need not be answered: what is absent was not recorded. */
export function question<Schema extends z.ZodType>(
  answer: Schema,
  drafted: string | null,
): Asked<z.ZodExactOptional<Schema>>;
export function question<Schema extends z.ZodType, const Told extends Uses<z.output<Schema>>>(
  answer: Schema,
  drafted: string | null,
  uses: Told,
): Asked<z.ZodExactOptional<Schema>> & Told;
export function question(answer: z.ZodType, drafted: string | null, uses = {}) {
  return { answer: answer.exactOptional(), drafted, ...uses };
}

type Answers<Q extends Readonly<Record<string, { readonly answer: z.ZodType }>>> = {
  readonly [Key in keyof Q]: Q[Key]['answer'];
};

/** How each question of a table is answered: the shape of a block. */
export function answersOf<const Q extends Readonly<Record<string, { readonly answer: z.ZodType }>>>(
  questions: Q,
): Answers<Q> {
  // The type says of each question what the loop takes from it.
  return Object.fromEntries(
    Object.entries(questions).map(([key, { answer }]) => [key, answer]),
  ) as Answers<Q>;
}

/** The keys of a table in its order. */
export function keysOf<Key extends string>(table: Readonly<Record<Key, unknown>>): readonly Key[] {
  return Object.keys(table) as Key[];
}
