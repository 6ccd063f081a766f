import type { Contender } from './contender.ts';
import { contenderCount, sameNames } from './contenderChecks.ts';
import { claimNames, exclusionNames } from './referenceChecks.ts';
import { isBlock, isUnanswered, type Block } from './tree.ts';
import { invalid, type Trouble } from './trouble.ts';

/**
 * What one answer of the front matter says about another. Works on the answers as typed, so that these problems
 * are shown together with those of single answers.
 *
 * @param sheets contenders that have a file of their own
 */
export function frontChecks(tree: Block, sheets: ReadonlyMap<string, Contender | null>): Trouble[] {
  return [
    ...contenderCount(tree),
    ...sameNames(tree, sheets),
    ...hitterCount(tree),
    ...statusAnswers(tree),
    ...exclusionNames(tree),
    ...claimNames(tree),
  ];
}

function hitterCount(tree: Block): Trouble[] {
  const hitters = tree['hitters'];
  if (!isBlock(hitters) || Object.keys(hitters).length > 0) return [];
  return [
    invalid(
      ['hitters'],
      'at least one hitter',
      null,
      'Add who hit: {one: {role: staff fitter, consent: yes}}.',
    ),
  ];
}

function statusAnswers(tree: Block): Trouble[] {
  const status = tree['status'];
  const missing = (key: string, expected: string): Trouble[] =>
    !isUnanswered(tree[key]) ? [] : [{ kind: 'key-missing', path: [key], expected, found: null, cure: null }];
  if (status === 'withdrawn')
    return missing('withdrawn', 'the day and the reason: {date: 2026-04-11, reason: ...}');
  if (status === 'superseded')
    return missing('superseded_by', 'the slug of the report that replaces this one');
  return [];
}
