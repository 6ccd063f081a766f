import { hiddenIn, isEmptyToTheEye } from './hiddenCharacters.ts';
import { foreignLetterIn } from './lookAlikes.ts';
import { asFound } from './tree.ts';
import {
  invalid,
  refused,
  schemaOf,
  unanswered,
  understood,
  type Schema,
  type Understood,
} from './trouble.ts';

interface NameAnswer {
  readonly what: string;
  /** Most characters; as many as one likes where it is left out. */
  readonly longest?: number;
}

/** A name that readers see, as text in which every character shows what it is. */
export function nameOf({ what, longest = Infinity }: NameAnswer): Schema<string> {
  const short = Number.isFinite(longest);
  const expected = short ? `${what} of ${longest} characters at most` : what;
  const takes = short ? `text of ${longest} characters at most` : 'text';
  return schemaOf({ words: takes }, (typed): Understood<string> => {
    if (typed === undefined || typed === null || typed === '') return unanswered(expected);
    const name = typeof typed === 'string' ? typed.trim() : '';
    if (name === '')
      return refused(invalid([], expected, asFound(typed), `Write ${what} as text after the colon.`));
    const hidden = hiddenIn(name);
    if (hidden !== null || isEmptyToTheEye(name)) {
      return refused({
        kind: 'control-character',
        path: [],
        expected: `${what} in characters that can be seen`,
        found: hidden ?? 'nothing that can be seen',
        cure: 'Type it anew; such characters come along when text is copied from elsewhere.',
      });
    }
    const foreign = foreignLetterIn(name);
    if (foreign !== null) {
      const { letter, code, script, latin, word } = foreign;
      return refused(
        invalid(
          [],
          `${what} in letters that are what they look like`,
          `the ${script} letter ${letter} (${code}) in "${word}"`,
          `Type ${latin} on a Latin keyboard in its place, or write the whole word in ${script} letters.`,
        ),
      );
    }
    return [...name].length > longest
      ? refused(
          invalid(
            [],
            expected,
            asFound(typed),
            'Shorten it; it is used in charts where the label is too long.',
          ),
        )
      : understood(name);
  }).describe(what);
}
