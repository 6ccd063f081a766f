import { sortProblems } from '../../problems/sortProblems.ts';
import type { Problem } from '../../problems/problem.ts';
import type { PlaceOf } from './places.ts';
import { completeShop, shopAnswers, type Shop } from './shop.ts';
import { readWith } from './readWith.ts';
import type { Block } from './tree.ts';
import { troubleProblems } from './troubleProblems.ts';
import { readYaml } from './yamlText.ts';

/** Reads `shop.yaml`. The shop is null when something in it cannot be used. */
export function readShop(
  file: string,
  text: string,
): {
  readonly shop: Shop | null;
  readonly typed: Block;
  readonly placeOf: PlaceOf;
  readonly problems: readonly Problem[];
} {
  const { tree, placeOf, problems } = readYaml(file, text);
  if (tree === null) return { shop: null, typed: {}, placeOf, problems };
  const read = readWith(shopAnswers, tree);
  if ('value' in read) return { shop: completeShop(read.value), typed: tree, placeOf, problems };
  return {
    shop: null,
    typed: tree,
    placeOf,
    problems: sortProblems([...problems, ...troubleProblems(read.troubles, tree, placeOf)]),
  };
}
