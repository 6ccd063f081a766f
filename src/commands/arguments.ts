import { parseArgs, type ParseArgsConfig } from 'node:util';
import type { Terminal } from './terminal.ts';

type Options = NonNullable<ParseArgsConfig['options']>;

/**
 * The arguments of a command; null where they cannot be understood, which is then said together with `usage`.
 */
export function readArguments<const Shape extends Options>(
  typed: readonly string[],
  options: Shape,
  usage: string,
  terminal: Terminal,
): ReturnType<
  typeof parseArgs<{ args: string[]; options: Shape; allowPositionals: true; strict: true }>
> | null {
  try {
    return parseArgs({ args: [...typed], options, allowPositionals: true, strict: true });
  } catch (error) {
    const what = error instanceof Error ? (error.message.split('. ')[0] ?? '') : String(error);
    terminal.writeError(`${what}.\nUse: ${usage}\n`);
    return null;
  }
}
