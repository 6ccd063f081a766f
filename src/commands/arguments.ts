import { parseArgs, type ParseArgsConfig } from 'node:util';
import type { Call } from './command.ts';
import { keptByNpm, type KeptByNpm } from './keptByNpm.ts';

type Options = NonNullable<ParseArgsConfig['options']>;

type Parsed<Shape extends Options> = ReturnType<
  typeof parseArgs<{ args: string[]; options: Shape; allowPositionals: true; strict: true }>
>;

/** What can be typed behind a command. */
interface Takes<Shape extends Options> {
  /** As in `npm run NAME`. */
  readonly name: string;
  readonly options: Shape;
  /** False where nothing without a flag means anything to it. */
  readonly names?: false;
  /** How to type it. */
  readonly usage: string;
}

const help = { help: { type: 'boolean', short: 'h' } } as const;

/**
 * The arguments of a command; the exit status where there is nothing more to do, since `--help` asked for `usage` or
 * the arguments cannot be understood, which is then said together with it.
 */
export function readArguments<const Shape extends Options>(
  { typed, environment, terminal }: Call,
  { name, options, usage, names }: Takes<Shape>,
): Parsed<Shape> | { readonly exitCode: 0 | 1 } {
  if (asksForHelp(typed)) {
    terminal.write(`${usage}\n`);
    return { exitCode: 0 };
  }
  const refuse = (what: string): { readonly exitCode: 1 } => {
    terminal.writeError(`${what}\nUse: ${usage}\n`);
    return { exitCode: 1 };
  };
  const kept = keptByNpm(name, options, environment);
  const parted = names === false ? partedByNpm(kept, typed) : null;
  if (parted !== null) return parseArgs({ args: [parted], options, allowPositionals: true, strict: true });
  if (kept.lost.length > 0)
    return refuse(
      `npm took ${kept.lost.join(', ')} for itself: put -- behind npm run ${name}, before all that is meant for it. Nothing was done.`,
    );
  try {
    return parseArgs({ args: [...kept.flags, ...typed], options, allowPositionals: true, strict: true });
  } catch (error) {
    return refuse(`${error instanceof Error ? (error.message.split('. ')[0] ?? '') : String(error)}.`);
  }
}

/** `npm run preview --port 4400`: npm took the flag and left its value, which can be of no other where both are alone. */
function partedByNpm({ flags, lost }: KeptByNpm, typed: readonly string[]): string | null {
  const [flag, ...otherFlags] = lost;
  const [value, ...otherValues] = typed;
  if (flag === undefined || value === undefined || value.startsWith('-')) return null;
  return flags.length + otherFlags.length + otherValues.length === 0 ? `${flag}=${value}` : null;
}

const asksForHelp = (typed: readonly string[]): boolean =>
  parseArgs({ args: [...typed], options: help, allowPositionals: true, strict: false }).values.help === true;
