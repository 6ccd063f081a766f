import { idsIn } from './idsIn.ts';
import { isBlock, type Block, type Path } from './tree.ts';
import { invalid, type Trouble } from './trouble.ts';

export const fewestContenders = 2;
export const mostContenders = 6;

/** Two to six contenders, each once. */
export function contenderCount(tree: Block): Trouble[] {
  const ids = idsIn(tree['contenders']);
  if (!isBlock(tree['contenders']) && !Array.isArray(tree['contenders'])) return [];
  const path = ['contenders'];
  const troubles: Trouble[] = ids.flatMap((id, index) =>
    ids.indexOf(id) === index
      ? []
      : [invalid([...path, index], 'each contender once', id, 'Remove one of the two entries.')],
  );
  if (ids.length < fewestContenders || ids.length > mostContenders) {
    const cure =
      ids.length < fewestContenders
        ? 'Add the contender that this one is compared with.'
        : 'Split the test into several reports; so many comparisons cannot be told apart from luck.';
    troubles.push({ ...invalid(path, 'two to six contenders', String(ids.length), cure), at: 'key' });
  }
  return troubles;
}

/**
 * Two contenders under one name could not be told apart, on the page or in the CSV. Ids, labels and short names are
 * matched in any casing, names under `match` as raw text.
 */
export function sameNames(tree: Block): Trouble[] {
  const contenders = tree['contenders'];
  if (!isBlock(contenders)) return [];
  const owners = new Map<string, string>();
  const troubles: Trouble[] = [];
  const claim = (path: Path, id: string, name: unknown, spelled: string): void => {
    if (typeof name !== 'string' || name === '') return;
    const other = owners.get(spelled);
    if (other !== undefined && other !== id) {
      const cure = `Change one of the two; ${other} goes by that name already.`;
      troubles.push(invalid(path, 'a name that no other contender has', name, cure));
    } else owners.set(spelled, id);
  };
  for (const id of Object.keys(contenders)) owners.set(`loose ${folded(id)}`, id);
  for (const [id, answers] of Object.entries(contenders)) {
    if (!isBlock(answers)) continue;
    for (const key of ['label', 'short']) {
      claim(['contenders', id, key], id, answers[key], `loose ${folded(String(answers[key]))}`);
    }
    for (const name of [answers['match'] ?? []].flat())
      claim(['contenders', id, 'match'], id, name, `raw ${String(name)}`);
  }
  return troubles;
}

const folded = (name: string): string => name.trim().replace(/\s+/g, ' ').toLowerCase();
