import { createInterface } from 'node:readline/promises';

/** Asks at the terminal; an empty answer takes what stands in brackets. */
export interface Asker {
  readonly ask: (question: string) => Promise<string>;
  readonly close: () => void;
}

/** The person gave no answer and left, as by Ctrl-D. */
export class AnswersEnded extends Error {}

/** Null where nobody sits at the terminal. */
export function terminalAsker(): Asker | null {
  if (process.stdin.isTTY !== true || process.stdout.isTTY !== true) return null;
  const lines = createInterface({ input: process.stdin, output: process.stdout });
  const left = new Promise<never>((_, reject) => {
    lines.once('close', () => reject(new AnswersEnded('no further answers')));
  });
  // Closing without an open question is no fault.
  left.catch(() => undefined);
  return { ask: (question) => Promise.race([lines.question(question), left]), close: () => lines.close() };
}
