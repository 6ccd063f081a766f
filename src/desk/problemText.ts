import { problemKinds } from '../problems/kinds.ts';
import type { Problem } from '../problems/problem.ts';
import { sayOffered } from '../prose/readySentence.ts';
import { visible } from '../problems/visible.ts';

/** A problem beside the answer that it is about: what is wrong, what is there, what to do. */
export const problemText = (problem: Problem): string => {
  const { kind, expected, found, cure, cureAtDesk = cure, offered } = problem;
  const instead = offered === undefined ? cureAtDesk : `${offered.besides} ${sayOffered(offered)}`.trim();
  return visible(
    `${problemKinds[kind].title}: expected ${expected}; found ${found === null || found === '' ? 'nothing' : found}. ${instead}`,
  );
};

/** The same problem where the sentence that it offers stands by itself. */
export const withoutOffer = ({ offered, ...problem }: Problem): Problem =>
  offered === undefined ? problem : { ...problem, cure: offered.besides };

/** The same without what to do, where the page itself offers that. */
export const problemFound = ({ kind, expected, found }: Problem): string =>
  visible(
    `${problemKinds[kind].title}: expected ${expected}; found ${found === null || found === '' ? 'nothing' : found}.`,
  );

/** A problem with its place, where no answer stands beside it. */
export const problemTextWithPlace = (problem: Problem): string =>
  visible(
    `${[problem.file, ...(problem.line === null ? [] : [`line ${problem.line}`]), ...(problem.columnName === null ? [] : [problem.columnName])].join(', ')}. ${problemText(problem)}`,
  );
