import { problemKinds } from './kinds.ts';
import type { Problem } from './problem.ts';
import { visible } from './visible.ts';

/**
 * A problem in one line for everybody: what a reader should know, else what happened. What stands in the shop's files is
 * for the shop alone, since it may be the name of a hitter.
 */
export function problemMessage({ kind, forReader }: Pick<Problem, 'kind' | 'forReader'>): string {
  return visible(forReader ?? `${problemKinds[kind].title}.`);
}
