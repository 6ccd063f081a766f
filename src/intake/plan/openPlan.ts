import { isRealDate } from '../authored/answers.ts';
import type { Contender } from '../authored/contender.ts';
import { splitReport } from '../authored/frontMatter.ts';
import type { Shared } from '../authored/shared.ts';
import { isBlock, isUnanswered, valueAt, type Tree } from '../authored/tree.ts';
import { readYaml } from '../authored/yamlText.ts';
import type { NamedContender } from '../contenderNames.ts';

/** A planned test whose session has not been handed in; its other answers may still be open. */
export interface OpenPlan {
  readonly slug: string;
  /** Text of its `report.md`. */
  readonly text: string;
  /** When it was planned, ISO. */
  readonly date: string;
  readonly contenders: readonly NamedContender[];
  readonly inHitOrder: boolean;
}

/** The open plan in a report; null where it is no draft, has no dated plan, or names its session already. */
export function openPlan(
  slug: string,
  text: string,
  { contenders: sheets }: Pick<Shared, 'contenders'>,
): OpenPlan | null {
  const file = `reports/${slug}/report.md`;
  const { yaml } = splitReport(file, text);
  const tree = yaml === null ? null : readYaml(file, yaml).tree;
  if (tree === null || tree['status'] !== 'draft' || !isUnanswered(tree['session'])) return null;
  const date = valueAt(tree, ['plan', 'date']);
  if (typeof date !== 'string' || !isRealDate(date)) return null;
  return {
    slug,
    text,
    date,
    contenders: named(tree['contenders'], sheets),
    inHitOrder: isUnanswered(tree['rows']),
  };
}

function named(tree: Tree | undefined, sheets: ReadonlyMap<string, Contender | null>): NamedContender[] {
  if (Array.isArray(tree))
    return (tree as readonly Tree[]).flatMap((id) => sheets.get(typeof id === 'string' ? id : '') ?? []);
  if (!isBlock(tree)) return [];
  return Object.entries(tree).map(([id, own]) => {
    const { label, short, match } = isBlock(own) ? own : {};
    return {
      id,
      label: typeof label === 'string' ? label : id,
      ...(typeof short === 'string' && !isUnanswered(short) ? { short } : {}),
      match: texts(match),
    };
  });
}

function texts(tree: Tree | undefined): readonly string[] {
  const list: readonly Tree[] = Array.isArray(tree) ? tree : [tree ?? null];
  return list.filter((text) => typeof text === 'string');
}
