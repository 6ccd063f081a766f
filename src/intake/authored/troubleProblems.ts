import { makeProblem } from '../../problems/makeProblem.ts';
import type { Problem } from '../../problems/problem.ts';
import { exampleFor } from './answerExamples.ts';
import type { PlaceOf } from './places.ts';
import { asFound, dotted, valueAt, type Block } from './tree.ts';
import type { Trouble } from './trouble.ts';

/** Troubles as problems, each at the place where the answer stands or should stand. */
export function troubleProblems(troubles: readonly Trouble[], tree: Block, placeOf: PlaceOf): Problem[] {
  return troubles.map(({ kind, path, expected, found, cure, at }) =>
    makeProblem(kind, placeOf(path, at ?? 'value'), {
      expected,
      found: found ?? (cure === null ? asFound(valueAt(tree, path)) || null : null),
      cure: cure === null ? addKey(path, tree) : `${cure}${shownBy(kind, path, tree)}`,
    }),
  );
}

/** Where words stand in the place of a block or a list, a line that can be taken. */
function shownBy(kind: Trouble['kind'], path: Trouble['path'], tree: Block): string {
  const typed = valueAt(tree, path);
  if (kind !== 'value-invalid' || typeof typed !== 'string') return '';
  const example = exampleFor(path, typed, tree);
  return example === null ? '' : ` Such as: ${example}`;
}

function addKey(path: Trouble['path'], tree: Block): string {
  const key = path.at(-1);
  const above = path.slice(0, -1);
  if (key === undefined) return 'Write the answers, one a line.';
  if (typeof key === 'number') return 'Write the entry after its dash, or remove the dash.';
  const typed = valueAt(tree, path);
  if (typed === '') return `Write the answer after "${key}:".`;
  if (typed !== undefined) return 'Answer it; this question may not stay open.';
  return above.length === 0
    ? `Add a line "${key}:" with the answer.`
    : `Add "${key}:" and its answer to ${dotted(above)}.`;
}
