import { join, resolve } from 'node:path';

/** The content folder: `CONTENT_DIR`, else `content` in the working directory. */
export function contentFolder(): string {
  return named('CONTENT_DIR', 'content');
}

/** What may be deleted at any time and is then worked out anew: `CACHE_DIR`, else `.cache` in the working directory. */
export function cacheFolder(): string {
  return named('CACHE_DIR', '.cache');
}

/** Where `dev` keeps the reports that it has worked out. */
export function devCacheFolder(): string {
  return join(cacheFolder(), 'dev');
}

/** Where the built site goes: `OUT_DIR`, else `dist` in the working directory. */
export function outFolder(): string {
  return named('OUT_DIR', 'dist');
}

/** An empty variable would name the working directory; it counts as not set, as in most shells' own defaults. */
function named(variable: string, usual: string): string {
  const value = process.env[variable] ?? '';
  return resolve(value.trim() === '' ? usual : value);
}
