import { fork } from 'node:child_process';
import { moduleFile } from '../ownCode.ts';
import { readCode } from '../readCode.ts';
import type { Compilation } from './compilePages.ts';
import type { Compiled } from './compileProcess.ts';

const compiler = moduleFile('commands/rendering/compileProcess.ts');

/**
 * `compilePages` in a process of its own, beside whatever else is done: the framework and its compiler take some 350 MB,
 * which a process gives back at its end only.
 *
 * @param signal ends it before it is done
 * @throws Error in the words of what went wrong there
 */
export async function compileAside(
  compilation: Compilation,
  signal: AbortSignal,
  file = compiler,
): Promise<void> {
  const child = fork(file, [], { env: { ...process.env, NODE_COMPILE_CACHE: readCode }, signal });
  try {
    const compiled = await new Promise<Compiled>((resolve, reject) => {
      child.once('message', (told: Compiled) => resolve(told));
      child.once('error', reject);
      child.once('exit', (status, signal) =>
        reject(new Error(`The compiler of the pages ended before it was done (${signal ?? status}).`)),
      );
      child.send(compilation);
    });
    if (compiled.failed !== null) throw new Error(compiled.failed);
  } finally {
    child.kill();
  }
}
