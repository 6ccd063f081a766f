import type { AnswerEdit } from '../intake/edits/answerEdit.ts';
import { editReport } from '../intake/edits/editAnswers.ts';
import type { Problem } from '../problems/problem.ts';
import { problemText } from './problemText.ts';
import { errorsOf, type ReportAtDesk } from './reportAtDesk.ts';
import type { PartChange } from './reportPart.ts';

interface WantedChange {
  readonly edits: readonly AnswerEdit[];
  /** The word for what was done. */
  readonly done: string;
  /** Whether errors that stood there before are in the way as well, as where a report is published. */
  readonly publishes?: boolean;
}

/** A change of a report that brings no error with it; else the reason why it is not made. */
export function soundChange(
  report: ReportAtDesk,
  { edits, done, publishes = false }: WantedChange,
): PartChange {
  const edited = editReport(report.text, edits);
  if ('refused' in edited) return { kind: 'refused', sentence: `Nothing was written. ${edited.refused}` };
  const before = publishes ? new Set<string>() : new Set(errorsOf(report).map(nameOf));
  const then = report.withText(edited.text);
  const [first, ...more] = then === null ? [] : errorsOf(then).filter((error) => !before.has(nameOf(error)));
  if (first === undefined) return { kind: 'edits', edits, done };
  const others = more.length === 0 ? '' : ` So do ${more.length} more.`;
  return {
    kind: 'refused',
    sentence: `Nothing was written: something stands in the way. ${problemText(first)}${others}`,
  };
}

/** The same problem stands on another line once something was written above it. */
const nameOf = ({ kind, file, columnName, found }: Problem): string =>
  JSON.stringify([kind, file, columnName, found]);
