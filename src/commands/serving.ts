import { readArguments } from './arguments.ts';
import type { Call } from './command.ts';
import { readPort } from './port.ts';

/** What was typed behind a command that serves. */
interface Serving {
  /** Null where none was typed. */
  readonly port: number | null;
}

/** The port is all that such a command takes; the exit status where there is nothing to serve. */
export function readServing(
  call: Call,
  name: 'dev' | 'preview' | 'start',
): Serving | { readonly exitCode: 0 | 1 } {
  const read = readArguments(call, {
    name,
    options: { port: { type: 'string' } },
    names: false,
    usage: `npm run ${name} [-- --port 4321]`,
  });
  if ('exitCode' in read) return read;
  const port = readPort(read.values.port, call.terminal);
  return port === undefined ? { exitCode: 1 } : { port };
}
