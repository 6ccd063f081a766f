import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { freeSlug } from '../../intake/draft/slugOf.ts';
import type { Shop } from '../../intake/authored/shop.ts';
import type { Decided } from '../../planning/decidePlan.ts';
import type { PlanAnswers } from '../../planning/planAnswers.ts';
import { plannedFiles, type PlanClock } from '../../planning/plannedFiles.ts';
import type { PlanRefusal } from '../../planning/planRecorded.ts';
import type { Disk } from '../writing/disk.ts';
import { writePlan } from './writePlan.ts';

interface ToBeRecorded {
  readonly contentDir: string;
  readonly answers: PlanAnswers;
  readonly decided: Decided;
  readonly shop: Shop | null;
  readonly clock: PlanClock;
  readonly disk: Disk;
  /** Works everything out and writes nothing. */
  readonly dryRun: boolean;
}

/**
 * Writes the folder of a plan that was decided and puts it on record. Only who holds the lock of the content folder may
 * do so.
 *
 * @returns the name of its report, or why there is none
 * @throws errors of the disk
 */
export function recordPlan(request: ToBeRecorded): { readonly slug: string } | PlanRefusal {
  const { contentDir, disk, dryRun } = request;
  const isTaken = (name: string): boolean => existsSync(join(contentDir, 'reports', name));
  const planned = plannedFiles({ ...request, isTaken });
  if (planned.kind !== 'files') return planned;
  const { plan, files } = planned;
  const { slug } = plan;
  if (dryRun) return { slug };
  const written = writePlan(contentDir, plan, files, disk);
  if (written === 'written') return { slug };
  return written === 'taken'
    ? { kind: 'name-taken', name: slug, free: freeSlug(slug, isTaken) }
    : { kind: 'ledger-unreadable', problems: written.ledgerProblems };
}
