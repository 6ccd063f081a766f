import { readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { clubName } from '../../intake/assembleSession.ts';
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
  const newNames = neutralNames(
    paths.filter((path) => !isThere(path)).map((path) => basename(path)),
    files.map(({ name, bytes }) => readShotFile(name, bytes, options)),
    taken,
  ).names.values();
  const placed = files.map(({ bytes }, index): NamedBytes => {
    const path = paths[index] ?? '';
    return { name: isThere(path) ? basename(path) : (newNames.next().value ?? ''), bytes };
  });
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

/**
 * Puts the files into the folder of the plan, and the new texts in the place of the old; the files are taken out again
 * where the disk refuses. Null: done.
 */
export function writePlanned(
  contentDir: string,
  slug: string,
  files: readonly NamedBytes[],
  texts: Readonly<Record<string, string>>,
): { readonly failed: string } | null {
  const folder = join(contentDir, 'reports', slug);
  const there = new Set(readdirSync(folder));
  const written: string[] = [];
  try {
    for (const { name, bytes } of files.filter((file) => !there.has(file.name))) {
      written.push(name);
      writeFileSync(join(folder, name), bytes, { flag: 'wx' });
    }
    // Whoever reads a file meanwhile sees the old text or the new one, never half of it.
    for (const [name, text] of Object.entries(texts)) writeFileSync(join(folder, `${name}.new`), text);
    for (const name of Object.keys(texts)) renameSync(join(folder, `${name}.new`), join(folder, name));
  } catch (error) {
    for (const name of [...written, ...Object.keys(texts).map((own) => `${own}.new`)])
      rmSync(join(folder, name), { force: true });
    return { failed: error instanceof Error ? error.message : String(error) };
  }
  return null;
}
