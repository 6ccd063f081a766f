import { answersAsGiven, type PlanTrouble } from '../../planning/answersAsGiven.ts';
import type { Ask, Asked } from '../../planning/ask.ts';
import { questionLine } from '../../planning/planQuestions.ts';
import type { Terminal } from '../terminal.ts';
import type { Asker } from './asker.ts';

interface Answers {
  readonly ask: Ask;
  /** What is wrong or missing so far, by its flag. */
  readonly troubles: () => readonly string[];
}

/** Answers from flags; where one is missing, from whoever sits at the terminal, else as proposed. */
export function answersFrom(asker: Asker | null, terminal: Terminal): Answers {
  const byFlag = answersAsGiven();

  const byAsking = async <T>(
    { question, proposed, choices = [], read }: Asked<T>,
    from: Asker,
  ): Promise<T> => {
    const shown = proposed === null || proposed === '' ? '' : ` [${proposed}]`;
    for (;;) {
      const typed =
        (await from.ask(`${questionLine(question)}${shown} `, choices)).trim() || (proposed ?? '');
      const reading = read(typed);
      if ('value' in reading) return reading.value;
      terminal.write(`  Expected: ${reading.expected}\n`);
    }
  };

  return {
    ask: async (asked) =>
      asked.given !== undefined || asker === null ? byFlag.ask(asked) : byAsking(asked, asker),
    troubles: () => byFlag.troubles().map(troubleLine),
  };
}

function troubleLine({ key, question, typed, expected }: PlanTrouble): string {
  if (typed === null) return `--${key} is missing. ${questionLine(question)}`;
  return `--${key}${typed === '' ? '' : ` ${typed}`}: ${expected}`;
}
