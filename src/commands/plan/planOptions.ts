import type { PlanAnswers } from '../../planning/planAnswers.ts';

/** The flags of `plan` as typed; absent: not given. */
export interface PlanOptions extends PlanAnswers {
  readonly 'dry-run'?: boolean;
  readonly yes?: boolean;
}

/** The same for `parseArgs`. */
export const planFlags = {
  contender: { type: 'string', multiple: true },
  varied: { type: 'string' },
  metric: { type: 'string' },
  matters: { type: 'string' },
  club: { type: 'string' },
  hitter: { type: 'string' },
  player: { type: 'string' },
  spread: { type: 'string' },
  order: { type: 'string' },
  shots: { type: 'string' },
  seed: { type: 'string' },
  slug: { type: 'string' },
  title: { type: 'string' },
  question: { type: 'string' },
  expectation: { type: 'string' },
  'exclusion-rule': { type: 'string' },
  'stopping-rule': { type: 'string' },
  'warm-up': { type: 'string' },
  'dry-run': { type: 'boolean' },
  yes: { type: 'boolean' },
} as const;

export const planUsage = `npm run plan -- --contender NAME --contender NAME [--contender NAME ...]
  --varied head        the noun of what differs
  --metric carry       the one metric, chosen before hitting
  --matters "5 yd"     the smallest gap in it that a customer should care about
  --club driver        driver, iron or wedge
  --hitter "staff fitter"  the hitter's role, never a name
  --spread "8 yd"      standard deviation of one golfer's shots, in place of your own sessions'
  --player mid         good or mid: whose typical spread, while there are no sessions
  --order rotation     rotation, or mini-blocks-2 or mini-blocks-3 (shots a visit)
  --shots 12           with each
  --seed TEXT --slug NAME --title TEXT --question TEXT --expectation TEXT
  --exclusion-rule TEXT --stopping-rule TEXT --warm-up TEXT
  --dry-run            work it out, write nothing
  --yes                take what is proposed wherever a flag is missing`;
