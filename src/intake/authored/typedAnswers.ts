import type { Shared } from './shared.ts';
import { idsIn } from './idsIn.ts';
import { isBlock, isUnanswered, type Block, type Tree } from './tree.ts';

/** Keys that change after publication without changing what was said: what became of the report, and notes to ourselves. */
const afterwards = [
  'corrections',
  'replies',
  'status',
  'published',
  'withdrawn',
  'superseded_by',
  'aliases',
  'seen',
];

/** Answers of `shop.yaml` that count as each report's own. */
const fromShop = ['interests', 'defaults'];
const ofPages = ['units', 'locale'];

/**
 * All that a report is held to, as typed: its own answers, the build sheets it names and what the shop says for every
 * report. Neither comments, spacing, the order of keys nor keys without an answer are part of it; nor is anything
 * that the code adds, so that no later version of it can make a report look changed.
 */
export function typedAnswers(report: Block, { typed }: Pick<Shared, 'typed'>): Tree {
  const shop = Object.fromEntries(fromShop.map((key) => [key, typed?.shop[key] ?? null]));
  const { defaults } = shop;
  const named = Array.isArray(report['contenders']) ? idsIn(report['contenders']) : [];
  return plain({
    report: without(report, afterwards),
    sheets: Object.fromEntries(named.map((id) => [id, typed?.contenders.get(id) ?? null])),
    shop: isBlock(defaults) ? { ...shop, defaults: without(defaults, ofPages) } : shop,
  });
}

function without(block: Block, keys: readonly string[]): Block {
  return Object.fromEntries(Object.entries(block).filter(([key]) => !keys.includes(key)));
}

function plain(tree: Tree): Tree {
  if (typeof tree === 'string') return tree.trim().replace(/\s+/g, ' ');
  if (Array.isArray(tree)) return tree.map((own: Tree) => plain(own));
  if (!isBlock(tree)) return tree;
  const answered = Object.entries(tree)
    .map(([key, value]) => [key, plain(value)] as const)
    .filter(([, value]) => !isUnanswered(value) && !(isBlock(value) && Object.keys(value).length === 0));
  return Object.fromEntries(answered.toSorted(([x], [y]) => (x < y ? -1 : 1)));
}
