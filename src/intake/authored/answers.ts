import { asFound } from './tree.ts';
import { code, type Takes } from './takes.ts';
import { refused, unanswered, schemaOf, understood, type Schema, type Understood } from './trouble.ts';
import { nearest } from './nearest.ts';

/**
 * One answer typed as text, read by `read`, which gives null for what it cannot use.
 * `expected` is printed for a missing answer too; `cure` says what to write instead; `takes`, in Markdown where it is
 * words alone, what it may be.
 */
export function answer<T>(
  expected: string,
  read: (text: string) => T | null,
  cure: string,
  takes: string | Takes,
): Schema<T> {
  return schemaOf(typeof takes === 'string' ? { words: takes } : takes, (typed): Understood<T> => {
    if (typed === undefined || typed === null || typed === '') {
      return unanswered(expected);
    }
    const value = typeof typed === 'string' ? read(typed.trim()) : null;
    return value === null
      ? refused({ kind: 'value-invalid', path: [], expected, found: asFound(typed), cure })
      : understood(value);
  });
}

/** Free text, as typed. `what` names it: "the question in one sentence". */
export function text(what: string): Schema<string> {
  const written = answer(what, (typed) => typed || null, `Write ${what} as text after the colon.`, 'text');
  return written.describe(what);
}

/** Text in which a number is not left without its unit: "21" could be either of two temperatures. */
export function withUnit(what: string, example: string): Schema<string> {
  return answer(
    `${what} with its unit, such as ${example}`,
    (typed) => (typed === '' || /^[+\-−]?[\d.,]+$/u.test(typed) ? null : typed),
    'Write the unit after the number.',
    `text; a number with its unit, such as ${code(example)}`,
  ).describe(what);
}

/** One of a few words. */
export function oneOf<const Word extends string>(words: readonly [Word, ...Word[]]): Schema<Word> {
  const listed = inWords(words);
  const spelled = (typed: string): Word | null => words.find((word) => word === typed.toLowerCase()) ?? null;
  return schemaOf({ words: inWords(words.map(code)), choices: words }, (typed): Understood<Word> => {
    if (typed === undefined || typed === '') {
      return unanswered(listed);
    }
    const value = typeof typed === 'string' ? spelled(typed.trim()) : null;
    if (value !== null) return understood(value);
    const near = typeof typed === 'string' ? nearest(typed, words) : null;
    const cure = near === null ? `Write ${listed}.` : `Did you mean "${near}"?`;
    return refused({ kind: 'value-invalid', path: [], expected: listed, found: asFound(typed), cure });
  });
}

/** "a, b or c". */
export function inWords(words: readonly string[], last = 'or'): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;
}

const meansYes = new Set(['yes', 'true']);
const meansNo = new Set(['no', 'false']);

/** Yes or no; "not recorded" is the same as no answer at all and is left out by whoever asks. */
export const yesOrNo: Schema<boolean> = answer(
  'yes or no',
  (typed) => (meansYes.has(typed.toLowerCase()) ? true : meansNo.has(typed.toLowerCase()) ? false : null),
  'Write yes or no; leave the line out when it was not recorded.',
  { words: '`yes` or `no`', choices: ['yes', 'no'] },
);

/** A day of the calendar, ISO 8601. */
export const isoDate: Schema<string> = answer(
  'a date as year-month-day, such as 2026-04-11',
  (typed) => (isRealDate(typed) ? typed : null),
  'Write the date as year-month-day with two digits for month and day; the day must exist.',
  { words: 'a day, such as `2026-04-11`', control: 'day' },
);

export function isRealDate(typed: string): boolean {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(typed);
  if (parts === null) return false;
  const [year, month, day] = [Number(parts[1]), Number(parts[2]), Number(parts[3])];
  const date = new Date(Date.UTC(year, month - 1, day));
  // 30 February would roll over into March; years before 1900 are typing slips.
  return year >= 1900 && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
}

/** A whole number from 1. */
export function counted(what: string): Schema<number> {
  return answer(
    what,
    (typed) => (/^[1-9]\d{0,5}$/.test(typed) ? Number(typed) : null),
    'Write a whole number in digits.',
    'a whole number from 1',
  ).describe(what);
}

/** A number of zero or more, with a decimal point. */
export function amount(what: string): Schema<number> {
  return answer(
    what,
    (typed) => (/^\d{1,9}(\.\d{1,4})?$/.test(typed) ? Number(typed) : null),
    'Write digits with a decimal point where needed, without a currency sign and without commas.',
    'a number, such as `149.5`',
  ).describe(what);
}
