import { answer, meaning } from './answers.ts';
import type { Schema } from './trouble.ts';

/** A licence by its short id, such as `CC-BY-4.0`, or by the address where its text stands. */
export type Licence = { readonly id: string } | { readonly address: string };

const shortId = /^[A-Za-z0-9][A-Za-z0-9.+-]*$/;

/** The licence under which others may use something. */
export function licence(what: string): Schema<Licence> {
  return answer(
    meaning((typed): Licence | null => {
      if (/^https?:\/\//i.test(typed)) return URL.canParse(typed) ? { address: typed } : null;
      return shortId.test(typed) ? { id: typed } : null;
    }),
    {
      expected: `${what}: the short id of a licence, such as CC-BY-4.0, or its web address`,
      cure: 'Write the short id of the licence without blanks, or the address of its text from https:// on; other words go under terms.',
    },
    "a licence's short id, such as `CC-BY-4.0`, or its web address",
  ).describe(what);
}
