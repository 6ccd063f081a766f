import type { Block } from '../intake/authored/tree.ts';
import type { AnswerEdit } from '../intake/edits/answerEdit.ts';
import { changedAnswers, editsOf, type Submitted } from './submittedAnswers.ts';
import { furtherEntries, noneLeftOut, withoutEntry } from './exclusionEdits.ts';
import { exclusionFields, kindOfEntry } from './exclusionFields.ts';
import { leavingOut, type LeavingOut } from './leavingOut.ts';
import { limitAsked } from './limitAsked.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';
import { refusedWith, type PartChange } from './reportPart.ts';
import { rowsOf, shotsAtDesk, type ShotsAtDesk } from './shotsAtDesk.ts';

/** What a form of the shots asks for. */
export function shotChange(report: ReportAtDesk, submitted: Submitted): PartChange {
  const { tree } = report;
  if (tree === null)
    return refusedWith('The answers of this report cannot be read, so nothing can be left out here.');
  const shots = shotsAtDesk(report);
  const takenBack = submitted['take-back']?.[0];
  if (takenBack !== undefined) return edited(withoutEntry(tree, placeIn(takenBack)), 'taken-back');
  const misread = submitted['misread']?.[0];
  if (misread !== undefined) return withoutMisread(tree, shots, misread);
  switch (submitted['do']?.[0]) {
    case 'see-shots':
      return seen(leavingOut(shots, submitted));
    case 'leave-out':
      return leftOut(tree, leavingOut(shots, submitted), 'left-out');
    case 'see-limit':
      return seen(limitAsked(shots, submitted));
    case 'set-limit':
      return leftOut(tree, limitAsked(shots, submitted), 'limit');
    case 'change':
      return changedEntry(shots, submitted);
    case 'none':
      return shots.entries.length > 0
        ? refusedWith('Something is left out, as the list says. Take that back in first.')
        : edited(noneLeftOut(tree), 'none');
    default:
      return refusedWith('That form asked for nothing. Nothing was written.');
  }
}

const seen = (asked: LeavingOut): PartChange =>
  asked.kind === 'open' ? refusedWith(asked.sentence) : { kind: 'shown' };

const leftOut = (tree: Block, asked: LeavingOut, done: string): PartChange =>
  asked.kind === 'open'
    ? refusedWith(asked.sentence)
    : { kind: 'edits', edits: furtherEntries(tree, asked.entries), done };

const edited = (edit: AnswerEdit | null, done: string): PartChange =>
  edit === null
    ? refusedWith('That is not in the list any more. Nothing was written.')
    : { kind: 'edits', edits: [edit], done };

/** A place counted from 0; one that no list has for what is no number. */
const placeIn = (typed: string): number => (/^\d{1,6}$/.test(typed) ? Number(typed) : -1);

function withoutMisread(tree: Block, shots: ShotsAtDesk, key: string): PartChange {
  const row = rowsOf(shots).find((one) => one.key === key);
  if (row === undefined || row.misread === null)
    return refusedWith('That shot is not there any more, or is left out by now. Nothing was written.');
  const { rule, reason } = row.misread;
  return {
    kind: 'edits',
    edits: furtherEntries(tree, [{ ...row.address, rule, reason }]),
    done: 'left-out',
  };
}

function changedEntry(shots: ShotsAtDesk, submitted: Submitted): PartChange {
  const index = placeIn(submitted['entry']?.[0] ?? '');
  const entry = shots.entries[index];
  if (entry === undefined) return edited(null, '');
  const fields = exclusionFields(
    kindOfEntry(entry.typed),
    { answer: entry.typed, path: ['exclusions', index] },
    shots,
  );
  // An answer that is taken back leaves no line behind.
  const edits = editsOf(changedAnswers(fields, submitted)).map((edit) =>
    edit.to === '' ? { ...edit, to: null } : edit,
  );
  return { kind: 'edits', edits, done: edits.length === 0 ? 'unchanged' : 'changed' };
}
