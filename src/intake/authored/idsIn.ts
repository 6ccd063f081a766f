import { isBlock, type Tree } from './tree.ts';

/** The ids of a block (`contenders`, `hitters`) or of a list of ids, whether or not their answers are right. */
export function idsIn(tree: Tree | undefined): string[] {
  if (Array.isArray(tree)) return tree.filter((id): id is string => typeof id === 'string');
  return isBlock(tree) ? Object.keys(tree) : [];
}
