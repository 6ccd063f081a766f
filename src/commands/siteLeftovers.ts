import { existsSync, readdirSync, renameSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { ownFiles } from '../site/folderDecision.ts';
import { isRunning } from './isRunning.ts';
import { takeAway } from './takeAway.ts';

/** A folder beside the site in which a build has the new or the old one for a moment. */
export function workName(outDir: string, which: 'new' | 'old', pid = process.pid): string {
  return join(dirname(outDir), `.${basename(outDir)}.straightface-${which}-${pid}`);
}

/**
 * Puts back the site that a build killed between its two renames has left aside, and takes away what killed builds left
 * beside it. Only folders with our mark are touched, and in them only files that a build wrote.
 */
export function tidyBeside(outDir: string, projectFolder: string): void {
  if (!existsSync(dirname(outDir))) return;
  const name = `.${basename(outDir)}.straightface-`;
  for (const entry of readdirSync(dirname(outDir)).toSorted()) {
    const [, which, pid] = entry.startsWith(name)
      ? (/^(new|old)-(\d+)$/.exec(entry.slice(name.length)) ?? [])
      : [];
    if (pid === undefined || (Number(pid) !== process.pid && isRunning(Number(pid)))) continue;
    const folder = join(dirname(outDir), entry);
    const own = ownFiles(folder, projectFolder);
    if (own === null || own === 'damaged') continue;
    if (which === 'old' && !existsSync(outDir)) renameSync(folder, outDir);
    else takeAway(folder, own.paths);
  }
}
