import { splitReport } from '../authored/frontMatter.ts';
import { isBlock, isUnanswered, valueAt, type Path } from '../authored/tree.ts';
import { readYaml } from '../authored/yamlText.ts';
import { draftClasses, draftColumns } from './draftColumns.ts';
import { looseAnswers } from './looseAnswers.ts';
import type { OpenColumn } from './openColumns.ts';
import type { Understood } from './understood.ts';
import { yamlList, yamlScalar } from './yamlScalar.ts';

/** What a planned draft learns from its session. */
interface SessionFacts {
  /** Names of the files beside the report. */
  readonly session: readonly string[];
  readonly understood: Understood;
  /** The day in the name of a file, where the times do not tell it. */
  readonly dateInName: string | null;
  readonly openColumns: readonly OpenColumn[];
  /** Whether the files name what was hit and the order sheet does not fit them: then it is not used. */
  readonly withoutSheet: boolean;
}

/** A planned draft with its session filled in, and the keys that were answered. */
export interface FilledDraft {
  readonly text: string;
  readonly filled: readonly string[];
  /** Whether the line that names the order sheet was taken out. */
  readonly sheetTakenOut: boolean;
}

/**
 * Fills what a session tells into the open answers of a planned draft; every other line stays as it is. Null where the
 * front matter is written so that no line can be filled.
 */
export function withSession(file: string, text: string, facts: SessionFacts): FilledDraft | null {
  const { yaml } = splitReport(file, text);
  const read = yaml === null ? null : readYaml(file, yaml);
  if (yaml === null || read?.tree == null) return null;
  const { tree, placeOf } = read;
  const lines = text.split(/\r\n|\n/);
  const filled: string[] = [];
  // What is put below a line, by its number; the numbers count in the text as it was.
  const below = new Map<number, readonly string[]>();
  const takenOut = new Set<number>();
  const lastLine = yaml.split('\n').length - 1;
  const isThere = (path: Path): boolean => valueAt(tree, path) !== undefined;
  const lineOf = (path: Path): number => (isThere(path) ? (placeOf(path, 'key').line ?? lastLine) : lastLine);
  const put = (line: number, more: readonly string[]): void => {
    if (more.length > 0) below.set(line, [...(below.get(line) ?? []), ...more]);
  };
  const answer = (key: string, value: string): void => {
    if (isThere([key])) lines[lineOf([key]) - 1] = `${key}: ${value}`;
    else put(lastLine, [`${key}: ${value}`]);
    filled.push(key);
  };

  const { session, understood } = facts;
  answer('session', session.length === 1 ? yamlScalar(session[0] ?? '') : yamlList(session));
  const day = understood.days.length === 1 ? understood.days[0] : facts.dateInName;
  if (isUnanswered(tree['date']) && day != null && understood.days.length < 2) answer('date', day);
  if (!isThere(['columns'])) put(lineOf(['session']), draftColumns(facts.openColumns));
  if (isBlock(valueAt(tree, ['conditions', 'monitor'])) && !isThere(['conditions', 'monitor', 'columns']))
    put(lineOf(['conditions', 'monitor']), draftClasses(understood.columns));
  const [hitter, ...otherHitters] = isBlock(tree['hitters']) ? Object.keys(tree['hitters']) : [];
  const [found, ...others] = understood.hitters;
  if (hitter !== undefined && found !== undefined && otherHitters.length + others.length === 0) {
    if (!isThere(['hitters', hitter, 'match'])) {
      put(lineOf(['hitters', hitter]), [`    match: ${yamlList(found.spellings)}`]);
      filled.push(`hitters.${hitter}.match`);
    }
  }
  if (facts.withoutSheet && isThere(['order_sheet'])) {
    let line = lineOf(['order_sheet']);
    do takenOut.add(line--);
    while (/^#/.test(lines[line - 1] ?? ''));
  }

  const next = lines
    .flatMap((line, index) => [...(takenOut.has(index + 1) ? [] : [line]), ...(below.get(index + 1) ?? [])])
    .join(text.includes('\r\n') ? '\r\n' : '\n');
  const named = looseAnswers(file, next).session;
  return named.join('/') === session.join('/')
    ? { text: next, filled, sheetTakenOut: takenOut.size > 0 }
    : null;
}
