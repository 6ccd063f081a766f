import { claimDirections } from './claims.ts';
import { idsIn } from './idsIn.ts';
import { nearest } from './nearest.ts';
import { asFound, isBlock, type Block, type Path, type Tree } from './tree.ts';
import { invalid, type Trouble } from './trouble.ts';

/** Exclusions name contenders and hitters of the report. */
export function exclusionNames(tree: Block): Trouble[] {
  return entries(tree['exclusions']).flatMap(([index, entry]) => [
    ...known(tree, 'contenders', ['exclusions', index, 'contender'], entry['contender']),
    ...known(tree, 'hitters', ['exclusions', index, 'hitter'], entry['hitter']),
  ]);
}

/** Claims name two different contenders of the report. */
export function claimNames(tree: Block): Trouble[] {
  return entries(tree['claims']).flatMap(([index, entry]) => {
    const named = [...claimDirections, 'than'].filter((key) => Object.hasOwn(entry, key));
    const same = claimDirections.find(
      (key) => entry[key] !== undefined && entry[key] !== '' && entry[key] === entry['than'],
    );
    const cure = 'Name the contender that it is compared with.';
    return [
      ...named.flatMap((key) => known(tree, 'contenders', ['claims', index, key], entry[key])),
      ...(same === undefined
        ? []
        : [invalid(['claims', index, 'than'], 'another contender', asFound(entry['than']), cure)]),
    ];
  });
}

function known(tree: Block, block: 'contenders' | 'hitters', path: Path, id: Tree | undefined): Trouble[] {
  const ids = idsIn(tree[block]);
  // Blank ids and missing blocks are reported by those who read them.
  if (typeof id !== 'string' || id === '' || ids.length === 0 || ids.includes(id)) return [];
  const near = nearest(id, ids);
  return [
    {
      kind: block === 'contenders' ? 'unknown-contender' : 'unknown-hitter',
      path,
      expected: `one of ${ids.join(', ')}`,
      found: id,
      cure: near === null ? 'Write an id as it stands above, or add it there.' : `Did you mean "${near}"?`,
    },
  ];
}

function entries(list: Tree | undefined): [number, Block][] {
  if (!Array.isArray(list)) return [];
  return list.flatMap((entry: Tree, index): [number, Block][] => (isBlock(entry) ? [[index, entry]] : []));
}
