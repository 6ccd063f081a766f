/** An answer as typed: text, a list, or answers under keys. Empty text is a key without an answer. */
export type Answer = string | readonly Answer[] | { readonly [key: string]: Answer };

/** One answer that is written into a file, changed in it or taken out of it. */
export interface AnswerEdit {
  /** From the top of the answers down: keys, and places in lists counted from 0; the place after the last adds an entry. */
  readonly path: readonly (string | number)[];
  /** Null takes the key or the entry out. */
  readonly to: Answer | null;
  /** A key that is not there yet stands after this one instead of last. */
  readonly after?: string;
}

export const isList = (answer: Answer): answer is readonly Answer[] => Array.isArray(answer);
