import { readdirSync } from 'node:fs';
import { join, relative } from 'node:path';

/** Files in HTML that are no pages of the site but go elsewhere: into mails, and onto other sites. They have tests of their own. */
const edition = /^reports\/[^/]+\/(email|email-block|report)\.html$/;

/** Every page of a built site, as paths from its folder with forward slashes. */
export function htmlFiles(folder: string): string[] {
  return everyHtmlFile(folder).filter((file) => !edition.test(file));
}

/** Every edition in HTML that is no page of the site. */
export function editionFiles(folder: string): string[] {
  return everyHtmlFile(folder).filter((file) => edition.test(file));
}

function everyHtmlFile(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.html'))
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split('\\').join('/'))
    .sort();
}

/** The address path a file is served under: `reports/a/index.html` is `/reports/a/`. */
export function pathOf(file: string): string {
  return `/${file.replace(/index\.html$/, '')}`;
}

/** What a file of a built site is made by: all reports have one template, and so have all specimens. */
export function templateOf(file: string): string {
  return file
    .replace(/^specimens\/.+\//, 'specimens/*/')
    .replace(/(?<=^|\/)(reports|embed|kinds|pairs|contenders)\/[^/]+\//g, '$1/*/');
}
