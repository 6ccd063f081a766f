import { mkdirSync, mkdtempSync, readdirSync, readFileSync, realpathSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';

/** A temporary folder that holds these files. */
export function folderOf(files: Readonly<Record<string, string>>): string {
  const root = realpathSync(mkdtempSync(join(tmpdir(), 'straightface-folders-')));
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), text);
  }
  return root;
}

/** What lies in a folder, hidden and empty folders too: text of files, and what else there is, by path. */
export function everythingIn(folder: string): Readonly<Record<string, string>> {
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true }).map((entry) => {
    const file = join(entry.parentPath, entry.name);
    const found = entry.isFile() ? readFileSync(file, 'utf8') : entry.isDirectory() ? '(folder)' : '(other)';
    return [relative(folder, file), found] as const;
  });
  return Object.fromEntries(entries.sort(([x], [y]) => (x < y ? -1 : 1)));
}
