import { readdirSync, readFileSync, realpathSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, resolve, sep } from 'node:path';
import { expect, test } from 'vitest';
import { servedFolders } from '../../src/commands/servedFolders.ts';

const { resolve: resolvePackage } = createRequire(import.meta.url);

test('hold every font that a page or a style asks for, and the sources', () => {
  const asked = readdirSync('src', { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.(?:astro|css)$/.test(path))
    .flatMap((path) => [
      ...readFileSync(join('src', path), 'utf8').matchAll(/['"](@[^'"?]+\.woff2)(?:\?url)?['"]/g),
    ])
    .map(([, file = '']) => resolvePackage(file));
  expect(new Set(asked).size).toBeGreaterThan(3);
  // In a checkout fonts lie below the program too; in a package they do not.
  const [program, ...beside] = servedFolders();
  const isIn = (file: string, folder: string): boolean =>
    realpathSync(file).startsWith(`${realpathSync(folder)}${sep}`);
  expect(asked.filter((file) => !beside.some((folder) => isIn(file, folder)))).toEqual([]);
  expect(program).toBe(resolve('.'));
});
