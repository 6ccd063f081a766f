import type { Contender } from './contender.ts';
import { withoutHidden } from './hiddenCharacters.ts';
import { idsIn } from './idsIn.ts';
import { asDrawn } from './lookAlikes.ts';
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

/** A contender as far as its names go; `path` leads to its answers. */
interface Named {
  readonly id: string;
  readonly path: Path;
  readonly answers: Readonly<Record<'label' | 'short' | 'match', unknown>>;
}

/**
 * Two contenders under one name could not be told apart, on the page or in the CSV. Ids, labels and short names are
 * matched in any casing and by their looks, names under `match` as raw text.
 *
 * @param sheets contenders that have a file of their own, for a report that lists them by id
 */
export function sameNames(tree: Block, sheets: ReadonlyMap<string, Contender | null> = new Map()): Trouble[] {
  const named = namedIn(tree['contenders'], sheets);
  const owners = new Map<string, { readonly id: string; readonly name: string }>();
  const troubles: Trouble[] = [];
  const claim = ({ id, path }: Named, key: string, name: unknown, spelled: string): void => {
    if (typeof name !== 'string' || name === '') return;
    const other = owners.get(spelled);
    if (other === undefined || other.id === id) {
      owners.set(spelled, { id, name });
      return;
    }
    const same = folded(other.name) === folded(name);
    troubles.push(
      invalid(
        [...path, key],
        'a name that no other contender has',
        same ? name : `${name} beside ${other.name}, which look the same`,
        `Change one of the two; ${other.id} goes by that name already.`,
      ),
    );
  };
  for (const { id } of named) owners.set(`loose ${looks(id)}`, { id, name: id });
  for (const each of named) {
    const { label, short, match } = each.answers;
    claim(each, 'label', label, `loose ${looks(String(label))}`);
    claim(each, 'short', short, `loose ${looks(String(short))}`);
    for (const name of [match ?? []].flat()) claim(each, 'match', name, `raw ${String(name)}`);
  }
  return troubles;
}

function namedIn(
  contenders: Block[string] | undefined,
  sheets: ReadonlyMap<string, Contender | null>,
): readonly Named[] {
  if (Array.isArray(contenders)) {
    return contenders.flatMap((id, index): Named[] => {
      const sheet = typeof id === 'string' ? sheets.get(id) : undefined;
      if (sheet == null) return [];
      const { label, short, match } = sheet;
      return [{ id: sheet.id, path: ['contenders', index], answers: { label, short, match } }];
    });
  }
  if (!isBlock(contenders)) return [];
  return Object.entries(contenders).map(([id, answers]) => {
    const { label, short, match } = isBlock(answers) ? answers : {};
    return { id, path: ['contenders', id], answers: { label, short, match } };
  });
}

const folded = (name: string): string => name.normalize('NFC').trim().replace(/\s+/g, ' ').toLowerCase();

const looks = (name: string): string => folded(asDrawn(withoutHidden(name)));
