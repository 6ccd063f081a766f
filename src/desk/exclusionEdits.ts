import { isList, type Answer, type AnswerEdit } from '../intake/edits/answerEdit.ts';
import type { Block, Tree } from '../intake/authored/tree.ts';

/** The answers of one entry under `exclusions`, each as it is written. */
export type EntryAnswers = Readonly<Record<string, string>>;

/** The edits that write further entries behind those of the report; words in their place make way for a list. */
export function furtherEntries(tree: Block, entries: readonly EntryAnswers[]): readonly AnswerEdit[] {
  const present = entriesOf(tree);
  if (entries.length === 0) return [];
  return present.length === 0
    ? [wholeAnswer(tree, entries)]
    : entries.map((to, index) => ({ path: ['exclusions', present.length + index], to }));
}

/** The edit that says that nothing was left out. */
export const noneLeftOut = (tree: Block): AnswerEdit => wholeAnswer(tree, 'none');

/** The edit that takes an entry out; null where there is none at that place. */
export function withoutEntry(tree: Block, index: number): AnswerEdit | null {
  return entriesOf(tree)[index] === undefined ? null : { path: ['exclusions', index], to: null };
}

const entriesOf = ({ exclusions }: Block): readonly Tree[] =>
  Array.isArray(exclusions) ? (exclusions as readonly Tree[]) : [];

/** Answers after which it stands, where the file has no line for it yet. */
const before: readonly string[] = ['conditions', 'hitters', 'order_sheet', 'session'];

function wholeAnswer(tree: Block, to: Answer): AnswerEdit {
  const after = before.find((key) => Object.hasOwn(tree, key));
  return { path: ['exclusions'], to: isList(to) ? [...to] : to, ...(after === undefined ? {} : { after }) };
}
