import type { z } from 'zod';
import { answerTo, camel, type Camel } from '../intake/authored/camelKeys.ts';
import type { Questions } from '../intake/authored/question.ts';
import { said, yesOrNo } from './publishedWords.ts';

type Published<Q extends Questions> = {
  readonly [
    Key in keyof Q as Q[Key] extends { readonly published: object } ? Camel<Key & string> : never
  ]: Q[Key] extends { readonly published: { readonly words: string } }
    ? ReturnType<typeof said>
    : ReturnType<typeof yesOrNo>;
};

/** How `findings.json` holds what is published of a block as it was answered: the shape of an object of zod. */
export function publishedShape<const Q extends Questions>(questions: Q): Published<Q> {
  const fields = Object.entries(questions).flatMap(([key, { published }]) =>
    published === undefined
      ? []
      : [[camel(key), 'words' in published ? said(published.words) : yesOrNo(published.yesOrNo)] as const],
  );
  // The type says of each question what the loop makes of it.
  return Object.fromEntries(fields) as Published<Q>;
}

/** The answers as they are published; null is what was not recorded. */
export function publishedAnswers<const Q extends Questions>(
  questions: Q,
  answers: object,
): { readonly [Key in keyof Published<Q>]: z.infer<Published<Q>[Key]> } {
  const values = Object.entries(questions).flatMap(([key, { published }]) =>
    published === undefined ? [] : [[camel(key), answerTo(answers, key) ?? null] as const],
  );
  // As above; that an answer is of its type is for its schema to see.
  return Object.fromEntries(values) as ReturnType<typeof publishedAnswers<Q>>;
}
