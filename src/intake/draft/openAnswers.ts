import { splitReport } from '../authored/frontMatter.ts';
import { readReport } from '../authored/readReport.ts';
import { nothingShared, type Shared } from '../authored/shared.ts';
import { dotted, isBlock, type Path, type Tree } from '../authored/tree.ts';
import { readYaml } from '../authored/yamlText.ts';
import { mustBeAnswered } from './ask.ts';

/** An answer that is still to be given, and where. */
export interface OpenAnswer {
  /** The dotted key: `contenders.alder.supplied_by`. */
  readonly key: string;
  readonly file: string;
  readonly line: number;
  readonly question: string;
  /** Whether a report cannot be published while it is open. */
  readonly must: boolean;
  /** Whether the question stands in the report, with nothing behind it. */
  readonly asked: boolean;
}

/** The answers left empty in a report, in the order of the file; also those that must be given and have no line yet. */
export function openAnswers(
  file: string,
  text: string,
  shared: Shared = nothingShared,
): readonly OpenAnswer[] {
  const { yaml } = splitReport(file, text);
  if (yaml === null) return [];
  const { tree, placeOf } = readYaml(file, yaml);
  if (tree === null) return [];
  const missing = new Map(
    readReport(file, text, shared)
      .problems.filter(({ kind }) => kind === 'key-missing' || kind === 'interests-missing')
      .map((problem) => [problem.columnName ?? '', problem]),
  );
  const lines = yaml.split('\n');
  const empty = emptyPaths(tree, []).map((path): OpenAnswer => {
    const key = dotted(path);
    const line = placeOf(path, 'key').line ?? 1;
    const words =
      questionAt(lines, line, String(path.at(-1))) ??
      commentAbove(lines, placeOf(path.slice(0, -1), 'key').line ?? 1) ??
      missing.get(key)?.expected ??
      '';
    return { key, file, line, question: words, must: missing.has(key) || isOpenUnit(path), asked: true };
  });
  const shown = new Set(empty.map(({ key }) => key));
  const elsewhere = [...missing.values()]
    .filter(({ columnName }) => ![...shown].some((key) => `${key}.`.startsWith(`${columnName ?? ''}.`)))
    .map(({ columnName, line, expected }): OpenAnswer => ({
      key: columnName ?? '',
      file,
      line: line ?? 1,
      question: expected,
      must: true,
      asked: false,
    }));
  return [...empty, ...elsewhere].sort((a, b) => a.line - b.line);
}

/**
 * Whether a report is a draft with a question that must be answered still open: what else is wrong with it can wait,
 * and must not keep other reports from being published. A question that is not there at all is an error of any report.
 */
export function isUnfinished(file: string, text: string, shared: Shared = nothingShared): boolean {
  const { yaml } = splitReport(file, text);
  const tree = yaml === null ? null : readYaml(file, yaml).tree;
  if (tree === null || tree['status'] !== 'draft') return false;
  return openAnswers(file, text, shared).some(({ must, asked }) => must && asked);
}

/** A draft asks for a unit only where the file cannot be used without it. */
const isOpenUnit = ([first, , last]: Path): boolean => first === 'columns' && last === 'unit';

function emptyPaths(tree: Tree, path: Path): readonly Path[] {
  if (isBlock(tree)) return Object.entries(tree).flatMap(([key, value]) => emptyPaths(value, [...path, key]));
  return typeof tree === 'string' && tree.trim() === '' ? [path] : [];
}

const isComment = (line: string | undefined): line is string => /^\s*#/.test(line ?? '');

/** The comment above a line; where there is none, that above the first line with the same key. */
function questionAt(lines: readonly string[], line: number, key: string): string | null {
  const own = commentAbove(lines, line);
  if (own !== null) return own;
  const first = lines.findIndex((text) => text.trimStart().startsWith(`${key}:`));
  return first === -1 ? null : commentAbove(lines, first + 1);
}

function commentAbove(lines: readonly string[], line: number): string | null {
  let first = line - 1;
  while (isComment(lines[first - 1])) first -= 1;
  const words = lines
    .slice(first, line - 1)
    .map((text) => text.replace(/^\s*#\s?/, '').trim())
    .join(' ')
    .replace(mustBeAnswered, '')
    .trim();
  return words === '' ? null : words;
}
