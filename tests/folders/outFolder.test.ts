import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { decideCache, decideOut } from '../../src/site/folderDecision.ts';
import { cacheFolder, contentFolder, devCacheFolder, outFolder } from '../../src/site/folders.ts';
import { diskView, type FolderView } from '../../src/site/folderView.ts';
import type { Places } from '../../src/site/places.ts';
import { siteMark, siteMarkName } from '../../src/site/siteMark.ts';
import { folderOf, everythingIn } from './folderOf.ts';

/** A shop's disk: home, project, content, and some folders of others. */
function disk(): string {
  const root = folderOf({
    'home/photos/driver.jpg': 'a photograph',
    'home/work/notes.txt': 'notes',
    'project/package.json': '{}',
    'project/src/index.ts': '',
    'project/public/icon.svg': '<svg/>',
    'project/node_modules/x/index.js': '',
    'project/.git/HEAD': 'ref',
    'project/tests/a.test.ts': '',
    'shop/content/shop.yaml': 'name: Shop',
    'shop/content/reports/one/report.md': 'report',
    'shop/cache/.straightface-cache': 'A cache',
    'shop/cache/reports/x.json': '',
    'shop/photos/bay.jpg': 'a photograph',
    'shop/site.old/keep.txt': 'kept',
    'shop/site.new/keep.txt': 'kept',
    'shop/book.txt': 'a book',
    'shop/built/index.html': 'ours',
    [`shop/built/${siteMarkName}`]: siteMark(['index.html']),
    'shop/published/index.html': 'ours',
    'shop/published/CNAME': 'golf.example',
    [`shop/published/${siteMarkName}`]: siteMark(['index.html']),
    'shop/cut/index.html': 'ours',
    [`shop/cut/${siteMarkName}`]: siteMark(['index.html', 'about/index.html']).slice(0, -30),
    'former/index.html': '<meta name="generator" content="Straightface 0.1.0">',
    'former/404.html': '',
    'former/about/index.html': '',
    'former/findings.schema.json': '',
    'former/robots.txt': '',
    'former/icon.svg': '',
    'former/reports/one/charts/gaps.png': '',
    'former/_astro/page.x1.css': '',
  });
  mkdirSync(join(root, 'shop/empty'));
  for (const [name, target] of [
    ['link', 'built'],
    ['link-to-file', 'book.txt'],
    ['link-to-content', 'content'],
    ['link-to-photos', 'photos'],
    ['dangling', 'nothing'],
    ['circle', 'circle'],
  ] as const)
    symlinkSync(join(root, 'shop', target), join(root, 'shop', name));
  return root;
}

const places = (root: string): Places => ({
  contentDir: join(root, 'shop/content'),
  outDir: join(root, 'shop/site'),
  cacheDir: join(root, 'shop/cache'),
  projectFolder: join(root, 'project'),
  home: join(root, 'home'),
  workingFolder: join(root, 'home/work'),
});

const root = disk();
const before = everythingIn(root);

describe('OUT_DIR', () => {
  test.each([
    ['/', 'is the root of the disk'],
    ['home', 'is your home folder or holds it'],
    ['', 'is the project itself or holds it'],
    ['home/work', 'is the folder you work in or holds it'],
    ['project', 'is the project itself or holds it'],
    ['project/src', 'belongs to the project (src)'],
    ['project/src/site/built', 'belongs to the project (src)'],
    ['project/public', 'belongs to the project (public)'],
    ['project/node_modules/site', 'belongs to the project (node_modules)'],
    ['project/.git', 'belongs to the project (.git)'],
    ['project/tests', 'belongs to the project (tests)'],
    ['shop/content', 'is the content folder'],
    ['shop/content/reports', 'lies in the content folder'],
    ['shop/content/dist', 'lies in the content folder'],
    ['shop', 'holds the content folder'],
    ['shop/link-to-content', 'is the content folder'],
    ['shop/link-to-content/new', 'lies in the content folder'],
    ['shop/cache', 'is the cache folder or holds it'],
    ['shop/cache/reports', 'belongs to the cache'],
    ['shop/cache/astro/dist', 'belongs to the cache'],
    ['shop/photos', 'holds files that no build of ours wrote (bay.jpg)'],
    ['shop/link-to-photos', 'holds files that no build of ours wrote (bay.jpg)'],
    ['shop/site.old', 'holds files that no build of ours wrote (keep.txt)'],
    ['shop/book.txt', 'is no folder'],
    ['shop/link-to-file', 'is no folder'],
    ['shop/book.txt/site', 'which is a file'],
    ['shop/dangling', 'to nowhere'],
    ['shop/dangling/site', 'to nowhere'],
    ['shop/circle', 'to nowhere'],
    ['shop/cut', 'holds a site whose list of files is damaged'],
    ['home/photos', 'holds files that no build of ours wrote (driver.jpg)'],
  ])('%s is refused in one sentence that says what to do: %s', (path, why) => {
    const decision = decideOut({ ...places(root), outDir: path === '/' ? '/' : join(root, path) });
    expect(decision.kind).toBe('refused');
    const sentence = decision.kind === 'refused' ? decision.sentence : '';
    expect(sentence).toContain(why);
    expect(sentence).toMatch(/^The site would go to \S+, which [^\n]+: (?:name|mend|look)[^\n]+\.$/);
    expect(everythingIn(root)).toEqual(before);
  });

  test.each([
    ['shop/site', 'shop/site'],
    ['shop/new/deep/site', 'shop/new/deep/site'],
    ['shop/empty', 'shop/empty'],
    ['shop/built', 'shop/built'],
    ['shop/link', 'shop/built'],
    ['shop/published', 'shop/published'],
    ['project/dist', 'project/dist'],
    ['shop/cache/test-site', 'shop/cache/test-site'],
    ['home/site', 'home/site'],
    ['former', 'former'],
  ])('%s is taken, links followed', (path, folder) => {
    expect(decideOut({ ...places(root), outDir: join(root, path) })).toEqual({
      kind: 'usable',
      folder: join(root, folder),
    });
  });

  test('a site of an earlier version with a file of somebody is refused with what to do, once', () => {
    const own = disk();
    writeFileSync(join(own, 'former/CNAME'), 'golf.example');
    expect(decideOut({ ...places(own), outDir: join(own, 'former') })).toEqual({
      kind: 'refused',
      sentence: `The site would go to ${join(own, 'former')}, which holds a site of an earlier version and files that it did not write (CNAME): move them away, build, and put them back: from then on builds leave them alone.`,
    });
  });

  test('of many files in the way three are named', () => {
    const own = folderOf({ 'x/a': '', 'x/b': '', 'x/c': '', 'x/d': '', 'x/e': '' });
    const decision = decideOut({ ...places(own), outDir: join(own, 'x') });
    expect(decision).toMatchObject({ sentence: expect.stringContaining('(a, b, c and 2 more)') });
  });

  test('where names are the same in any casing, another casing hides nothing', () => {
    const folded = (path: string): string => path.replace(/\/SHOP\/Content/i, '/shop/content');
    const view: FolderView = {
      ...diskView,
      kind: (path) => diskView.kind(folded(path)),
      real: (path) => (diskView.kind(folded(path)) === null ? null : path),
      identity: (path) => diskView.identity(folded(path)),
      names: (path) => diskView.names(folded(path)),
    };
    for (const path of ['shop/CONTENT', 'Shop/Content/site']) {
      const decision = decideOut({ ...places(root), outDir: join(root, path) }, view);
      expect(decision).toMatchObject({ sentence: expect.stringContaining('the content folder') });
    }
  });
});

