import { readdirSync, readFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { join } from 'node:path';

const statement = /^\s*(?:import|export)\s(?:[^'"`;]*?\sfrom\s*)?['"]([^'"\n]+)['"]/gm;
const call = /\bimport\(\s*['"]([^'"\n]+)['"]\s*\)/g;
const url = /\burl\(\s*['"](@[^'"\n]+)['"]\s*\)/g;

/** Names of the packages that the sources in a folder import, with a file that does. */
export function barePackages(folder: string): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const file of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
    if (!/\.(?:[jt]s|astro|css)$/.test(file)) continue;
    const text = readFileSync(join(folder, file), 'utf8');
    for (const [, specifier = ''] of [statement, call, url].flatMap((each) => [...text.matchAll(each)]))
      if (isBare(specifier)) found.set(packageOf(specifier), file);
  }
  return found;
}

const isBare = (specifier: string): boolean =>
  !/^(?:\.{0,2}\/|node:|virtual:)/.test(specifier) && !builtinModules.includes(specifier);

/** `@scope/name` of `@scope/name/file.js`, `name` of `name/file.js`. */
const packageOf = (specifier: string): string =>
  specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/');
