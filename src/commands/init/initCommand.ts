import { existsSync, readFileSync } from 'node:fs';
import { basename, dirname, join, relative, resolve, sep } from 'node:path';
import { draftShop } from '../../intake/draft/draftShop.ts';
import { systemCode } from '../../problems/systemWords.ts';
import { visible } from '../../problems/visible.ts';
import { version } from '../../site/version.ts';
import { programFolder } from '../ownCode.ts';
import type { Terminal } from '../terminal.ts';
import { withContentLock } from '../writing/contentLock.ts';
import { realDisk, type Disk } from '../writing/disk.ts';
import { writeEditorSchemas } from '../writing/editorSchemas.ts';
import { notWritten } from '../writing/notWritten.ts';
import { tidyLeftovers } from '../writing/ownNames.ts';
import { prepareNewFile } from '../writing/wholeFile.ts';
import { packageName, shopPackage, shopScripts } from './shopPackage.ts';
import { shopIgnores, shopReadme } from './shopReadme.ts';

interface InitRequest {
  /** Absolute. */
  readonly folder: string;
  /** As it was typed. */
  readonly named: string;
  /** Where the shop gets the package from, as npm takes it; null for this version of it. */
  readonly from: string | null;
  readonly terminal: Terminal;
  readonly disk?: Disk;
}

/**
 * Writes all that a shop begins with into a folder. A file that stands there stays as it is, and is told. Gives the exit
 * status.
 */
export function initCommand({ folder, named, from, terminal, disk = realDisk }: InitRequest): 0 | 1 {
  const contentDir = join(folder, 'content');
  const wanted = from === null ? version : packageFrom(from, folder);
  const files = Object.entries(shopFiles(basename(folder), wanted));
  try {
    const stood = withContentLock(contentDir, disk, () => {
      for (const place of new Set(files.map(([path]) => dirname(join(folder, path)))))
        tidyLeftovers(place, disk, Date.now());
      const left = files.filter(([path, text]) => !written(disk, join(folder, path), text));
      writeEditorSchemas(contentDir, disk);
      return left.map(([path]) => path);
    });
    for (const [path] of files)
      terminal.write(`${path}${stood.includes(path) ? ': stands there already, and stays as it is' : ''}\n`);
    terminal.write('\nNext:\n');
    for (const step of nextSteps(named, stood, wanted)) terminal.write(`  ${visible(step)}\n`);
    return 0;
  } catch (error) {
    terminal.writeError(`${notWritten(folder, error)} What stands there already was not touched.\n`);
    return 1;
  }
}

/** The files by their path. */
function shopFiles(name: string, wanted: string): Readonly<Record<string, string>> {
  const workflow = '.github/workflows/reports.yml';
  const guide = 'content/README.md';
  return {
    'content/shop.yaml': draftShop(),
    [guide]: readFileSync(join(programFolder, guide), 'utf8'),
    'package.json': shopPackage(packageName(name), wanted),
    [workflow]: readFileSync(join(programFolder, workflow), 'utf8'),
    '.gitignore': shopIgnores,
    'README.md': shopReadme,
  };
}

/** Writes a new file; false where something of its name stands there. */
function written(disk: Disk, file: string, text: string): boolean {
  disk.mkdirSync(dirname(file), { recursive: true });
  const prepared = prepareNewFile(disk, file, text);
  try {
    prepared.put();
    return true;
  } catch (error) {
    if (systemCode(error) === 'EEXIST') return false;
    throw error;
  } finally {
    prepared.discard();
  }
}

/** A file is meant from where it was typed, and npm looks for it from the folder of the shop. */
function packageFrom(typed: string, folder: string): string {
  if (!existsSync(typed)) return typed;
  const path = relative(folder, resolve(typed)).replaceAll(sep, '/');
  return `file:${path.startsWith('.') ? path : `./${path}`}`;
}

function nextSteps(named: string, stood: readonly string[], wanted: string): readonly string[] {
  const scripts = Object.entries(shopScripts).map(([name, script]) => `scripts.${name}="${script}"`);
  return [
    ...(resolve(named) === resolve('.') ? [] : [`cd ${named}`]),
    // npm writes it itself, and keeps all else.
    ...(stood.includes('package.json')
      ? [`npm pkg set dependencies.straightface="${wanted}" ${scripts.join(' ')}`]
      : []),
    'npm install',
    'npm start     opens the desk in a browser; or write your name into content/shop.yaml, and run npm run check',
  ];
}
