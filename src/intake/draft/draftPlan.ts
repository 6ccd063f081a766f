import { planQuestions } from '../authored/plan.ts';
import { comment } from './ask.ts';
import { draftQuestions } from './draftQuestions.ts';
import { yamlScalar } from './yamlScalar.ts';

/** What was decided before hitting, as `npm run plan` knows it; an absent answer was not decided. */
export interface DecidedPlan {
  readonly date: string;
  readonly shotsEach: number;
  /** In words. */
  readonly order: string;
  readonly seed: string;
  readonly exclusionRule: string;
  readonly stoppingRule: string;
  readonly expectation: string | null;
  readonly warmUp: string;
}

/** The block `plan` with its questions. */
export function openPlan(): readonly string[] {
  return [
    ...comment('What was decided before hitting. Leave it empty if nothing was.'),
    'plan:',
    ...draftQuestions(planQuestions, { indent: 2 }),
  ];
}

/** The block `plan` as it was decided. */
export function decidedPlan(plan: DecidedPlan): readonly string[] {
  const line = (key: string, answer: string): string => `  ${key}: ${yamlScalar(answer)}`;
  return [
    ...comment(
      'What was decided before hitting. It is on record in ledger.json: a plan that is changed is shown as changed.',
    ),
    'plan:',
    `  date: ${plan.date}`,
    `  shots_per_contender: ${plan.shotsEach}`,
    line('order', plan.order),
    line('seed', plan.seed),
    line('exclusion_rule', plan.exclusionRule),
    line('stopping_rule', plan.stoppingRule),
    ...(plan.expectation === null ? [] : [line('expectation', plan.expectation)]),
    line('warm_up', plan.warmUp),
  ];
}
