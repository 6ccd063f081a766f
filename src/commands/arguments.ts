import { parseArgs, type ParseArgsConfig } from 'node:util';
import type { Terminal } from './terminal.ts';

type Options = NonNullable<ParseArgsConfig['options']>;

type Parsed<Shape extends Options> = ReturnType<
  typeof parseArgs<{ args: string[]; options: Shape; allowPositionals: true; strict: true }>
>;

const help = { help: { type: 'boolean', short: 'h' } } as const;

/**
 * The arguments of a command; the exit status where there is nothing more to do, since `--help` asked for `usage` or
 * the arguments cannot be understood, which is then said together with it.
 */
export function readArguments<const Shape extends Options>(
  typed: readonly string[],
  options: Shape,
  usage: string,
  terminal: Terminal,
): Parsed<Shape> | { readonly exitCode: 0 | 1 } {
  if (asksForHelp(typed)) {
    terminal.write(`${usage}\n`);
    return { exitCode: 0 };
  }
  try {
    return parseArgs({ args: [...typed], options, allowPositionals: true, strict: true });
  } catch (error) {
    const what = error instanceof Error ? (error.message.split('. ')[0] ?? '') : String(error);
    terminal.writeError(`${what}.\nUse: ${usage}\n`);
    return { exitCode: 1 };
  }
}

const asksForHelp = (typed: readonly string[]): boolean =>
  parseArgs({ args: [...typed], options: help, allowPositionals: true, strict: false }).values.help === true;
