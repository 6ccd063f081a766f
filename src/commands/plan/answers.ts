import type { Terminal } from '../terminal.ts';
import type { Asker } from './asker.ts';

/** An answer that can be used, or what was expected instead. */
export type Reading<T> = { readonly value: T } | { readonly expected: string };

export interface Asked<T> {
  readonly flag: string;
  /** As given by the flag. */
  readonly given: string | undefined;
  readonly question: string;
  /** Taken where there is no answer; null where somebody must answer. */
  readonly proposed: string | null;
  /** Words that answer it, where there are such. */
  readonly choices?: readonly string[];
  readonly read: (typed: string) => Reading<T>;
}

export interface Answers {
  /** Null where there is no answer that can be used; `troubles` then says why. */
  readonly answer: <T>(asked: Asked<T>) => Promise<T | null>;
  /** What is wrong or missing so far. */
  readonly troubles: () => readonly string[];
}

/** Answers from flags; where one is missing, from whoever sits at the terminal, else as proposed. */
export function answersFrom(asker: Asker | null, terminal: Terminal): Answers {
  const troubles: string[] = [];

  const byFlag = <T>({ flag, given, question, proposed, read }: Asked<T>): T | null => {
    const typed = given ?? proposed;
    if (typed === null) {
      troubles.push(`--${flag} is missing. ${question}`);
      return null;
    }
    const reading = read(typed.trim());
    if ('value' in reading) return reading.value;
    troubles.push(`--${flag}${typed === '' ? '' : ` ${typed}`}: ${reading.expected}`);
    return null;
  };

  const byAsking = async <T>(
    { question, proposed, choices = [], read }: Asked<T>,
    from: Asker,
  ): Promise<T> => {
    const shown = proposed === null || proposed === '' ? '' : ` [${proposed}]`;
    for (;;) {
      const typed = (await from.ask(`${question}${shown} `, choices)).trim() || (proposed ?? '');
      const reading = read(typed);
      if ('value' in reading) return reading.value;
      terminal.write(`  Expected: ${reading.expected}\n`);
    }
  };

  return {
    answer: async (asked) =>
      asked.given !== undefined || asker === null ? byFlag(asked) : byAsking(asked, asker),
    troubles: () => troubles,
  };
}
