import type { Terminal } from './terminal.ts';

/** How a command was started. */
export interface Call {
  /** The arguments behind its name. */
  readonly typed: readonly string[];
  readonly environment: Readonly<Record<string, string | undefined>>;
  readonly terminal: Terminal;
}

/** What `npm run` starts; gives the exit status, which for a server that goes on is that of its start. */
export type Command = (call: Call) => number | Promise<number>;
