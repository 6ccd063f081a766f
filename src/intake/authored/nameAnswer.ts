import { answer, typed } from './answers.ts';
import { hiddenIn, isEmptyToTheEye } from './hiddenCharacters.ts';
import { foreignLetterIn } from './lookAlikes.ts';
import { given, invalid, refused, understood, type Schema, type Understood } from './trouble.ts';

interface NameAnswer {
  readonly what: string;
  /** Most characters; as many as one likes where it is left out. */
  readonly longest?: number;
}

/** A name that readers see, as text in which every character shows what it is. */
export function nameOf({ what, longest }: NameAnswer): Schema<string> {
  const short = longest !== undefined;
  const expected = short ? `${what} of ${longest} characters at most` : what;
  const read = (name: string): Understood<string> => {
    const hidden = hiddenIn(name);
    if (hidden !== null || isEmptyToTheEye(name)) {
      const seen = `${what} in characters that can be seen`;
      const cure = 'Type it anew; such characters come along when text is copied from elsewhere.';
      return refused({
        ...invalid([], seen, hidden ?? 'nothing that can be seen', cure),
        kind: 'control-character',
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
    const cure = 'Shorten it; it is used in charts where the label is too long.';
    return short && [...name].length > longest
      ? refused(invalid([], expected, name, cure))
      : understood(name);
  };
  return answer(
    typed.min(1).transform((name, context) => given(read(name), context)),
    { expected, cure: `Write ${what} as text after the colon.` },
    short ? `text of ${longest} characters at most` : 'text',
  ).describe(what);
}
