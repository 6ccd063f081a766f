import { fork } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { expect, test } from 'vitest';

test('the compiler of the pages ends in the midst of its work where whoever started it is gone', async () => {
  mkdirSync('.cache', { recursive: true });
  // Inside the project, from where pages find their packages.
  const folder = mkdtempSync(resolve('.cache/test-compiler-'));
  try {
    const child = fork(resolve('src/commands/rendering/compileProcess.ts'), [], { stdio: 'ignore' });
    await once(child, 'spawn');
    child.send({ projectFolder: resolve('.'), address: {}, folder });
    await setTimeout(300);
    const ended = once(child, 'exit');
    child.disconnect();
    expect(await ended).toEqual([0, null]);
    expect(existsSync(join(folder, 'code'))).toBe(false);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
