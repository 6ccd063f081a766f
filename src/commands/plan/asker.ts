import { createInterface } from 'node:readline/promises';

/** Asks at the terminal; an empty answer takes what stands in brackets. */
export interface Asker {
  /** `choices`: words that answer it, where there are such; others may do too. */
  readonly ask: (question: string, choices: readonly string[]) => Promise<string>;
  readonly close: () => void;
}

/** The person gave no answer and left, as by Ctrl-D. */
export class AnswersEnded extends Error {}

const manual =
  'Enter takes what stands in brackets, Tab completes a word or shows the choices, Ctrl-C ends it.\n\n';

/**
 * Null where nobody sits at the terminal. Lines are read plainly, with the terminal's own cursor: who listens to a
 * screen reader, or works without colour, misses nothing.
 */
export function terminalAsker(): Asker | null {
  if (process.stdin.isTTY !== true || process.stdout.isTTY !== true) return null;
  let offered: readonly string[] = [];
  let isFirst = true;
  const lines = createInterface({
    input: process.stdin,
    output: process.stdout,
    completer: (typed): [string[], string] => [beginningWith(typed, offered), typed],
  });
  const left = new Promise<never>((_, reject) => {
    lines.once('close', () => reject(new AnswersEnded('no further answers')));
  });
  // Closing without an open question is no fault.
  left.catch(() => undefined);
  return {
    ask: (question, choices) => {
      if (isFirst) process.stdout.write(manual);
      isFirst = false;
      offered = choices;
      return Promise.race([lines.question(question), left]);
    },
    close: () => lines.close(),
  };
}

/** All of them where nothing is typed. */
function beginningWith(typed: string, choices: readonly string[]): string[] {
  return choices.filter((choice) => choice.startsWith(typed.trim().toLowerCase()));
}
