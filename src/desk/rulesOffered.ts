import { isBlock, isUnanswered, valueAt, type Block, type Tree } from '../intake/authored/tree.ts';

/** Rules for leaving shots out, likeliest first: that of the plan, those that the report has by now, those of the last report. */
export function rulesOffered(tree: Block | null, last: Block | null): readonly string[] {
  const rules = [valueAt(tree ?? {}, ['plan', 'exclusion_rule']), ...rulesIn(tree), ...rulesIn(last)];
  return [
    ...new Set(
      rules.flatMap((rule) => (typeof rule === 'string' && !isUnanswered(rule) ? [rule.trim()] : [])),
    ),
  ];
}

function rulesIn(tree: Block | null): readonly (Tree | undefined)[] {
  const entries: Tree | undefined = tree?.['exclusions'];
  return Array.isArray(entries)
    ? (entries as readonly Tree[]).map((entry) => (isBlock(entry) ? entry['rule'] : undefined))
    : [];
}
