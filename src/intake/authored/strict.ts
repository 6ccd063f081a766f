import { z } from 'zod';
import { camel, type CamelKeys } from './camelKeys.ts';
import { telling, type Takes } from './takes.ts';
import { isBlock, isUnanswered } from './tree.ts';
import type { Schema } from './trouble.ts';

/**
 * A block of answers in which every key must be known. A key without an answer (`place:` and nothing more, or
 * `place: not recorded`) counts as not there; so does a block that need not be there and has no answer under any key.
 */
export function strict<Shape extends Readonly<Record<string, z.ZodType>>>(
  shape: Shape,
): Schema<CamelKeys<z.output<z.ZodObject<Shape, z.core.$strict>>>> {
  type Output = CamelKeys<z.output<z.ZodObject<Shape, z.core.$strict>>>;
  const takes: Takes = {
    words: 'the answers below',
    inside: Object.entries(shape).map(([key, schema]) => [`.${key}`, schema] as const),
  };
  const object = telling(z.strictObject(shape), {
    takes,
    sayings: {
      expected: `a block with the keys ${Object.keys(shape).join(', ')}`,
      cure: 'Write each answer under its key, on an indented line or in { }.',
    },
  });
  // The type says of the keys what `camel` does to them.
  return z.preprocess(answersTo(shape), object).transform((answers) => renamed(answers) as Output);
}

/** What is answered in a block; zod holds the rest against whoever typed it. */
export function answersTo(shape: object) {
  return (typed: unknown): unknown => {
    if (!isBlock(typed)) return typed;
    const answered = Object.entries(typed).filter(([key, value]) =>
      // A key without a colon has been reported as such by whoever read the YAML.
      Object.hasOwn(shape, key)
        ? !isUnanswered(value) && !isLeftOut(value, Object.entries(shape).find(([own]) => own === key)?.[1])
        : value !== null,
    );
    return Object.fromEntries(answered);
  };
}

/** A block that need not be there, and was emptied: what it needs where it is there is not asked. */
function isLeftOut(value: unknown, schema: unknown): boolean {
  if (!isBlock(value) || !(schema instanceof z.ZodExactOptional)) return false;
  const answers = Object.values(value);
  return answers.length > 0 && answers.every(isUnanswered);
}

function renamed(answers: object): object {
  return Object.fromEntries(Object.entries(answers).map(([key, value]) => [camel(key), value]));
}
