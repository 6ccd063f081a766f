import type { Terminal } from '../../src/commands/terminal.ts';

/** A terminal without colour, and all that was written to it. */
export interface Listener {
  readonly terminal: Terminal;
  readonly said: () => string;
  /** Without what went to standard error. */
  readonly saidPlainly: () => string;
}

export function listen(): Listener {
  const all: string[] = [];
  const plain: string[] = [];
  return {
    terminal: {
      write: (text) => void (all.push(text), plain.push(text)),
      writeError: (text) => void all.push(text),
      colour: false,
      live: false,
      width: 110,
    },
    said: () => all.join(''),
    saidPlainly: () => plain.join(''),
  };
}
