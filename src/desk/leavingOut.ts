import { uncapitalised } from '../prose/words.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';
import type { EntryAnswers } from './exclusionEdits.ts';
import { exclusionFields } from './exclusionFields.ts';
import type { AnswerField } from './answerFields.ts';
import { controlName, type Submitted } from './submittedAnswers.ts';
import { rowsOf, type ShotsAtDesk } from './shotsAtDesk.ts';

/** What a form that leaves out shots comes to: entries to write, or what of it is still open. */
export type LeavingOut =
  | { readonly kind: 'entries'; readonly entries: readonly EntryAnswers[] }
  | {
      readonly kind: 'open';
      readonly sentence: string;
      /** By the name of the field. */
      readonly problems: ReadonlyMap<string, readonly Problem[]>;
    };

/** What is asked once for all shots that are ticked: the rule and the reason. */
export const leaveOutFields = (shots: ShotsAtDesk): readonly AnswerField[] =>
  exclusionFields('shot', { answer: undefined, path: ['shots'] }, shots).filter(({ path }) =>
    ['rule', 'reason'].includes(String(path.at(-1))),
  );

/** Reads such a form; two shots that one entry names need it once. */
export function leavingOut(shots: ShotsAtDesk, submitted: Submitted): LeavingOut {
  const fields = leaveOutFields(shots);
  const typed = fields.map((field) => (submitted[controlName(field)]?.[0] ?? '').trim());
  const problems = new Map(
    fields.flatMap((field, index) =>
      typed[index] === '' ? [[field.name, [unanswered(field)]] as const] : [],
    ),
  );
  const open = (sentence: string): LeavingOut => ({ kind: 'open', sentence, problems });
  const keys = new Set(submitted['shot'] ?? []);
  const rows = rowsOf(shots).filter(
    ({ key, leftOut, onlyMarked }) => keys.has(key) && (leftOut === null || onlyMarked),
  );
  const addresses = new Map(rows.map(({ key, address }) => [key, address]));
  if (keys.size === 0) return open('Tick the shots that are to be left out. Nothing was written.');
  if (addresses.size < keys.size)
    return open('A shot that you ticked is not there any more, or is left out by now. Nothing was written.');
  if (problems.size > 0)
    return open('Say by which rule they are left out, and what happened. Nothing was written.');
  const why = Object.fromEntries(fields.map(({ path }, index) => [String(path.at(-1)), typed[index] ?? '']));
  return { kind: 'entries', entries: [...addresses.values()].map((address) => ({ ...address, ...why })) };
}

const unanswered = ({ label }: AnswerField): Problem =>
  makeProblem(
    'key-missing',
    { file: '' },
    { expected: uncapitalised(label), found: null, cure: 'Write it here.' },
  );
