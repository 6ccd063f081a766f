import type { Problem } from './problem.ts';

interface ProblemCount {
  readonly errors: number;
  readonly warnings: number;
}

export function countProblems(problems: readonly Problem[]): ProblemCount {
  const errors = problems.filter(({ severity }) => severity === 'error').length;
  return { errors, warnings: problems.length - errors };
}

/** `1 error`, `12 errors`: in digits, for tables and lists. */
export const counted = (count: number, noun: string): string => `${count} ${noun}${count === 1 ? '' : 's'}`;

/** "3 errors and 1 warning"; "nothing" where there is none. */
export function countInWords({ errors, warnings }: ProblemCount): string {
  const parts = [
    ...(errors > 0 ? [counted(errors, 'error')] : []),
    ...(warnings > 0 ? [counted(warnings, 'warning')] : []),
  ];
  return parts.join(' and ') || 'nothing';
}
