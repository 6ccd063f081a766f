/** Where a command writes and what it may assume of it; passed in, so that tests can listen. */
export interface Terminal {
  readonly write: (text: string) => void;
  readonly writeError: (text: string) => void;
  readonly colour: boolean;
  readonly width: number;
}

/** The terminal of the running process. */
export function processTerminal(): Terminal {
  return {
    write: (text) => void process.stdout.write(text),
    writeError: (text) => void process.stderr.write(text),
    colour: process.stdout.isTTY === true && process.env['NO_COLOR'] === undefined,
    width: process.stdout.columns ?? 100,
  };
}
