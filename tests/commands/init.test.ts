import { existsSync, mkdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { shopCommands } from '../../src/commands/helpText.ts';
import { initCommand } from '../../src/commands/init/initCommand.ts';
import { packageName } from '../../src/commands/init/shopPackage.ts';
import { version } from '../../src/site/version.ts';
import { contentFolder } from './contentFolder.ts';
import { listen } from './listen.ts';
import { errorsIn, filesIn } from './writingScenarios.ts';

function init(folder: string, more: { readonly named?: string; readonly from?: string } = {}) {
  const { terminal, said } = listen();
  const status = initCommand({ folder, named: more.named ?? folder, from: more.from ?? null, terminal });
  return { status, said: said() };
}

const newFolder = (): string => join(contentFolder({}), 'Zoë’s shop');
const written = [
  'content/shop.yaml',
  'content/README.md',
  'package.json',
  '.github/workflows/reports.yml',
  '.gitignore',
  'README.md',
];

describe('a new folder', () => {
  const folder = newFolder();
  const run = init(folder, { named: 'my-shop' });
  const manifest: unknown = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));

  test('holds what a shop begins with, and what is next is said', () => {
    expect(run).toEqual({
      status: 0,
      said:
        `${written.join('\n')}\n\nNext:\n  cd my-shop\n  npm install\n` +
        '  npm start     opens the desk in a browser; or write your name into content/shop.yaml, and run npm run check\n',
    });
    expect(Object.keys(filesIn(folder)).sort()).toEqual(written.toSorted());
  });

  test('depends on this version of the program and on nothing else, and has its commands by their names', () => {
    expect(manifest).toMatchObject({
      name: 'zoe-s-shop',
      private: true,
      dependencies: { straightface: version },
      scripts: Object.fromEntries(Object.keys(shopCommands).map((name) => [name, `straightface ${name}`])),
      allowScripts: { node: true },
    });
    expect(Object.keys((manifest as { dependencies: object }).dependencies)).toEqual(['straightface']);
  });

  test('lacks a name and a report, and nothing else is wrong with it', () => {
    expect(errorsIn(join(folder, 'content'))).toEqual(['key-missing shop.yaml']);
  });

  test('has the schema by which an editor completes shop.yaml', () => {
    expect(existsSync(join(folder, 'content/.schema/shop.json'))).toBe(true);
  });

  test('has the workflow of this repository, and a README of ten lines at most', () => {
    const read = (path: string): string => readFileSync(path, 'utf8');
    expect(read(join(folder, '.github/workflows/reports.yml'))).toBe(read('.github/workflows/reports.yml'));
    expect(read(join(folder, 'README.md')).trim().split('\n').length).toBeLessThanOrEqual(10);
  });

  test('names only commands that there are', () => {
    const readme = readFileSync(join(folder, 'README.md'), 'utf8');
    const named = [...readme.matchAll(/npm run ([a-z]+)/g)].map(([, name = '']) => name);
    expect(named.length).toBeGreaterThan(2);
    expect(named.filter((name) => !(name in shopCommands))).toEqual([]);
  });

  test('is left as it is by a second run, which says so', () => {
    const before = filesIn(folder);
    const again = init(folder);
    expect(again.status).toBe(0);
    for (const path of written)
      expect(again.said).toContain(`${path}: stands there already, and stays as it is\n`);
    expect(filesIn(folder)).toEqual(before);
  });
});

describe('a folder that holds something', () => {
  test('keeps every file of its own, a link that leads nowhere too, and gets the others', () => {
    const folder = contentFolder({
      'package.json': '{"name":"mine"}',
      'content/shop.yaml': 'name: Example Golf Workshop\n',
    });
    symlinkSync('nowhere', join(folder, 'README.md'));
    const { status, said } = init(folder, { named: '.' });
    expect(status).toBe(0);
    expect(said).toContain('package.json: stands there already, and stays as it is\n');
    expect(said).toContain('README.md: stands there already, and stays as it is\n');
    expect(filesIn(folder)).toMatchObject({
      'package.json': '{"name":"mine"}',
      'content/shop.yaml': 'name: Example Golf Workshop\n',
    });
    expect(existsSync(join(folder, 'nowhere'))).toBe(false);
    expect(existsSync(join(folder, '.gitignore'))).toBe(true);
  });

  test('is told what its package.json lacks, as a command that keeps the rest', () => {
    const folder = contentFolder({ 'package.json': '{}' });
    expect(init(folder).said).toContain(
      `\n  npm pkg set dependencies.straightface="${version}" scripts.start="straightface start" scripts.build="straightface build" `,
    );
  });

  test('where nothing can be written it is said', () => {
    const file = join(contentFolder({ taken: 'x' }), 'taken');
    expect(init(file)).toEqual({
      status: 1,
      said: expect.stringMatching(
        /^Nothing can be written in .*taken: .*\. What stands there already was not touched\.\n$/,
      ) as string,
    });
  });
});

describe('where the package comes from', () => {
  const dependency = (from: string, folder = newFolder()): unknown => {
    expect(init(folder, { from }).status).toBe(0);
    return JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')).dependencies.straightface;
  };

  test('is written as it was typed', () => {
    expect(dependency('^2.0.0')).toBe('^2.0.0');
    expect(dependency('https://golf.example/straightface-0.1.0.tgz')).toBe(
      'https://golf.example/straightface-0.1.0.tgz',
    );
  });

  test('of a file is the way to it from the folder of the shop', () => {
    const folder = newFolder();
    const packed = join(folder, '..', 'straightface-0.1.0.tgz');
    mkdirSync(join(folder, '..'), { recursive: true });
    writeFileSync(packed, '');
    expect(dependency(packed, folder)).toBe('file:../straightface-0.1.0.tgz');
    rmSync(packed);
  });
});

test.each([
  ['my-shop', 'my-shop'],
  ['Zoë’s Golf & Co', 'zoe-s-golf-co'],
  ['.', 'reports'],
  ['straightface', 'reports'],
  ['ゴルフ', 'reports'],
])('%s as the name of a package is %s', (folder, name) => {
  expect(packageName(folder)).toBe(name);
});
