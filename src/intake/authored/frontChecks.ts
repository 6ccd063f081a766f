import { nearest } from './nearest.ts';
import { claimDirections } from './claims.ts';
import { interestKeys, interestQuestions, type InterestAnswers } from './interests.ts';
import { asFound, isBlock, valueAt, type Block, type Path, type Tree } from './tree.ts';
import type { Trouble } from './trouble.ts';

const fewestContenders = 2;
const mostContenders = 6;

/** The ids of a block (`contenders`, `hitters`) or of a list of ids, whether or not their answers are right. */
export function idsIn(tree: Tree | undefined): string[] {
  if (Array.isArray(tree)) return tree.filter((id): id is string => typeof id === 'string');
  return isBlock(tree) ? Object.keys(tree) : [];
}

/**
 * What one answer of the front matter says about another. Works on the answers as typed, so that these problems
 * are shown together with those of single answers.
 */
export function frontChecks(tree: Block): Trouble[] {
  return [
    ...contenderCount(tree),
    ...sameNames(tree),
    ...hitterCount(tree),
    ...statusAnswers(tree),
    ...exclusionNames(tree),
    ...claimNames(tree),
  ];
}

function contenderCount(tree: Block): Trouble[] {
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

/** Two contenders under one name could not be told apart, on the page or in the CSV. */
function sameNames(tree: Block): Trouble[] {
  const contenders = tree['contenders'];
  if (!isBlock(contenders)) return [];
  const troubles: Trouble[] = [];
  for (const key of ['label', 'short', 'match'] as const) {
    const owner = new Map<string, string>();
    for (const [id, answers] of Object.entries(contenders)) {
      const names = isBlock(answers) ? [answers[key] ?? []].flat() : [];
      for (const name of new Set(names)) {
        if (typeof name !== 'string' || name === '') continue;
        const other = owner.get(name);
        if (other !== undefined) {
          const cure = `Give it a name of its own; "${name}" is also that of ${other}.`;
          troubles.push(invalid(['contenders', id, key], 'a name that no other contender has', name, cure));
        }
        owner.set(name, id);
      }
    }
  }
  return troubles;
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
    (tree[key] ?? '') !== '' ? [] : [{ kind: 'key-missing', path: [key], expected, found: null, cure: null }];
  if (status === 'withdrawn')
    return missing('withdrawn', 'the day and the reason: {date: 2026-04-11, reason: ...}');
  if (status === 'superseded')
    return missing('superseded_by', 'the slug of the report that replaces this one');
  return [];
}

function exclusionNames(tree: Block): Trouble[] {
  return entries(tree['exclusions']).flatMap(([index, entry]) => [
    ...known(tree, 'contenders', ['exclusions', index, 'contender'], entry['contender']),
    ...known(tree, 'hitters', ['exclusions', index, 'hitter'], entry['hitter']),
  ]);
}

function claimNames(tree: Block): Trouble[] {
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

/** The three questions about money must be answered, here or in `shop.yaml`. */
export function interestChecks(tree: Block, shop: InterestAnswers): Trouble[] {
  const answered: Readonly<Record<string, string | undefined>> = {
    paid_by: shop.paidBy,
    commission_or_gifts: shop.commissionOrGifts,
    seen_before: shop.seenBefore,
  };
  const open = interestKeys.filter(
    (key) => answered[key] === undefined && (valueAt(tree, ['interests', key]) ?? '') === '',
  );
  const interests = tree['interests'];
  if (open.length === 0 || (interests !== undefined && interests !== '' && !isBlock(interests))) return [];
  if (!isBlock(interests)) {
    return [
      {
        kind: 'interests-missing',
        path: ['interests'],
        expected: `${open.join(', ')}: who paid, what was given, who saw it first`,
        found: null,
        cure: `Add a block "interests:" that answers ${open.join(', ')}; "none" and "nobody" are answers.`,
      },
    ];
  }
  return open.map((key) => ({
    kind: 'interests-missing',
    path: ['interests', key],
    expected: interestQuestions[key],
    found: null,
    cure: null,
  }));
}

function entries(list: Tree | undefined): [number, Block][] {
  if (!Array.isArray(list)) return [];
  return list.flatMap((entry: Tree, index): [number, Block][] => (isBlock(entry) ? [[index, entry]] : []));
}

const invalid = (path: Path, expected: string, found: string | null, cure: string): Trouble => ({
  kind: 'value-invalid',
  path,
  expected,
  found,
  cure,
});
