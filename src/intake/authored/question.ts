import { z } from 'zod';

/**
 * One question of a block, with what becomes of its answer: a table of them is what the schema and the draft are made
 * of, and the published data and the linter as far as they are told below.
 */
interface DraftedOf<Answer> {
  /** How it is answered, and what that means. */
  readonly answer: z.ZodType<Answer>;
  /** As a draft puts it; null: a draft does not ask it. */
  readonly drafted: string | null;
}

interface PublishedOf<Answer> extends DraftedOf<Answer> {
  /**
   * What `findings.json` says that it holds, under the same key in camel case: words, or yes or no. Null: it does not
   * hold the answer as it was given.
   */
  readonly published: (Answer extends string ? Words : Answer extends boolean ? YesOrNo : never) | null;
}

interface ReadOf<Answer> extends PublishedOf<Answer> {
  /** Whether its answer is read for praise and other words to be careful with. */
  readonly readForPraise: Answer extends string ? boolean : false;
}

interface Words {
  readonly words: string;
}

interface YesOrNo {
  readonly yesOrNo: string;
}

export type DraftedQuestion = DraftedOf<unknown>;
export type PublishedQuestion = PublishedOf<string> | PublishedOf<boolean> | PublishedOf<unknown>;
export type Question = ReadOf<string> | ReadOf<boolean> | ReadOf<unknown>;

export type Questions = Readonly<Record<string, Question>>;

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
