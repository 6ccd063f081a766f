import { cpSync, mkdirSync, rmSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { builtSite } from './builtSite.ts';

/** Builds a content folder and lays the site where it would stand under `base` of a host; returns that host's folder. */
export async function builtUnder(contentDir: string, base: string, name: string): Promise<string> {
  const outDir = resolve(`.cache/test-kit/${name}`);
  const root = resolve(`.cache/test-kit/${name}-root`);
  await builtSite(contentDir, outDir, { CACHE_DIR: `${outDir}-cache` });
  rmSync(root, { recursive: true, force: true });
  const place = join(root, base);
  mkdirSync(dirname(place), { recursive: true });
  cpSync(outDir, place, { recursive: true });
  return root;
}
