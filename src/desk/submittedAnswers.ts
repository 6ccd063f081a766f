import type { AnswerEdit } from '../intake/edits/answerEdit.ts';
import type { AnswerField } from './answerFields.ts';

/** A form as it was sent: the texts under each name. */
export type Submitted = Readonly<Record<string, readonly string[]>>;

/** The name of the control that asks for an answer; other controls of the form have no dot in theirs. */
export const controlName = ({ name }: Pick<AnswerField, 'name'>): string => `answer.${name}`;

/** An answer that was changed in a form. */
export interface ChangedAnswer {
  readonly field: AnswerField;
  /** As it was sent: several, one, or none where it was taken back. */
  readonly typed: readonly string[];
}

/** The answers of a form that are not what the file says; a control that was not sent counts as left alone. */
export function changedAnswers(
  fields: readonly AnswerField[],
  submitted: Submitted,
): readonly ChangedAnswer[] {
  return fields.flatMap((field) => {
    const sent = submitted[controlName(field)];
    if (sent === undefined) return [];
    const typed = sent.map(plain).filter((text) => text !== '');
    return sameAnswers(typed, field.typed) ? [] : [{ field, typed }];
  });
}

/** Controls of one line send none of the line breaks that a text in a file may have. */
const plain = (text: string): string => text.replace(/\r\n?/g, '\n').trim();

/** Whether two answers are the same but for blanks around them and the spelling of line breaks. */
export const sameAnswers = (one: readonly string[], other: readonly string[]): boolean =>
  one.length === other.length && one.every((text, index) => text === plain(other[index] ?? ''));

/** The same as edits of the file. */
export const editsOf = (changed: readonly ChangedAnswer[]): readonly AnswerEdit[] =>
  changed.map(({ field: { path }, typed }) => ({
    path,
    to: typed.length > 1 ? typed : (typed[0] ?? ''),
  }));

/** The narrative of a form, in the line breaks of this code; null where the form has none. */
export const submittedNarrative = (submitted: Submitted): string | null =>
  submitted['narrative']?.[0]?.replace(/\r\n?/g, '\n') ?? null;
