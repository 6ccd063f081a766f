import { mkdirSync, mkdtempSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { describe, expect, test } from 'vitest';
import type { Compilation } from '../../src/commands/rendering/compilePages.ts';
import { pagesCompiler } from '../../src/commands/rendering/pagesCompiler.ts';

const wanted = (code: string) => ({
  projectFolder: mkdtempSync(join(tmpdir(), 'project-')),
  address: {},
  code,
});

async function writesPages({ folder }: Compilation): Promise<void> {
  mkdirSync(join(folder, 'code'));
  mkdirSync(join(folder, 'static'));
  writeFileSync(join(folder, 'code/prerender-entry.mjs'), '');
}

describe('pages compiled ahead', () => {
  test('are compiled once, however often they are asked for meanwhile', async () => {
    let compiled = 0;
    const compiler = pagesCompiler(async (compilation) => {
      compiled += 1;
      await writesPages(compilation);
    });
    const [own, others] = [wanted('a'), wanted('b')];
    const [first, second, other] = await Promise.all([own, own, others].map(compiler.pages));
    expect(first).toEqual(second);
    expect(other).not.toEqual(first);
    expect(compiled).toBe(2);
    await compiler.close();
  });

  test('tell of a failure when they are asked for, and not before', async () => {
    const compiler = pagesCompiler(() => Promise.reject(new Error('No room.')));
    const own = wanted('a');
    void compiler.pages(own);
    await setTimeout(10);
    await expect(compiler.pages(own)).rejects.toThrow('No room.');
    await compiler.close();
  });

  test('are given up where nobody needs them, and nothing is left of them', async () => {
    const own = wanted('a');
    const compiler = pagesCompiler(
      (_, signal) =>
        new Promise((__, reject) => signal.addEventListener('abort', () => reject(signal.reason))),
    );
    void compiler.pages(own);
    expect(readdirSync(join(own.projectFolder, '.cache'))).toHaveLength(1);
    await compiler.close();
    expect(readdirSync(join(own.projectFolder, '.cache'))).toEqual([]);
  });
});
