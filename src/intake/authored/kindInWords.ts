import { text } from './answers.ts';
import { strict } from './strict.ts';
import type { Schema } from './trouble.ts';

/** What there was, by its kind; `words` is the line as written, or stands for it. */
export interface KindInWords<Kind extends string> {
  readonly kind: Kind;
  readonly words: string;
}

/** A block in place of a line, for those who want it exact. @param unsaid stands for a kind without words */
export function kindInWords<Kind extends string>(
  kind: Schema<Kind>,
  words: string,
  unsaid: Readonly<Record<Kind, string>>,
): Schema<KindInWords<Kind>> {
  // Both keys are as they were in camel case, which the compiler cannot see of a kind that it does not know.
  const block = strict({ kind, words: text(words).exactOptional() }) as Schema<
    Pick<KindInWords<Kind>, 'kind'> & Partial<KindInWords<Kind>>
  >;
  return block.transform((read) => ({ kind: read.kind, words: read.words ?? unsaid[read.kind] }));
}
