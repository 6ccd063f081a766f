import { join } from 'node:path';
import { emptyLedger, type RecordedPlan } from '../../intake/ledger.ts';
import type { Problem } from '../../problems/problem.ts';
import { openContentFolder } from '../../site/contentFiles.ts';
import { ledgerFile, ledgerJson, ledgerOf } from '../../site/ledger.ts';
import type { Disk } from '../writing/disk.ts';
import { removeQuietly } from '../writing/ownNames.ts';
import { prepareReplacement, type Prepared } from '../writing/wholeFile.ts';
import { FolderTaken, prepareFolder } from '../writing/wholeFolder.ts';

/** What became of a plan; the ledger may have become unreadable since the command began. */
export type PlanWritten = 'written' | 'taken' | { readonly ledgerProblems: readonly Problem[] };

/**
 * Writes a new folder `reports/<slug>/` with the files, and puts the plan into the ledger as it is by now. Both are
 * written and synced aside before either is put in its place; nothing is left where the disk refuses. Only who holds
 * the lock of the content folder may do so.
 *
 * @throws errors of the disk
 */
export function writePlan(
  contentDir: string,
  plan: RecordedPlan,
  files: Readonly<Record<string, string>>,
  disk: Disk,
): PlanWritten {
  const { ledger, problems } = ledgerOf(openContentFolder(contentDir));
  if (problems.some(({ severity }) => severity === 'error')) return { ledgerProblems: problems };
  const before = ledger ?? emptyLedger;
  const folder = join(contentDir, 'reports', plan.slug);
  const report = prepareFolder(disk, folder, files);
  try {
    const longer = prepareReplacement(
      disk,
      join(contentDir, ledgerFile),
      ledgerJson({ ...before, plans: [...before.plans, plan] }),
    );
    try {
      report.put();
      putOrTakeBack(longer, () => removeQuietly(disk, folder));
    } finally {
      longer.discard();
    }
  } catch (error) {
    if (error instanceof FolderTaken) return 'taken';
    throw error;
  } finally {
    report.discard();
  }
  return 'written';
}

function putOrTakeBack({ put }: Prepared, takeBack: () => void): void {
  try {
    put();
  } catch (error) {
    takeBack();
    throw error;
  }
}
