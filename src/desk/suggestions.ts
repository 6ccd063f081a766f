import { splitReport } from '../intake/authored/frontMatter.ts';
import { isBlock, isUnanswered, valueAt, type Block, type Path, type Tree } from '../intake/authored/tree.ts';
import { readYaml } from '../intake/authored/yamlText.ts';
import { composedNames } from '../site/composedNames.ts';
import { openContentFolder } from '../site/contentFiles.ts';
import type { AnswerField } from './answerFields.ts';

/** Answers that are offered for a field, likeliest first. */
export type Suggestions = (field: AnswerField) => readonly string[];

/** Answers that are this report's own: what another one said of them is no help. */
const ownAnswers: ReadonlySet<string> = new Set([
  'title',
  'date',
  'question',
  'short',
  'label',
  'expectation',
]);

/** The answers of the newest other report in a content folder; none where there is no other. */
export function suggestionsOf(root: string, slug: string): Suggestions {
  const last = newestOther(root, slug);
  return last === null ? () => [] : (field) => answersFor(field, last);
}

/** The answers of the newest other report in a content folder; null where there is no other. */
export function newestOther(root: string, slug: string): Block | null {
  const folder = composedNames(openContentFolder(root));
  const others = folder
    .folders('reports')
    .filter((other) => other !== slug)
    .flatMap((other) =>
      treeOf(`reports/${other}/report.md`, folder.text(`reports/${other}/report.md`).content),
    );
  const [last] = others.toSorted((a, b) => (dayOf(a) < dayOf(b) ? 1 : -1));
  return last ?? null;
}

function treeOf(file: string, text: string | null): readonly Block[] {
  if (text === null) return [];
  const { yaml } = splitReport(file, text);
  const tree = yaml === null ? null : readYaml(file, yaml).tree;
  return tree === null ? [] : [tree];
}

const dayOf = (tree: Block): string => (typeof tree['date'] === 'string' ? tree['date'] : '');

function answersFor({ path }: AnswerField, last: Block): readonly string[] {
  if (ownAnswers.has(String(path.at(-1)))) return [];
  const same = valueAt(last, path);
  const alike = waysAlike(path, last).map((way) => valueAt(last, way));
  const texts = [same, ...alike].flatMap((answer: Tree | undefined) =>
    typeof answer === 'string' && !isUnanswered(answer) ? [answer.trim()] : [],
  );
  return [...new Set(texts)];
}

/** The same question asked of the other contenders or golfers. */
function waysAlike(path: Path, tree: Block): readonly Path[] {
  const [step, , ...further] = path;
  const [first, ...rest] = step === 'same' ? ['contenders', path[1]] : [step, ...further];
  const block = tree[String(first)];
  if (!['contenders', 'hitters'].includes(String(first)) || !isBlock(block)) return [];
  return Object.keys(block).map((id) => [String(first), id, ...rest.map(String)]);
}
