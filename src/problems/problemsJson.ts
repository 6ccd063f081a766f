import { countProblems } from './countProblems.ts';
import { problemKinds } from './kinds.ts';
import type { Problem } from './problem.ts';
import { gravestFirst } from './sortProblems.ts';
import { visibleJson } from './visible.ts';

/** All problems for a program: `{errors, warnings, problems: [{...Problem, title}]}` in the order of the table. */
export function problemsJson(problems: readonly Problem[]): string {
  const { errors, warnings } = countProblems(problems);
  const listed = gravestFirst(problems).map((problem) => ({
    ...problem,
    title: problemKinds[problem.kind].title,
  }));
  return visibleJson(JSON.stringify({ errors, warnings, problems: listed }, null, 2));
}
