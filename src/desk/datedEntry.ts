import type { AfterSection } from './afterSection.ts';
import type { AnswerField } from './answerFields.ts';
import { placeOfNext } from './entriesIn.ts';
import { readEntry } from './entryForm.ts';
import { notYet } from './notYet.ts';
import { refusedWith } from './reportPart.ts';
import { soundChange } from './soundChange.ts';
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

/** A list of the report to which entries are added. */
interface Adding {
  readonly key: string;
  readonly fields: readonly AnswerField[];
  /** The word for what was done. */
  readonly done: string;
}

/** What the button of a form does that adds such an entry to a list of the report. */
export const addingDated =
  ({ key, fields, done }: Adding): AfterSection['acts'][string] =>
  ({ report, submitted, today }) => {
    const read = readDatedEntry(fields, submitted, today);
    if ('sentence' in read) return refusedWith(read.sentence);
    const path = [key, placeOfNext(report, key)];
    return soundChange(report, { edits: [{ path, to: read.entry }], done });
  };
