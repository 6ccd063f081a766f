import { answers } from './answers.ts';
import { checks, landing, reach } from './checks.ts';
import { claims, limits } from './claims.ts';
import { golfers } from './golfers.ts';
import { likely } from './likely.ts';
import { order } from './order.ts';
import { rounding } from './rounding.ts';
import type { MethodSection } from './section.ts';
import { shots } from './shots.ts';
import { flight, swing } from './swing.ts';

const formulas: MethodSection = {
  id: 'formulas',
  title: 'Every method, its formula and its source',
  blocks: () => [
    'Letters mean the same throughout: m is an average, s a spread (standard deviation), n the shots, d a difference ' +
      'of two averages, and H the golfers. Of the things tested, k had five shots or more. The letters t, F and q ' +
      'stand for the points of Student’s t, of F and of the studentized range. Levels are those of one main measure.',
  ],
};

const selection: MethodSection = { id: 'selection', title: 'What is not published', blocks: () => [] };

const rates: MethodSection = { id: 'rates', title: 'How often we are wrong', blocks: () => [] };

const matters: MethodSection = {
  id: 'matters',
  title: 'What is enough to matter',
  blocks: () => [
    'The smallest difference that matters is set before hitting. A report may set its own and prints it; else these ' +
      'hold. They are our view of common practice, without a published source.',
  ],
};

const data: MethodSection = { id: 'data', title: 'The data files', blocks: () => [] };

/** The method page, in the order of its sections. */
export const methodSections: readonly MethodSection[] = [
  likely,
  shots,
  answers,
  order,
  checks,
  reach,
  landing,
  golfers,
  swing,
  flight,
  claims,
  rounding,
  formulas,
  selection,
  rates,
  matters,
  limits,
  data,
];
