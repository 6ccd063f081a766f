import { readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { clubName } from '../../intake/placedRows.ts';
import { contenderMatcher } from '../../intake/contenderNames.ts';
import { fromFileName } from '../../intake/draft/fileName.ts';
import { openColumns } from '../../intake/draft/openColumns.ts';
import { understand, type Understood } from '../../intake/draft/understood.ts';
import { withSession, type FilledDraft } from '../../intake/draft/withSession.ts';
import { countedBySheet } from '../../intake/plan/countedBySheet.ts';
import { readShotFile } from '../../intake/shots/readShotFile.ts';
import type { ShotFile } from '../../intake/shots/shotFile.ts';
import type { Problem } from '../../problems/problem.ts';
import { neutralNames } from './neutralNames.ts';
import type { PlanAtHand } from './openPlans.ts';
import type { NamedBytes } from './readSession.ts';

/** Session files read for a planned test; nothing is written yet. */
export interface PlannedSession {
  /** Under the names they get, or have, beside the report. */
  readonly files: readonly NamedBytes[];
  readonly shotFiles: readonly ShotFile[];
  readonly understood: Understood;
  readonly problems: readonly Problem[];
  /** What was hit is told by the files themselves, by the order sheet, or not yet. */
  readonly toldBy: 'files' | 'sheet' | 'nobody';
  /** The new text of `report.md` and what was filled in; null where the files must be mended first, or no line
   * of it can be filled. */
  readonly report: FilledDraft | null;
  readonly mustBeMended: boolean;
}

/** Reads session files as those of a planned test. `paths` tell which of them lie in its folder already. */
export function readPlanned(
  contentDir: string,
  { plan, sheet, options }: PlanAtHand,
  paths: readonly string[],
  files: readonly NamedBytes[],
): PlannedSession {
  const folder = join(contentDir, 'reports', plan.slug);
  const isThere = (path: string): boolean => resolve(dirname(path)) === resolve(folder);
  const taken = readdirSync(folder);
  const asGiven = files.map(({ name, bytes }) => readShotFile(name, bytes, options));
  const wanted = neutralNames(
    paths.map((path) => basename(path)),
    asGiven,
  ).names;
  // A draft that was killed may have put a file here before.
  const nameThere = files.map(({ bytes }, index): string | null => {
    const path = paths[index] ?? '';
    if (isThere(path)) return basename(path);
    const name = wanted[index] ?? '';
    return taken.includes(name) && readFileSync(join(folder, name)).equals(bytes) ? name : null;
  });
  const newNames = neutralNames(
    paths.filter((_, index) => nameThere[index] === null).map((path) => basename(path)),
    asGiven,
    taken,
  ).names.values();
  const placed = files.map(({ bytes }, index): NamedBytes => ({
    name: nameThere[index] ?? newNames.next().value ?? '',
    bytes,
  }));
  const shotFiles = placed.map(({ name, bytes }) => readShotFile(name, bytes, options));
  const open = openColumns(shotFiles.flatMap(({ problems }) => problems));
  const contenderOf = contenderMatcher(plan.contenders);
  const namesAll = shotFiles.every(({ rows, file }) =>
    rows.every((row) => row.warmUp || contenderOf(clubName(row, file)) !== null),
  );
  const counted = sheet === null ? null : countedBySheet(shotFiles, sheet, contenderOf, plan.inHitOrder);
  const fits = counted !== null && counted.fits;
  const understood = understand(counted?.shotFiles ?? shotFiles);
  return {
    files: placed,
    shotFiles,
    understood,
    problems: [
      ...shotFiles
        .flatMap(({ problems }) => problems)
        .filter(({ kind }) => counted === null || kind !== 'club-column-missing'),
      ...(namesAll && !fits ? [] : (counted?.problems ?? [])),
    ],
    toldBy: namesAll ? 'files' : fits ? 'sheet' : 'nobody',
    mustBeMended: open === null,
    report:
      open === null
        ? null
        : withSession(`reports/${plan.slug}/report.md`, plan.text, {
            session: placed.map(({ name }) => name),
            understood,
            dateInName: placed.flatMap(({ name }) => fromFileName(name).date ?? [])[0] ?? null,
            openColumns: open,
            withoutSheet: namesAll && !fits,
          }),
  };
}
