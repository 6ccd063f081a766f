import { problemKinds } from '../problems/kinds.ts';
import type { Problem } from '../problems/problem.ts';
import { visible } from '../problems/visible.ts';

/** A problem beside the answer that it is about: what is wrong, what is there, what to do. */
export const problemText = ({ kind, expected, found, cure, cureAtDesk = cure }: Problem): string =>
  visible(
    `${problemKinds[kind].title}: expected ${expected}; found ${found === null || found === '' ? 'nothing' : found}. ${cureAtDesk}`,
  );

/** The same with its place, where no answer stands beside it. */
export const problemTextWithPlace = (problem: Problem): string =>
  visible(
    `${[problem.file, ...(problem.line === null ? [] : [`line ${problem.line}`]), ...(problem.columnName === null ? [] : [problem.columnName])].join(', ')}. ${problemText(problem)}`,
  );
