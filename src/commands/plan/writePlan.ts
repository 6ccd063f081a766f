import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { emptyLedger, type Ledger, type RecordedPlan } from '../../intake/ledger.ts';
import type { Problem } from '../../problems/problem.ts';
import { openContentFolder } from '../../site/contentFiles.ts';
import { ledgerFile, ledgerJson, ledgerOf } from '../../site/ledger.ts';
import type { Disk } from '../writing/disk.ts';
import { writeEditorSchemas } from '../writing/editorSchemas.ts';
import { removeQuietly } from '../writing/ownNames.ts';
import { prepareReplacement, type Prepared } from '../writing/wholeFile.ts';
import { FolderTaken, prepareFolder } from '../writing/wholeFolder.ts';

/** What became of a plan; the ledger may have become unreadable since the command began. */
type PlanWritten = 'written' | 'taken' | { readonly ledgerProblems: readonly Problem[] };

/**
 * Puts the plan into the ledger as it is by now, and a new folder `reports/<slug>/` with the files beside the others.
 * Both are written and synced aside before either is put in its place, and nothing is left where the disk refuses. The
 * ledger comes first: a plan killed between the two is on record, and is whole once it is written again. Only who holds
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
  const folder = join(contentDir, 'reports', plan.slug);
  if (existsSync(folder)) return 'taken';
  const { ledger, problems } = ledgerOf(openContentFolder(contentDir));
  if (problems.some(({ severity }) => severity === 'error')) return { ledgerProblems: problems };
  const file = join(contentDir, ledgerFile);
  const prepared: Prepared[] = [];
  const prepare = (each: Prepared): Prepared => {
    prepared.push(each);
    return each;
  };
  try {
    const report = prepare(prepareFolder(disk, folder, files));
    const longer = prepare(prepareReplacement(disk, file, ledgerJson(withPlan(ledger ?? emptyLedger, plan))));
    // Prepared as well: a full disk has no room for it later.
    const asBefore = ledger === null ? null : prepare(prepareReplacement(disk, file, readFileSync(file)));
    longer.put();
    try {
      report.put();
    } catch (error) {
      if (asBefore === null) removeQuietly(disk, file);
      else asBefore.put();
      throw error;
    }
  } catch (error) {
    if (error instanceof FolderTaken) return 'taken';
    throw error;
  } finally {
    for (const { discard } of prepared) discard();
  }
  writeEditorSchemas(contentDir, disk);
  return 'written';
}

function withPlan(ledger: Ledger, plan: RecordedPlan): Ledger {
  const known = ledger.plans.some(({ slug, hash }) => slug === plan.slug && hash === plan.hash);
  return known ? ledger : { ...ledger, plans: [...ledger.plans, plan] };
}
