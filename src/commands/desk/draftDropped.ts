import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Drafted, DroppedFile } from '../../desk/deskWork.ts';
import { openContentFolder } from '../../site/contentFiles.ts';
import { waitingFiles } from '../../site/contentList.ts';
import { draftFiles } from '../draft/draftFiles.ts';
import { fileNames } from '../draft/fileNames.ts';
import { listeningTerminal } from './listeningTerminal.ts';

/** Drafts a report of files that came in by a form, by the code of `npm run draft`: it reads them from a disk. */
export function draftDropped(contentDir: string, files: readonly DroppedFile[]): Drafted {
  const aside = mkdtempSync(join(tmpdir(), 'straightface-desk-'));
  try {
    // The names of a form may be paths; these are not.
    const paths = fileNames(files.map(({ name }) => name)).map((name) => join(aside, name));
    for (const [index, { bytes }] of files.entries())
      writeFileSync(paths[index] ?? '', bytes, { flag: 'wx' });
    return draftPaths(contentDir, paths);
  } finally {
    rmSync(aside, { recursive: true, force: true });
  }
}

/** The same of files that wait in the inbox; a name that does not wait there is passed over. */
export function draftWaiting(contentDir: string, names: readonly string[]): Drafted {
  const waiting = waitingFiles(openContentFolder(contentDir)).filter((name) => names.includes(name));
  if (waiting.length === 0) return { slug: null, said: 'None of these files waits in the inbox any more.' };
  return draftPaths(
    contentDir,
    waiting.map((name) => join(contentDir, 'inbox', name)),
  );
}

function draftPaths(contentDir: string, paths: readonly string[]): Drafted {
  const { terminal, said } = listeningTerminal();
  const { slug } = draftFiles({
    contentDir,
    paths,
    slug: null,
    otherSlug: true,
    dryRun: false,
    json: false,
    terminal,
  });
  return { slug, said: said() };
}
