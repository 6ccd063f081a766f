import { problemKinds } from './kinds.ts';
import type { Problem } from './problem.ts';
import { visible } from './visible.ts';

/** A problem in one line: what happened, what was expected, what stands there, what to do. */
export function problemMessage({ kind, expected, found, cure }: Problem): string {
  const there = found === null ? '' : `; found ${found === '' ? 'a blank' : found}`;
  return visible(`${problemKinds[kind].title}: expected ${expected}${there}. ${cure}`);
}
