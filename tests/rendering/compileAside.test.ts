import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { compileAside } from '../../src/commands/rendering/compileAside.ts';

const compilation = {
  projectFolder: '/project',
  address: { site: 'https://golf.example' },
  folder: '/project/work',
};

/** Compiles with a process that does this. */
function compiling(code: string, signal = new AbortController().signal): Promise<void> {
  const file = join(mkdtempSync(join(tmpdir(), 'compiler-')), 'compiler.mjs');
  writeFileSync(file, code);
  return compileAside(compilation, signal, file);
}

describe('pages are compiled in a process of their own', () => {
  test('which is told what to compile, and is over when it has said that all is done', async () => {
    await compiling(`process.once('message', (told) => {
      const asked = told.projectFolder + told.address.site + told.folder;
      process.send({ failed: asked === '/projecthttps://golf.example/project/work' ? null : asked });
      setInterval(() => {}, 1000);
    });`);
  });

  test('and a failure there is told in its words', async () => {
    const failing = `process.once('message', () => process.send({ failed: 'Cannot find module "left".' }));`;
    await expect(compiling(failing)).rejects.toThrow(/^Cannot find module "left"\.$/);
  });

  test.each([
    ['ended by itself', 'process.exit(3);', '3'],
    ['was killed', `process.kill(process.pid, 'SIGKILL');`, 'SIGKILL'],
  ])('a process that %s has compiled nothing', async (_, code, how) => {
    await expect(compiling(code)).rejects.toThrow(
      `The compiler of the pages ended before it was done (${how}).`,
    );
  });

  test('one that nobody needs any more is ended', async () => {
    const unneeded = new AbortController();
    const compiled = compiling('setInterval(() => {}, 1000);', unneeded.signal);
    unneeded.abort();
    await expect(compiled).rejects.toThrow('aborted');
  });
});
