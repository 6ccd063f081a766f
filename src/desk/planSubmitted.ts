import { isUnanswered } from '../intake/authored/tree.ts';
import type { PlanAnswers, PlanKey } from '../planning/planAnswers.ts';
import type { Submitted } from './submittedAnswers.ts';

/** What was proposed when the form was made, by the name of its hidden control. */
export const proposalName = (key: PlanKey): string => `proposed.${key}`;

/** Answers whose control holds what is proposed, and follows it until somebody types another one. */
export const followed: readonly PlanKey[] = ['matters', 'shots'];

const keys = [
  'varied',
  'metric',
  'matters',
  'club',
  'hitter',
  'player',
  'spread',
  'order',
  'shots',
  'expectation',
  'exclusion-rule',
  'stopping-rule',
  'warm-up',
  'title',
  'question',
  'slug',
] as const satisfies readonly PlanKey[];

/** The answers that a form gives; a control that is empty, or says what was proposed, gives none. */
export function submittedPlan(submitted: Submitted): PlanAnswers {
  const names = (submitted['answer.contender'] ?? []).map(oneLine).filter((name) => name !== '');
  const given = keys.flatMap((key) => {
    const typed = oneLine(submitted[`answer.${key}`]?.[0] ?? '');
    const isProposal = followed.includes(key) && typed === (submitted[proposalName(key)]?.[0] ?? '');
    return isUnanswered(typed) || isProposal ? [] : [[key, typed] as const];
  });
  return { ...(names.length === 0 ? {} : { contender: names }), ...Object.fromEntries(given) };
}

/** Controls of one line send no line breaks; who sends some means a blank. */
const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();