describe('CACHE_DIR', () => {
  test.each([
    ['/', 'is the root of the disk'],
    ['home', 'is your home folder or holds it'],
    ['home/work', 'is the folder you work in or holds it'],
    ['project', 'is the project itself or holds it'],
    ['project/src', 'belongs to the project (src)'],
    ['project/.git/cache', 'belongs to the project (.git)'],
    ['shop/content', 'is the content folder or lies in it'],
    ['shop/content/.cache', 'is the content folder or lies in it'],
    ['shop/link-to-content', 'is the content folder or lies in it'],
    ['shop/site', 'is the folder of the site or lies in it'],
    ['shop/site/cache', 'is the folder of the site or lies in it'],
    ['shop/photos', 'holds files that are no cache of ours (bay.jpg)'],
    ['shop/book.txt', 'is no folder'],
    ['shop/dangling', 'to nowhere'],
  ])('%s is refused: %s', (path, why) => {
    const decision = decideCache({ ...places(root), cacheDir: path === '/' ? '/' : join(root, path) });
    const sentence = decision.kind === 'refused' ? decision.sentence : '';
    expect(sentence).toContain(why);
    expect(sentence).toMatch(
      /^The cache would go to \S+, which [^\n]+: (?:name|mend)[^\n]+ in CACHE_DIR[^\n]*\.$/,
    );
    expect(everythingIn(root)).toEqual(before);
  });

  test.each(['shop/cache', 'shop/new-cache', 'shop/empty', 'project/.cache'])('%s is taken', (path) => {
    expect(decideCache({ ...places(root), cacheDir: join(root, path) }).kind).toBe('usable');
  });

  test('a cache of an earlier version, which left no mark, is known by what it holds', () => {
    const own = folderOf({
      'c/reports/x.json': '',
      'c/rasters/x.png': '',
      'c/astro/dist/x': '',
      'c/fonts/x': '',
    });
    expect(decideCache({ ...places(own), cacheDir: join(own, 'c') }).kind).toBe('usable');
    writeFileSync(join(own, 'c/tax-2025.pdf'), '');
    expect(decideCache({ ...places(own), cacheDir: join(own, 'c') })).toMatchObject({ kind: 'refused' });
  });

  test('the one of the project also holds what its tests make', () => {
    const own = folderOf({ 'project/.cache/test-site/index.html': '' });
    expect(decideCache({ ...places(own), cacheDir: join(own, 'project/.cache') }).kind).toBe('usable');
  });

  test('never one whose own folders would be in the content folder', () => {
    const own = folderOf({ 'cache/reports/shop.yaml': '' });
    const asked = { ...places(own), cacheDir: join(own, 'cache'), contentDir: join(own, 'cache/reports') };
    expect(decideCache(asked)).toMatchObject({
      sentence: expect.stringContaining('would use the content folder'),
    });
  });
});

describe('variables', () => {
  afterEach(() => void vi.unstubAllEnvs());

  test.each(['', ' ', '\t\n'])('that hold only blanks count as not set: %j', (value) => {
    for (const name of ['OUT_DIR', 'CACHE_DIR', 'CONTENT_DIR']) vi.stubEnv(name, value);
    expect([outFolder(), cacheFolder(), contentFolder()]).toEqual(
      ['dist', '.cache', 'content'].map((name) => join(process.cwd(), name)),
    );
  });

  test('name a folder in or outside the working directory', () => {
    vi.stubEnv('OUT_DIR', '../elsewhere/site');
    vi.stubEnv('CACHE_DIR', '/var/cache/site');
    expect(outFolder()).toBe(join(dirname(process.cwd()), 'elsewhere/site'));
    expect(cacheFolder()).toBe('/var/cache/site');
    expect(devCacheFolder()).toBe('/var/cache/site/dev');
  });
});
