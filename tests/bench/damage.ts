import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Random } from '../../src/stats/random.ts';

/** What may happen to a file of a cache on a bad disk, or by a hand that meant well. */
export const damages = ['flipped', 'truncated', 'emptied', 'exchanged'] as const;
export type Damage = (typeof damages)[number];

/** The files of a cache by what they hold: one kind is damaged at a time, so that what is read before it is whole. */
export const cacheKinds = [
  'reports',
  'drawings',
  'other units',
  'rasters',
  'fonts',
  'records',
  'lists',
] as const;
export type CacheKind = (typeof cacheKinds)[number];

export function kindOf(path: string): CacheKind | null {
  if (/^reports\/[^/]+\.svg\.json$/.test(path)) return 'drawings';
  if (/^reports\/[^/]+\.other\.json$/.test(path)) return 'other units';
  if (path.startsWith('reports/')) return 'reports';
  if (path.startsWith('rasters/')) return 'rasters';
  if (path.startsWith('fonts/')) return 'fonts';
  if (path.startsWith('sites/')) return 'records';
  if (path.startsWith('.straightface')) return 'lists';
  return null;
}

/** Paths of all files of a cache. */
export function cacheFiles(cache: string): readonly string[] {
  return readdirSync(cache, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(cache.length + 1))
    .sort();
}

/** Damages files of a cache, each as `damageOf` says by its place in the list; files are exchanged with the next one. */
export function damageFiles(
  cache: string,
  paths: readonly string[],
  damageOf: (index: number) => Damage,
  random: Random,
): void {
  const bytes = paths.map((path) => readFileSync(join(cache, path)));
  for (const [index, path] of paths.entries()) {
    const own = bytes[index] ?? Buffer.alloc(0);
    const next = bytes[(index + 1) % bytes.length] ?? Buffer.alloc(0);
    writeFileSync(join(cache, path), damaged(own, next, damageOf(index), random));
  }
}

function damaged(own: Buffer, next: Buffer, damage: Damage, random: Random): Buffer {
  if (damage === 'emptied') return Buffer.alloc(0);
  if (damage === 'truncated') return own.subarray(0, Math.floor(own.length * random.uniform()));
  if (damage === 'exchanged') return next;
  const flipped = Buffer.from(own);
  const at = Math.floor(own.length * random.uniform());
  if (own.length > 0) flipped[at] = (flipped[at] ?? 0) ^ (1 << Math.floor(8 * random.uniform()));
  return flipped;
}

/** What must be deleted for a build to read that kind at all: it asks the record first, then reports, rasters and fonts. */
export function readBefore(kind: CacheKind): readonly string[] {
  if (kind === 'records' || kind === 'lists') return [];
  return kind === 'fonts' ? ['sites', 'rasters'] : ['sites'];
}
