import { hash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { hashOf } from '../../site/cacheKey.ts';
import { markAsUsed } from '../../site/markAsUsed.ts';
import { readSealed, writeSealed } from '../../site/sealed.ts';
import { filesBelow } from '../../site/siteMark.ts';
import { newWorkFolder, removeWorkFolder } from '../workFolders.ts';
import type { SiteAddress } from '../siteAddress.ts';
import type { Compilation } from './compilePages.ts';

/** Pages as code that renders them, and what every site has beside them. */
export interface CompiledPages {
  /** File of the shape of `pagesEntry.ts`. */
  readonly entry: string;
  readonly staticFolder: string;
}

export interface PagesToCompile {
  readonly projectFolder: string;
  readonly address: SiteAddress;
  /** Hash of all that they are made of, see `codeHashes`. */
  readonly code: string;
}

/** What nobody has used for so long, milliseconds, is deleted. */
const keptFor = 7 * 24 * 60 * 60 * 1000;

const listName = 'files.sealed';
const listed = z.object({ entry: z.string(), files: z.record(z.string(), z.string()) });

/** See `compilePages`. */
type Compile = (compilation: Compilation) => Promise<void>;

/** The same for the same pages: the same code, libraries and address, in the same place, which they name. */
export function pagesKey({ projectFolder, code, address }: PagesToCompile): string {
  return hashOf([code, address, projectFolder, process.env['SPECIMENS'] ?? null]);
}

/**
 * The pages of this code for a site of this address, compiled where they have not been yet. They lie inside the project,
 * since from there they find their packages, and are believed only where every file has the bytes that were compiled.
 */
export async function compiledPages(wanted: PagesToCompile, compile: Compile): Promise<CompiledPages> {
  const { projectFolder, address } = wanted;
  const key = pagesKey(wanted);
  const all = join(projectFolder, '.cache/pages');
  const folder = join(all, key);
  const known = wholePages(folder, key);
  if (known !== null) {
    markAsUsed(join(folder, listName));
    return known;
  }
  const work = newWorkFolder(join(projectFolder, '.cache'));
  try {
    await compile({ projectFolder, address, folder: work });
    rmSync(join(work, 'framework'), { recursive: true, force: true });
    writeList(work, key);
    mkdirSync(all, { recursive: true });
    deleteOld(all, Date.now() - keptFor);
    // Another build may have compiled them meanwhile, and be rendering with them.
    const theirs = wholePages(folder, key);
    if (theirs !== null) return theirs;
    rmSync(folder, { recursive: true, force: true });
    renameSync(work, folder);
  } finally {
    removeWorkFolder(work);
  }
  const made = wholePages(folder, key);
  if (made === null) throw new Error(`The compiled pages in ${folder} are not what was written there.`);
  return made;
}

function writeList(folder: string, key: string): void {
  const files = Object.fromEntries(filesBelow(folder).map((path) => [path, sha256Of(join(folder, path))]));
  const entry = readdirSync(join(folder, 'code')).find((name) => name.startsWith('prerender-entry'));
  const list: z.infer<typeof listed> = { entry: `code/${entry ?? ''}`, files };
  writeSealed(join(folder, listName), key, new TextEncoder().encode(JSON.stringify(list)));
}

/** Null for pages that are missing or not byte for byte what was compiled. */
function wholePages(folder: string, key: string): CompiledPages | null {
  const sealed = readSealed(join(folder, listName), key);
  if (sealed === null) return null;
  const { entry, files } = listed.parse(JSON.parse(new TextDecoder().decode(sealed)));
  const isWhole = Object.entries(files).every(([path, sha256]) => {
    const file = join(folder, path);
    return existsSync(file) && sha256Of(file) === sha256;
  });
  return isWhole ? { entry: join(folder, entry), staticFolder: join(folder, 'static') } : null;
}

const sha256Of = (file: string): string => hash('sha256', readFileSync(file), 'hex');

function deleteOld(folder: string, before: number): void {
  for (const name of readdirSync(folder)) {
    const list = statSync(join(folder, name, listName), { throwIfNoEntry: false });
    if (list === undefined || list.mtimeMs < before)
      rmSync(join(folder, name), { recursive: true, force: true });
  }
}
