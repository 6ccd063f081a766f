import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { diskTrouble } from '../site/diskTrouble.ts';
import { cacheMarkName, decideCache, decideOut } from '../site/folderDecision.ts';
import { cacheFolder, outFolder } from '../site/folders.ts';
import type { FolderDecision, Places } from '../site/places.ts';
import { projectPathTrouble } from '../site/projectPath.ts';
import type { Terminal } from './terminal.ts';

/** Folders that a command may write into, links followed. */
export interface OpenFolders {
  readonly outDir: string;
  readonly cacheDir: string;
}

interface Asked {
  readonly contentDir: string;
  readonly outDir?: string;
  readonly projectFolder: string;
  readonly terminal: Terminal;
}

/** The folders for a build, the cache made ready; null where one may not be written into, which is then said. */
export function openFolders({
  contentDir,
  outDir,
  projectFolder,
  terminal,
}: Required<Asked>): OpenFolders | null {
  const places = placesOf(contentDir, outDir, projectFolder);
  return opened(projectFolder, terminal, () => {
    const out = decideOut(places);
    tellRefusal(out, terminal);
    // What is wrong with the one is often wrong with the other too, and is then said once.
    if (out.kind === 'refused') return null;
    const cache = decideCache(places);
    tellRefusal(cache, terminal);
    if (cache.kind === 'refused') return null;
    markCache(cache.folder);
    return { outDir: out.folder, cacheDir: cache.folder };
  });
}

/** The cache folder of a command that builds no site, made ready; null as above. */
export function openCache({ contentDir, projectFolder, terminal }: Asked): string | null {
  const places = placesOf(contentDir, outFolder(), projectFolder);
  return opened(projectFolder, terminal, () => {
    const cache = decideCache(places);
    tellRefusal(cache, terminal);
    if (cache.kind === 'refused') return null;
    markCache(cache.folder);
    return cache.folder;
  });
}

const placesOf = (contentDir: string, outDir: string, projectFolder: string): Places => ({
  contentDir,
  outDir,
  cacheDir: cacheFolder(),
  projectFolder,
  home: homedir(),
  workingFolder: process.cwd(),
});

function opened<Opened>(projectFolder: string, terminal: Terminal, open: () => Opened | null): Opened | null {
  const misplaced = projectPathTrouble(projectFolder);
  if (misplaced !== null) {
    terminal.writeError(`${misplaced}\n`);
    return null;
  }
  try {
    return open();
  } catch (error) {
    const trouble = diskTrouble(error);
    if (trouble === null) throw error;
    terminal.writeError(`${trouble}\nNothing was written.\n`);
    return null;
  }
}

function tellRefusal(decision: FolderDecision, terminal: Terminal): void {
  if (decision.kind === 'refused') terminal.writeError(`${decision.sentence}\nNothing was written.\n`);
}

const markSentence =
  'A cache of Straightface. All that it made here may be deleted at any time and is then worked out anew.\n';

function markCache(folder: string): void {
  mkdirSync(folder, { recursive: true });
  const mark = join(folder, cacheMarkName);
  if (!existsSync(mark)) writeFileSync(mark, markSentence);
}
