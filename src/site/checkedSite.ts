import type { Problem } from '../problems/problem.ts';
import { acrossReports } from './acrossReports.ts';
import { composedNames } from './composedNames.ts';
import { openContentFolder } from './contentFiles.ts';
import { examineReport } from './examineReport.ts';
import { ledgerOf } from './ledger.ts';
import { readContent } from './contentList.ts';
import { withoutSeen } from './seenWarnings.ts';

/** What is wrong with a content folder. */
interface CheckedSite {
  /** How many reports were looked at. */
  readonly reports: number;
  readonly problems: readonly Problem[];
  /** Files in the inbox. */
  readonly waiting: readonly string[];
}

/** Finds the problems that a build would, without drawing anything; `only` keeps to some reports, `today` is ISO 8601. */
export function checkedSite(
  root: string,
  only: readonly string[] = [],
  today: string | null = null,
): CheckedSite {
  const folder = composedNames(openContentFolder(root));
  const content = readContent(folder, only);
  const { ledger, problems: ledgerProblems } = ledgerOf(folder);
  const sources = content.reports.flatMap(({ source }) => (source === null ? [] : [source]));
  return {
    reports: content.reports.length,
    problems: withoutSeen(
      [
        ...content.problems,
        ...ledgerProblems,
        ...content.reports.flatMap((written) => examineReport(written, ledger).problems),
        ...acrossReports(sources, {
          folders: content.folders,
          ledger: only.length === 0 ? ledger : null,
          today,
        }),
      ],
      sources,
    ),
    waiting: content.waiting,
  };
}
