import { readdirSync } from 'node:fs';
import { join, relative } from 'node:path';

/** Every HTML file of a built site, as paths from its folder with forward slashes. */
export function htmlFiles(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.html'))
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split('\\').join('/'))
    .sort();
}

/** The address path a file is served under: `reports/a/index.html` is `/reports/a/`. */
export function pathOf(file: string): string {
  return `/${file.replace(/index\.html$/, '')}`;
}
