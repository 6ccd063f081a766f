import { openAnswers, type OpenAnswer } from '../intake/draft/openAnswers.ts';
import { understand } from '../intake/draft/understood.ts';
import { understoodLines, type UnderstoodLine } from '../intake/draft/understoodLines.ts';
import type { Problem } from '../problems/problem.ts';
import { composedNames } from './composedNames.ts';
import { openContentFolder } from './contentFiles.ts';
import { readShared } from './sharedFiles.ts';
import { readLooseSession, withLooseSheet } from './writtenReport.ts';

/** How far a draft is: what its files say, and what is still to be answered. */
export interface DraftState {
  readonly slug: string;
  readonly understood: readonly UnderstoodLine[];
  readonly open: readonly OpenAnswer[];
  /** What is wrong beyond answers that are not there yet. */
  readonly problems: readonly Problem[];
}

/** @param problems all that is known to be wrong with the report */
export function draftState(root: string, slug: string, problems: readonly Problem[]): DraftState {
  const folder = composedNames(openContentFolder(root));
  const file = `reports/${slug}/report.md`;
  const text = folder.text(file).content ?? '';
  const { shared } = readShared(folder);
  const open = openAnswers(file, text, shared);
  const asked = new Set(open.map(({ key }) => key));
  const isAsked = ({ kind, columnName }: Problem): boolean =>
    (kind === 'key-missing' || kind === 'interests-missing') && asked.has(columnName ?? '');
  return {
    slug,
    understood: understoodLines(
      understand(withLooseSheet(readLooseSession(folder, slug, text), { folder, slug, text, shared })),
    ),
    open,
    problems: problems.filter((problem) => !isAsked(problem)),
  };
}
