import { statSync } from 'node:fs';
import { join } from 'node:path';
import { contentVersion } from '../../intake/authored/shop.ts';
import { isUnanswered } from '../../intake/authored/tree.ts';
import { readYaml } from '../../intake/authored/yamlText.ts';
import { visible } from '../../problems/visible.ts';
import { openContentFolder, type ContentFolder } from '../../site/contentFiles.ts';
import { shopFile } from '../../site/sharedFiles.ts';
import { version as programVersion } from '../../site/version.ts';
import type { Terminal } from '../terminal.ts';
import { withContentLock } from '../writing/contentLock.ts';
import { realDisk, type Disk } from '../writing/disk.ts';
import { notWritten } from '../writing/notWritten.ts';
import { prepareReplacement } from '../writing/wholeFile.ts';
import { authoredTexts } from './authoredTexts.ts';
import { migrateTexts } from './migrateTexts.ts';
import { migrations, type Migration } from './migrations.ts';

interface MigrateRequest {
  readonly contentDir: string;
  readonly dryRun: boolean;
  readonly terminal: Terminal;
  readonly disk?: Disk;
  /** To another version than this program's, by other migrations: for tests. */
  readonly to?: number;
  readonly steps?: readonly Migration[];
}

/**
 * Brings a content folder along to the version that this program reads: all files or, where one cannot be edited, none.
 * Gives the exit status.
 */
export function migrateCommand(request: MigrateRequest): 0 | 1 {
  const { contentDir, terminal, to = contentVersion, steps = migrations } = request;
  const refuse = (sentence: string): 1 => {
    terminal.writeError(`${sentence}\nNothing was written.\n`);
    return 1;
  };
  if (statSync(contentDir, { throwIfNoEntry: false })?.isDirectory() !== true)
    return refuse(`There is no folder ${visible(contentDir)}.`);
  const from = versionOf(openContentFolder(contentDir));
  if (typeof from === 'string') return refuse(from);
  if (from > to) {
    return refuse(
      `${shopFile} says schema: ${from}, and Straightface ${programVersion} reads ${to}. ` +
        'Take a newer one: npm install with the newer package, or in a checkout of it git pull and npm ci. Its CHANGELOG.md says from which version on.',
    );
  }
  const due = steps.filter((step) => step.from >= from && step.from < to);
  if (due.length === 0) {
    terminal.write(
      `The content is of version ${to}, which this Straightface reads: nothing is to be done.\n`,
    );
    return 0;
  }
  try {
    return withContentLock(contentDir, request.disk ?? realDisk, () => migrate(request, due, refuse));
  } catch (error) {
    return refuse(notWritten(contentDir, error));
  }
}

/** The version that the shop's file states, 1 where it does not; a sentence where that cannot be told. */
function versionOf(folder: ContentFolder): number | string {
  const { content: text, problems } = folder.text(shopFile);
  if (text === null && problems.length === 0) return 1;
  const { tree } = text === null ? { tree: null } : readYaml(shopFile, text);
  if (tree === null) return `${shopFile} cannot be read: mend what npm run check reports first.`;
  const { schema } = tree;
  if (isUnanswered(schema)) return 1;
  return typeof schema === 'string' && /^[1-9]\d{0,5}$/.test(schema.trim())
    ? Number(schema)
    : `${shopFile} says schema: ${visible(String(schema))}, which is no version: write schema: ${contentVersion}.`;
}

function migrate(
  { contentDir, dryRun, terminal, disk = realDisk }: MigrateRequest,
  due: readonly Migration[],
  refuse: (sentence: string) => 1,
): 0 | 1 {
  const { texts, unread } = authoredTexts(openContentFolder(contentDir));
  const result = migrateTexts(texts, due);
  const refused = [...unread, ...(result.kind === 'refused' ? result.refused : [])];
  if (refused.length > 0 || result.kind === 'refused')
    return refuse(refused.map(({ path, why }) => visible(`${path}: ${why}`)).join('\n'));
  // The file with the version last: a migration that is stopped before is done once more.
  const { changed } = result;
  const prepared = dryRun
    ? []
    : changed.map(({ path, text }) => prepareReplacement(disk, join(contentDir, path), text));
  try {
    for (const { put } of prepared) put();
  } finally {
    for (const { discard } of prepared) discard();
  }
  for (const { path, encoding } of changed) {
    const recoded = encoding === 'UTF-8' ? '' : ` It was saved as ${encoding} and is UTF-8 now.`;
    const done = dryRun ? ' would be changed.' : ` was changed.${recoded}`;
    terminal.write(`${visible(path)}${done}\n`);
  }
  if (!dryRun) terminal.write('Look it over (git diff shows what changed), then run npm run check.\n');
  return 0;
}
