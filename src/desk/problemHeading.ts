import { countInWords, countProblems } from '../problems/countProblems.ts';
import type { Problem } from '../problems/problem.ts';

/** The heading over a list of problems: what must be put right, or only what is good to know. */
export function problemHeading(problems: readonly Problem[]): string {
  const count = countProblems(problems);
  return `${count.errors > 0 ? 'To be put right' : 'Good to know'}: ${countInWords(count)}`;
}
