import { checkFormulas } from './checkFormulas.ts';
import { differenceFormulas } from './differenceFormulas.ts';
import type { Formula } from './formula.ts';
import { golferFormulas } from './golferFormulas.ts';
import { modelFormulas } from './modelFormulas.ts';

/** Every method that a report may use, in the order of the method page. */
export const formulas: readonly Formula[] = [
  ...differenceFormulas,
  ...checkFormulas,
  ...golferFormulas,
  ...modelFormulas,
];
