import type { Problem } from '../problems/problem.ts';
import type { PlanTrouble } from './answersAsGiven.ts';
import type { UnwritablePlan } from './plannedFiles.ts';

/** Why a plan that was decided was not recorded; nothing was written. */
export type PlanRefusal =
  | UnwritablePlan
  /** Its name is that of a report; `free` is that of none. */
  | { readonly kind: 'name-taken'; readonly name: string; readonly free: string }
  | { readonly kind: 'ledger-unreadable'; readonly problems: readonly Problem[] };

/** What became of a plan that was to be recorded. */
export type PlanRecorded =
  | { readonly kind: 'recorded'; readonly slug: string }
  | { readonly kind: 'refused'; readonly refusal: PlanRefusal }
  | { readonly kind: 'undecided'; readonly troubles: readonly PlanTrouble[] }
  /** The disk refuses. */
  | { readonly kind: 'not-written'; readonly why: string };
