import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { compiledPages, pagesKey } from '../../src/commands/rendering/compiledPages.ts';

/** A project whose pages compile to two files, and how often they were compiled. */
function project(projectFolder = mkdtempSync(join(tmpdir(), 'project-'))) {
  let compiled = 0;
  const of = (code: string, address: { readonly site?: string } = {}) => {
    const wanted = { projectFolder, address, code };
    const pages = () =>
      compiledPages(wanted, async ({ folder }) => {
        compiled += 1;
        for (const [path, text] of [
          ['code/prerender-entry.1.mjs', `export const code = '${code}';`],
          ['static/icon.svg', '<svg/>'],
          ['framework/left.json', '{}'],
        ] as const) {
          mkdirSync(dirname(join(folder, path)), { recursive: true });
          writeFileSync(join(folder, path), text);
        }
      });
    return { pages, folder: join(projectFolder, '.cache/pages', pagesKey(wanted)) };
  };
  return { projectFolder, of, compiled: () => compiled, all: join(projectFolder, '.cache/pages') };
}

describe('pages are compiled', () => {
  test('once for the same code and address, and what only the framework needs is not kept', async () => {
    const { of, compiled } = project();
    const { pages, folder } = of('a');
    const made = await pages();
    expect(await pages()).toEqual(made);
    expect(compiled()).toBe(1);
    expect(readFileSync(made.entry, 'utf8')).toBe("export const code = 'a';");
    expect(existsSync(join(made.staticFolder, 'icon.svg'))).toBe(true);
    expect(readdirSync(folder).toSorted()).toEqual(['code', 'files.sealed', 'static']);
  });

  test('anew for other code, and for another address', async () => {
    const { of, compiled } = project();
    const entries = [of('a'), of('b'), of('a', { site: 'https://golf.example' })].map(({ pages }) => pages());
    expect(new Set((await Promise.all(entries)).map(({ entry }) => entry)).size).toBe(3);
    expect(compiled()).toBe(3);
  });

  test('anew where the project was moved: they name modules by their place on the disk', async () => {
    const before = project();
    await before.of('a').pages();
    const folder = `${before.projectFolder}-moved`;
    renameSync(before.projectFolder, folder);
    const after = project(folder);
    const { entry } = await after.of('a').pages();
    expect([after.compiled(), entry.startsWith(folder)]).toEqual([1, true]);
  });

  test.each(['code/prerender-entry.1.mjs', 'static/icon.svg', 'files.sealed'])(
    'anew where %s has other bytes, or is gone',
    async (path) => {
      const { of, compiled } = project();
      const { pages, folder } = of('a');
      await pages();
      const whole = readFileSync(join(folder, path));
      writeFileSync(join(folder, path), Buffer.concat([whole, Buffer.from(' ')]));
      await pages();
      expect(compiled()).toBe(2);
      rmSync(join(folder, path));
      await pages();
      expect(compiled()).toBe(3);
      if (path !== 'files.sealed') expect(readFileSync(join(folder, path))).toEqual(whole);
    },
  );

  test('and kept for a week after they were last asked for', async () => {
    const { of, all } = project();
    const [old, recent] = [of('a'), of('b')];
    await old.pages();
    await recent.pages();
    const days = (count: number): Date => new Date(Date.now() - count * 24 * 60 * 60 * 1000);
    utimesSync(join(old.folder, 'files.sealed'), days(8), days(8));
    utimesSync(join(recent.folder, 'files.sealed'), days(6), days(6));
    await of('c').pages();
    expect(existsSync(old.folder)).toBe(false);
    expect(existsSync(recent.folder)).toBe(true);
    expect(readdirSync(all)).toHaveLength(2);
  });
});
