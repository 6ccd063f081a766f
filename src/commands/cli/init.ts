import { resolve } from 'node:path';
import { readArguments } from '../arguments.ts';
import type { Command } from '../command.ts';
import { initCommand } from '../init/initCommand.ts';

/** `straightface init FOLDER [--from PACKAGE]` */
export const command: Command = (call) => {
  const usage = 'npx straightface init FOLDER [--from PACKAGE]';
  const read = readArguments(call, { name: 'init', options: { from: { type: 'string' } }, usage });
  if ('exitCode' in read) return read.exitCode;
  const [folder, ...more] = read.positionals;
  if (folder === undefined || more.length > 0) {
    call.terminal.writeError(`One folder is written, such as my-shop, or . for this one. Use: ${usage}\n`);
    return 1;
  }
  return initCommand({
    folder: resolve(folder),
    named: folder,
    from: read.values.from ?? null,
    terminal: call.terminal,
  });
};
