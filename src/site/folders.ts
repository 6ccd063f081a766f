import { join, resolve } from 'node:path';

/** The content folder: `CONTENT_DIR`, else `content` in the working directory. */
export function contentFolder(): string {
  return resolve(process.env['CONTENT_DIR'] ?? 'content');
}

/** What may be deleted at any time and is then worked out anew: `CACHE_DIR`, else `.cache` in the working directory. */
export function cacheFolder(): string {
  return resolve(process.env['CACHE_DIR'] ?? '.cache');
}

/** Where `dev` keeps the reports that it has worked out. */
export function devCacheFolder(): string {
  return join(cacheFolder(), 'dev');
}

/** Where the built site goes: `OUT_DIR`, else `dist` in the working directory. */
export function outFolder(): string {
  return resolve(process.env['OUT_DIR'] ?? 'dist');
}
