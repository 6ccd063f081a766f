import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, expect, test, vi } from 'vitest';
import { openCache, openFolders } from '../../src/commands/openFolders.ts';
import { cacheMarkName } from '../../src/site/folderDecision.ts';
import { listen } from '../commands/listen.ts';
import { everythingIn, folderOf } from './folderOf.ts';

afterEach(() => void vi.unstubAllEnvs());

function asked(files: Readonly<Record<string, string>>, cache: string) {
  const root = folderOf({ 'content/shop.yaml': 'name: Shop', 'project/package.json': '{}', ...files });
  vi.stubEnv('CACHE_DIR', join(root, cache));
  const { terminal, said } = listen();
  const request = {
    contentDir: join(root, 'content'),
    outDir: join(root, 'site'),
    projectFolder: join(root, 'project'),
    terminal,
  };
  return { root, request, said };
}

test('a build finds its cache ready and marked, and the mark is the same every time', () => {
  const { root, request, said } = asked({}, 'cache');
  const folders = { outDir: join(root, 'site'), cacheDir: join(root, 'cache') };
  expect(openFolders(request)).toEqual(folders);
  const mark = readFileSync(join(root, 'cache', cacheMarkName), 'utf8');
  expect(mark).toBe(
    'A cache of Straightface. All that it made here may be deleted at any time and is then worked out anew.\n',
  );
  expect(openFolders(request)).toEqual(folders);
  expect(readFileSync(join(root, 'cache', cacheMarkName), 'utf8')).toBe(mark);
  expect(said()).toBe('');
});

test.each([
  ['the site', 'cache', { 'site/thesis.txt': 'mine' }, 'The site would go to'],
  ['the cache', 'photos', { 'photos/bay.jpg': 'mine' }, 'The cache would go to'],
])('where %s may not go, one sentence says so and nothing is touched', (_what, cache, files, words) => {
  const { root, request, said } = asked(files, cache);
  const before = everythingIn(root);
  expect(openFolders(request)).toBeNull();
  expect(said()).toMatch(new RegExp(`^${words} [^\\n]+\\.\\nNothing was written\\.\\n$`));
  expect(everythingIn(root)).toEqual(before);
});

test('a command that builds no site asks for its cache alone', () => {
  const { root, request, said } = asked({ 'site/thesis.txt': 'mine' }, 'cache');
  expect(openCache(request)).toBe(join(root, 'cache'));
  const { request: refused } = asked({}, 'content');
  expect(openCache(refused)).toBeNull();
  expect(said()).toBe('');
});

test('in a project folder whose path is taken for an address nothing is opened', () => {
  const { root, request, said } = asked({}, 'cache');
  expect(openFolders({ ...request, projectFolder: join(root, 'golf#2') })).toBeNull();
  expect(said()).toContain('move or rename the folder');
  expect(existsSync(join(root, 'cache'))).toBe(false);
});
