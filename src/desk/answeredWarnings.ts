import type { SeenWarning } from '../intake/authored/seen.ts';
import { isUnanswered } from '../intake/authored/tree.ts';
import type { AnswerEdit } from '../intake/edits/answerEdit.ts';
import type { Problem } from '../problems/problem.ts';
import { isMeant } from '../site/seenWarnings.ts';
import { placeOfNext, withoutEntry } from './entriesIn.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';
import type { Submitted } from './submittedAnswers.ts';
import { isOf } from './unansweredProblems.ts';

/** Whether a problem can be answered as read: a warning about the report itself. */
export const canBeAnswered = ({ slug }: Pick<ReportAtDesk, 'slug'>, problem: Problem): boolean =>
  problem.severity === 'warning' && isOf(slug, problem);

/** The entry that keeps a warning quiet and as few others as can be: what it found, or what it is about. */
export function answerTo({ kind, found, columnName }: Problem, problems: readonly Problem[]): SeenWarning {
  const named: readonly SeenWarning[] = [found, columnName].flatMap((about) =>
    about === null || isUnanswered(about) ? [] : [{ warning: kind, about: about.trim() }],
  );
  const meant = (entry: SeenWarning): number => problems.filter((problem) => isMeant(entry, problem)).length;
  const [best = { warning: kind }] = named.toSorted((one, other) => meant(one) - meant(other));
  return best;
}

/** What the button of a warning sends. */
export const answeringWord = ({ warning, about }: SeenWarning): string =>
  about === undefined ? `seen ${warning}` : `seen ${warning} ${about}`;

/** What the button of an answered warning sends. */
export const askingWord = (at: number): string => `ask ${at}`;

/** What the buttons of warnings ask for: edits, or a sentence why there is nothing to write; null where none was pressed. */
export function warningEdits(
  report: ReportAtDesk,
  submitted: Submitted,
):
  { readonly edits: readonly AnswerEdit[]; readonly sentence: string } | { readonly refused: string } | null {
  // A line break in what was found is sent as two characters.
  const word = (submitted['do']?.[0] ?? '').replace(/\r\n?/g, '\n');
  const asked = /^ask (\d{1,6})$/.exec(word)?.[1];
  if (asked !== undefined) {
    const at = Number(asked);
    if (at >= placeOfNext(report, 'seen')) return { refused: 'There is no such warning any more.' };
    return {
      edits: [withoutEntry(report, 'seen', at)],
      sentence: 'Saved. The warning is told again where it holds.',
    };
  }
  if (!word.startsWith('seen ')) return null;
  const entry = report.problems
    .filter((problem) => canBeAnswered(report, problem))
    .map((problem) => answerTo(problem, report.problems))
    .find((each) => answeringWord(each).replace(/\r\n?/g, '\n') === word);
  if (entry === undefined) return { refused: 'There is no such warning any more.' };
  return {
    edits: [{ path: ['seen', placeOfNext(report, 'seen')], to: { ...entry } }],
    sentence: 'Saved. This warning stays quiet as long as it says the same.',
  };
}
