import { answersAsGiven, type PlanTrouble } from './answersAsGiven.ts';
import { decidePlan, type Decided } from './decidePlan.ts';
import type { PlanAnswers, PlanKey } from './planAnswers.ts';
import type { PlanFact } from './planFact.ts';
import type { PlanSurroundings } from './planSurroundings.ts';

/** The answers of a plan weighed, without anybody to ask. */
export interface WeighedPlan {
  /** Null while `troubles` keep it from being decided. */
  readonly decided: Decided | null;
  /** What follows from the answers, as far as they go. */
  readonly facts: readonly PlanFact[];
  readonly troubles: readonly PlanTrouble[];
  /** What is taken where there is no answer. */
  readonly proposals: ReadonlyMap<PlanKey, string>;
}

export async function weighPlan(answers: PlanAnswers, surroundings: PlanSurroundings): Promise<WeighedPlan> {
  const facts: PlanFact[] = [];
  const { ask, troubles, proposals } = answersAsGiven();
  const decided = await decidePlan(answers, ask, {
    ...surroundings,
    tell: (fact) => {
      facts.push(fact);
    },
  });
  return { decided, facts, troubles: troubles(), proposals: proposals() };
}
