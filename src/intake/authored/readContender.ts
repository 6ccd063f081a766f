import { sortProblems } from '../../problems/sortProblems.ts';
import type { Problem } from '../../problems/problem.ts';
import { contenderAnswers, type Contender } from './contender.ts';
import { plainId } from './plainId.ts';
import { readWith } from './readWith.ts';
import type { Block } from './tree.ts';
import { troubleProblems } from './troubleProblems.ts';
import { readYaml } from './yamlText.ts';

/** Reads `contenders/<id>.yaml`; the id is the name of the file. Null when something in it cannot be used. */
export function readContender(
  file: string,
  text: string,
): {
  readonly contender: Contender | null;
  readonly typed: Block;
  readonly problems: readonly Problem[];
} {
  const { tree, placeOf, problems } = readYaml(file, text);
  if (tree === null) return { contender: null, typed: {}, problems };
  const id = readWith(plainId, (file.split('/').at(-1) ?? '').replace(/\.ya?ml$/i, ''));
  const read = readWith(contenderAnswers, tree);
  if ('value' in id && 'value' in read) {
    return { contender: { id: id.value, ...read.value }, typed: tree, problems };
  }
  // What is wrong with the name of the file has no line in it.
  const troubles = [id, read].flatMap((result) => ('troubles' in result ? result.troubles : []));
  return {
    contender: null,
    typed: tree,
    problems: sortProblems([...problems, ...troubleProblems(troubles, tree, placeOf)]),
  };
}
