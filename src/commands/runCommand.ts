import { enableCompileCache } from 'node:module';
import type { Command } from './command.ts';
import { failureText } from './failureText.ts';
import { readCode } from './readCode.ts';
import { processTerminal } from './terminal.ts';

/**
 * Runs a command, and tells in sentences what it did not foresee. The command is loaded in here too: where a package is
 * missing it cannot even be read.
 */
export async function runCommand(load: () => Promise<{ readonly command: Command }>): Promise<void> {
  const terminal = processTerminal();
  const fail = (error: unknown): void => {
    const text = failureText(error, { trail: process.env['DEBUG'] !== undefined });
    // A server may hold the process alive.
    process.stderr.write(text, () => process.exit(1));
  };
  process.on('uncaughtException', fail);
  enableCompileCache(readCode);
  try {
    const { command } = await load();
    process.exitCode = await command({ typed: process.argv.slice(2), environment: process.env, terminal });
  } catch (error) {
    fail(error);
  }
}
