import type { PlanStanding } from '../findings/findings.ts';
import { dateInWords } from './date.ts';

/**
 * When the plan was written, as the list of conditions prints it; null where it was not said.
 *
 * @param stated the day the shop gives for its plan
 */
export function plannedInWords(plan: PlanStanding, stated: string | undefined): string | null {
  const day = stated === undefined ? 'no day' : dateInWords(stated);
  switch (plan) {
    case 'on-record':
      return 'yes, the plan was on record before the session';
    case 'stated':
      return `the shop states that it was, on ${day}; no record shows it`;
    case 'changed':
      return 'no, the plan on record was another one';
    case 'afterwards':
      return `no, the plan is of ${day}, not before the session`;
    case 'not-said':
      return null;
  }
}
