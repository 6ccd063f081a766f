import type { AnswerField } from './answerFields.ts';
import { readEntry } from './entryForm.ts';
import { notYet } from './notYet.ts';
import type { Submitted } from './submittedAnswers.ts';

/** As `readEntry`, of an entry that tells of a day, which must have come. */
export function readDatedEntry(
  fields: readonly AnswerField[],
  submitted: Submitted,
  today: string,
): ReturnType<typeof readEntry> {
  const read = readEntry(fields, submitted);
  const early = 'sentence' in read ? null : notYet(read.entry['date'], today);
  return early === null ? read : { sentence: early };
}
