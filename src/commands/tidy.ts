import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { cacheFolder } from '../site/folders.ts';
import { pruneCache } from '../site/reportCache.ts';
import type { SiteContent } from '../site/siteContent.ts';
import { tidyBeside } from './siteLeftovers.ts';
import type { Terminal } from './terminal.ts';
import { removeLeftBehind } from './workFolders.ts';

const day = 24 * 60 * 60 * 1000;

/**
 * What no build has used is deleted from the caches once it is so old, milliseconds. Pictures
 * stay longer: a report that is as it was does not ask for its pictures, and they outlive changes of the code.
 */
const keptFor = { reports: 7 * day, finished: 90 * day };

interface Before {
  readonly outDir: string;
  readonly projectFolder: string;
  readonly terminal: Terminal;
}

/** Puts right what killed builds have left, before a build. */
export function tidyBefore({ outDir, projectFolder, terminal }: Before): void {
  tidying(terminal, () => tidyBeside(outDir, projectFolder));
  tidying(terminal, () => removeLeftBehind(join(projectFolder, '.cache'), Date.now()));
}

/** Deletes what has grown old in the caches, after a build. */
export function tidyAfter({ reports }: SiteContent, terminal: Terminal): void {
  const keys = new Set(reports.flatMap(({ key }) => key ?? []));
  const before = (age: number): Date => new Date(Date.now() - age);
  tidying(terminal, () => pruneCache(join(cacheFolder(), 'reports'), keys, before(keptFor.reports)));
  for (const name of ['rasters', 'sites'])
    tidying(terminal, () => pruneCache(join(cacheFolder(), name), new Set(), before(keptFor.finished)));
  // Copies of pages and editions, which earlier versions kept.
  for (const name of ['astro', 'pages.list', 'editions'])
    tidying(terminal, () => rmSync(join(cacheFolder(), name), { recursive: true, force: true }));
}

/** What cannot be tidied is said, and hinders no build. */
function tidying(terminal: Terminal, work: () => void): void {
  try {
    work();
  } catch (error) {
    const what = error instanceof Error ? error.message : String(error);
    terminal.writeError(`What an earlier build left could not be tidied: ${what}\n`);
  }
}
