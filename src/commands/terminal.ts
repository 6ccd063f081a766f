/** Where a command writes and what it may assume of it; passed in, so that tests can listen. */
export interface Terminal {
  readonly write: (text: string) => void;
  readonly writeError: (text: string) => void;
  readonly colour: boolean;
  /** Somebody looks on, and a line can be written over. */
  readonly live: boolean;
  readonly width: number;
}

/** The terminal of the running process. A reader that stops listening, such as `head`, is no fault of the command. */
export function processTerminal(): Terminal {
  for (const stream of [process.stdout, process.stderr]) {
    stream.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code !== 'EPIPE') throw error;
    });
  }
  return {
    write: (text) => void process.stdout.write(text),
    writeError: (text) => void process.stderr.write(text),
    colour: process.stdout.isTTY === true && process.env['NO_COLOR'] === undefined,
    live: process.stdout.isTTY === true && process.env['TERM'] !== 'dumb' && process.env['CI'] === undefined,
    width: process.stdout.columns ?? 100,
  };
}
