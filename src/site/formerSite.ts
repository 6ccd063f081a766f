import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Files of a site, by path with slashes, as version 0.1.0 wrote it: it left no mark. */
const written = [
  /^(?:(?:about|glossary|method)\/)?index\.html$/,
  /^(?:404\.html|robots\.txt|findings\.schema\.json|(?:feed|corrections)\.xml|sitemap-(?:index|\d+)\.xml)$/,
  /^_astro\/[^/]+\.(?:css|js|woff2?)$/,
  /^(?:contenders|pairs)\/[^/]+\/index\.html$/,
  /^reports\/[^/]+\/(?:(?:kit\/|sheet\/|embed\/[^/]+\/)?index|report|email|email-block)\.html$/,
  /^reports\/[^/]+\/(?:findings\.json|datapackage\.json|email\.txt|shots\.csv|charts\/[^/]+\.(?:png|svg))$/,
  /^specimens\/(?:[^/]+\/)*index\.html$/,
];

/** Files that every such site has. */
const always = ['index.html', '404.html', 'about/index.html', 'findings.schema.json', 'robots.txt'];

/** Whether the files in a folder without mark are a site that an earlier version wrote, with or without files of others. */
export function isFormerSite(folder: string): boolean {
  if (!always.every((path) => existsSync(join(folder, path)))) return false;
  return readFileSync(join(folder, 'index.html'), 'utf8').includes(
    '<meta name="generator" content="Straightface ',
  );
}

/** Of the files of such a site those that version 0.1.0 wrote; `published` are those copied from `public/`. */
export function formerFiles(paths: readonly string[], published: readonly string[]): readonly string[] {
  return paths.filter((path) => published.includes(path) || written.some((pattern) => pattern.test(path)));
}
