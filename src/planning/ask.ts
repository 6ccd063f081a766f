import type { PlanAnswers, PlanKey } from './planAnswers.ts';
import { planQuestions, type PlanQuestion } from './planQuestions.ts';
import type { Reading } from './reading.ts';

/** One question of a plan, and how its answer is read. */
export interface Asked<T> {
  readonly key: PlanKey;
  /** As it was given beforehand; absent where it was not. */
  readonly given: string | undefined;
  readonly question: PlanQuestion;
  /** Taken where there is no answer; null where somebody must answer. */
  readonly proposed: string | null;
  /** Words that answer it, where there are such. */
  readonly choices?: readonly string[];
  readonly read: (typed: string) => Reading<T>;
}

/** Questions that have one wording, and whose answer is given in one text. */
type PlainKey = 'varied' | 'metric' | 'club' | 'hitter' | 'player' | 'order' | 'shots' | 'expectation';

/** Asks one of these by its key. */
export const askPlainly =
  (answers: PlanAnswers, ask: Ask) =>
  <T>(key: PlainKey, how: Pick<Asked<T>, 'proposed' | 'choices' | 'read'>): Promise<T | null> =>
    ask({ key, given: answers[key], question: planQuestions[key], ...how });

/** Gives the answer to a question; null where there is none that can be used. */
export type Ask = <T>(asked: Asked<T>) => Promise<T | null>;
