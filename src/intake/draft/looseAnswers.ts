import { columns } from '../authored/columns.ts';
import { plainNoun } from '../authored/plainNoun.ts';
import { splitReport } from '../authored/frontMatter.ts';
import { fileInside, sessionFiles } from '../authored/sessionFiles.ts';
import { isBlock, isUnanswered, type Tree } from '../authored/tree.ts';
import { readWith } from '../authored/readWith.ts';
import { readYaml } from '../authored/yamlText.ts';
import type { ShotFileOptions } from '../shots/shotFile.ts';

/** What is needed to read the session of a report that is not complete yet. */
interface LooseAnswers {
  /** Empty where the report does not name its files. */
  readonly session: readonly string[];
  readonly orderSheet: string | null;
  readonly options: ShotFileOptions;
  readonly rowsInHitOrder: boolean;
  /** How many hitters the report lists. */
  readonly hitters: number;
  /** Ids of the contenders and every name that the report has for them. */
  readonly contenderNames: readonly string[];
}

/** As much of the front matter as can be used by itself; whatever else is wrong with it is not looked at. */
export function looseAnswers(file: string, text: string): LooseAnswers {
  const { yaml } = splitReport(file, text);
  const tree = yaml === null ? null : readYaml(file, yaml).tree;
  if (tree === null)
    return {
      session: [],
      orderSheet: null,
      rowsInHitOrder: true,
      options: {},
      hitters: 0,
      contenderNames: [],
    };
  const session = readWith(sessionFiles, tree['session']);
  const stated = readWith(columns, withoutEmpty(tree['columns'] ?? {}));
  const orderSheet = readWith(fileInside, tree['order_sheet']);
  const { varied, hitters } = tree;
  return {
    session: 'value' in session ? session.value : [],
    orderSheet: 'value' in orderSheet ? orderSheet.value : null,
    rowsInHitOrder: isUnanswered(tree['rows']),
    hitters: isBlock(hitters) ? Object.keys(hitters).length : 0,
    contenderNames: namesIn(tree['contenders']),
    options: {
      ...('value' in stated ? { columns: stated.value } : {}),
      ...(typeof varied === 'string' && !isUnanswered(varied) ? { varied: plainNoun(varied) } : {}),
    },
  };
}

function namesIn(contenders: Tree | undefined): readonly string[] {
  if (!isBlock(contenders)) return [];
  return Object.entries(contenders).flatMap(([id, contender]) => {
    const { label, short, match } = isBlock(contender) ? contender : {};
    return [id, label, short, ...(Array.isArray(match) ? match : [match])].filter(
      (name) => typeof name === 'string',
    );
  });
}

function withoutEmpty(tree: Tree): Tree {
  if (!isBlock(tree)) return tree;
  return Object.fromEntries(Object.entries(tree).filter(([, value]) => !isUnanswered(value)));
}
