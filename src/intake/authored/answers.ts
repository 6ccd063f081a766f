import { z } from 'zod';
import { nearest } from './nearest.ts';
import { code, telling, type Sayings, type Takes } from './takes.ts';
import type { Schema } from './trouble.ts';

/** Text as typed, without blanks around it. */
export const typed = z.string().min(1).trim();

/**
 * One answer typed as text: what is said where it is missing or cannot be used, in Markdown what it may be, and what an
 * editor holds it to beside what zod makes of the schema.
 */
export function answer<T>(
  schema: Schema<T>,
  sayings: Sayings,
  takes: string | Takes,
  inEditor: Readonly<Record<string, unknown>> = {},
): Schema<T> {
  return telling(schema, { sayings, takes: typeof takes === 'string' ? { words: takes } : takes, inEditor });
}

/** What `read` makes of a text; null is what it cannot use. */
export function meaning<T>(read: (text: string) => T | null): Schema<T> {
  return typed.transform((text, context): T => {
    const value = read(text);
    if (value !== null) return value;
    context.addIssue({ code: 'custom' });
    return z.NEVER;
  });
}

/** Free text, as typed. `what` names it: "the question in one sentence". */
export function text(what: string): Schema<string> {
  const cure = `Write ${what} as text after the colon.`;
  return answer(typed.min(1), { expected: what, cure }, 'text').describe(what);
}

/** Text in which a number is not left without its unit: "21" could be either of two temperatures. */
export function withUnit(what: string, example: string): Schema<string> {
  return answer(
    typed.min(1).regex(/^(?![+\-−]?[\d.,]+$)/u),
    {
      expected: `${what} with its unit, such as ${example}`,
      cure: 'Write the unit after the number.',
    },
    `text; a number with its unit, such as ${code(example)}`,
    { type: 'string', examples: [example] },
  ).describe(what);
}

/** One of a few words, in any casing. */
export function oneOf<const Word extends string>(words: readonly [Word, ...Word[]]): Schema<Word> {
  const plain = (answer: unknown): unknown =>
    typeof answer === 'string' ? answer.trim().toLowerCase() : answer;
  const listed = inWords(words);
  const cure = (answer: unknown): string => {
    const near = typeof answer === 'string' ? nearest(answer, words) : null;
    return near === null ? `Write ${listed}.` : `Did you mean "${near}"?`;
  };
  const takes = { words: inWords(words.map(code)), choices: words };
  return answer(z.preprocess(plain, z.enum(words)), { expected: listed, cure }, takes);
}

/** "a, b or c". */
export function inWords(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
}

/** Yes or no; "not recorded" is the same as no answer at all and is left out by whoever asks. */
export const yesOrNo = answer(
  typed.pipe(z.stringbool({ truthy: ['yes', 'true'], falsy: ['no', 'false'] })),
  { expected: 'yes or no', cure: 'Write yes or no; leave the line out when it was not recorded.' },
  { words: '`yes` or `no`', choices: ['yes', 'no'] },
  {
    type: undefined,
    minLength: undefined,
    anyOf: [
      { enum: ['yes', 'no', true, false] },
      { type: 'string', pattern: '^\\s*([Yy][Ee][Ss]|[Nn][Oo]|[Tt][Rr][Uu][Ee]|[Ff][Aa][Ll][Ss][Ee])\\s*$' },
    ],
  },
);

/** A day of the calendar, ISO 8601. */
export const isoDate = answer(
  typed
    .regex(/^\d{4}-\d{2}-\d{2}$/)
    .refine(isRealDate)
    .meta({ format: 'date' }),
  {
    expected: 'a date as year-month-day, such as 2026-04-11',
    cure: 'Write the date as year-month-day with two digits for month and day; the day must exist.',
  },
  { words: 'a day, such as `2026-04-11`', control: 'day' },
  { type: 'string', format: 'date' },
);

export function isRealDate(day: string): boolean {
  // Years before 1900 are typing slips.
  return z.iso.date().safeParse(day).success && day >= '1900';
}

/** A whole number from 1. */
export function counted(what: string): Schema<number> {
  return answer(
    typed.regex(/^[1-9]\d{0,5}$/).transform(Number),
    { expected: what, cure: 'Write a whole number in digits.' },
    'a whole number from 1',
    { type: ['integer', 'string'], minimum: 1 },
  ).describe(what);
}

/** A number of zero or more, with a decimal point. */
export function amount(what: string): Schema<number> {
  return answer(
    typed.regex(/^\d{1,9}(\.\d{1,4})?$/).transform(Number),
    {
      expected: what,
      cure: 'Write digits with a decimal point where needed, without a currency sign and without commas.',
    },
    'a number, such as `149.5`',
    { type: ['number', 'string'], minimum: 0, examples: [149.5] },
  ).describe(what);
}
