import type { Ask } from './ask.ts';
import type { PlanKey } from './planAnswers.ts';
import type { PlanQuestion } from './planQuestions.ts';

/** A question without an answer that can be used. */
export interface PlanTrouble {
  readonly key: PlanKey;
  readonly question: PlanQuestion;
  /** As it was typed; null where nothing was, and nothing can be proposed. */
  readonly typed: string | null;
  readonly expected: string;
}

/** Answers of which each is as it was given, else as proposed. */
interface AnswersAsGiven {
  readonly ask: Ask;
  /** What is wrong or missing so far. */
  readonly troubles: () => readonly PlanTrouble[];
  /** What was proposed so far, whether it was taken or not. */
  readonly proposals: () => ReadonlyMap<PlanKey, string>;
}

export function answersAsGiven(): AnswersAsGiven {
  const troubles: PlanTrouble[] = [];
  const proposals = new Map<PlanKey, string>();
  return {
    ask: async ({ key, given, question, proposed, read }) => {
      if (proposed !== null) proposals.set(key, proposed);
      const typed = given ?? proposed;
      const reading = read(typed?.trim() ?? '');
      if (typed !== null && 'value' in reading) return reading.value;
      const expected = 'expected' in reading ? reading.expected : 'an answer';
      troubles.push({ key, question, typed, expected });
      return null;
    },
    troubles: () => troubles,
    proposals: () => proposals,
  };
}
