import type { PlanStanding } from '../findings/findings.ts';
import { fairnessStateWords, plannedSentence } from './english/fairness.ts';

const states = {
  'on-record': 'yes',
  'on-record-that-day': 'yes',
  stated: 'stated',
  changed: 'no',
  afterwards: 'no',
} as const;

/**
 * When the plan was written, as the list of conditions prints it; null where it was not said.
 *
 * @param stated the day the shop gives for its plan
 */
export function plannedInWords(plan: PlanStanding, stated: string | undefined): string | null {
  if (plan === 'not-said') return null;
  return `${fairnessStateWords[states[plan]]}: ${plannedSentence(plan, stated ?? null)}`;
}
