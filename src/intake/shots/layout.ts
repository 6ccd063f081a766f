import { at } from '../../stats/at.ts';
import type { Report } from './collector.ts';
import type { Heading } from './heading.ts';
import { readHeaderRow, readUnitsRow, type IsNamed, type UnitsRowCell } from './headerRow.ts';
import {
  clubColumn,
  filledCells,
  holdsNumber,
  isBlank,
  isComment,
  isInstruction,
  isRemark,
  isSummary,
  standsAbove,
} from './lineKinds.ts';
import type { CsvRecord } from './records.ts';
import { readKeyLine, readStatements, type Statements } from './statements.ts';
import { spacesJoined } from './texts.ts';

/** One line of headings with everything that stands under it, up to the next title or line of headings. */
export interface Block {
  readonly headings: readonly Heading[];
  readonly line: number;
  readonly units: readonly UnitsRowCell[] | null;
  readonly statements: Statements;
  /** Club and hitter named above the rows rather than in them. */
  readonly club: string | null;
  readonly hitter: string | null;
  /** A title that stands alone on its line and may be a club's name. */
  readonly bareTitle: string | null;
  readonly rows: readonly CsvRecord[];
}

interface Layout {
  readonly blocks: readonly Block[];
  /** Lines of rows that sum up others. */
  readonly summaryLines: readonly number[];
}

type Open = Omit<Block, 'rows'> & { readonly rows: CsvRecord[] };

/** How many lines between two blocks are looked at together. */
const longestPreamble = 40;

const signature = (headings: readonly Heading[]): string => headings.map(({ text }) => text).join('\u0001');

const saysNothing = ({ cells }: CsvRecord): boolean => isBlank(cells) || isInstruction(cells);

function aloneOn(cells: readonly string[]): string | null {
  const [only, more] = filledCells(cells);
  return only === undefined || more !== undefined || only.includes(':') ? null : spacesJoined(only);
}

/** Opens a block; what was stated once holds for later blocks with the same headings, until it is stated anew. */
function openBlock(
  headings: readonly Heading[],
  line: number,
  above: readonly CsvRecord[],
  before: Block | undefined,
): Open {
  const stated = readStatements(above);
  const same = before !== undefined && signature(before.headings) === signature(headings) ? before : null;
  const statements =
    same === null
      ? stated
      : {
          ...stated,
          units: new Map([...same.statements.units, ...stated.units]),
          positive: stated.positive ?? same.statements.positive,
        };
  const last = above.at(-1)?.cells ?? [];
  return {
    headings,
    line,
    // Units stand below the headings as a rule; a row of as many cells right above them is read too.
    units: last.length >= headings.length && headings.length > 1 ? readUnitsRow(last) : null,
    statements,
    club: stated.club ?? (above.length === 0 ? (same?.club ?? null) : null),
    hitter: stated.hitter ?? same?.hitter ?? null,
    bareTitle: stated.club === null ? aloneOn(last) : null,
    rows: [],
  };
}

/**
 * Sorts the records of a file into blocks, each under its line of headings. Blank rows, repeated headings, units rows,
 * titles and instruction lines are no shots; whatever may be one stays in a block.
 *
 * @param cut whether the last record has no line end
 */
export function layOut(
  records: readonly CsvRecord[],
  isNamed: IsNamed,
  cut: boolean,
  report: Report,
): Layout {
  const headers = findHeaders(records, isNamed);
  const lastHeader = [...headers.keys()].at(-1) ?? -1;
  const blocks: Open[] = [];
  const summaryLines: number[] = [];
  let above: CsvRecord[] = [];
  let awaitsUnits = false;
  const retitled = (block: Open, title: Partial<Pick<Block, 'club' | 'hitter'>>): void => {
    blocks.push({ ...block, ...title, bareTitle: null, rows: [] });
  };

  for (let index = 0; index < records.length; index += 1) {
    const record = records[index];
    if (record === undefined || saysNothing(record)) continue;
    const { cells, line } = record;
    const block = blocks.at(-1);
    const headings = headers.get(index);
    if (headings !== undefined) {
      blocks.push(openBlock(headings, line, above, block));
      above = [];
      awaitsUnits = true;
      continue;
    }
    if (block === undefined) {
      above.push(record);
      continue;
    }
    const units = awaitsUnits ? readUnitsRow(cells) : null;
    awaitsUnits = false;
    if (units !== null) {
      blocks.splice(-1, 1, { ...block, units });
      continue;
    }
    if (isSummary(cells, block)) {
      summaryLines.push(line);
      continue;
    }
    const keyed = holdsNumber(cells, block) ? null : readKeyLine(cells);
    if (keyed !== null) {
      above.push(record);
      if (keyed.key === 'club') retitled(block, { club: keyed.value });
      if (keyed.key === 'hitter') retitled(block, { hitter: keyed.value });
      continue;
    }
    const next = index < lastHeader ? headerBehind(records, index, headers, block) : null;
    if (next !== null) {
      above.push(...records.slice(index, next).filter((each) => !saysNothing(each)));
      index = next - 1;
      continue;
    }
    above = [];
    const club = clubAlone(records, index, headers, block);
    if (club !== null) retitled(block, { club });
    else if (isRemark(cells, block) && !(cut && index === records.length - 1)) reportRemark(record, report);
    else block.rows.push(record);
  }
  return { blocks, summaryLines };
}

function findHeaders(
  records: readonly CsvRecord[],
  isNamed: IsNamed,
): ReadonlyMap<number, readonly Heading[]> {
  const headers = new Map<number, readonly Heading[]>();
  for (const [index, { cells }] of records.entries()) {
    const headings = readHeaderRow(cells, isNamed);
    if (headings !== null) headers.set(index, headings);
  }
  return headers;
}

/** The line of headings that everything from here on may stand above; null where a shot comes first. */
function headerBehind(
  records: readonly CsvRecord[],
  index: number,
  headers: ReadonlyMap<number, unknown>,
  block: Block,
): number | null {
  for (let next = index; next - index < longestPreamble; next += 1) {
    const record = records[next];
    if (record === undefined) return null;
    if (headers.has(next)) return next;
    if (!saysNothing(record) && !standsAbove(record.cells, block)) return null;
  }
  return null;
}

/** A club's name on a row of its own, before rows that name none. */
function clubAlone(
  records: readonly CsvRecord[],
  index: number,
  headers: ReadonlyMap<number, unknown>,
  { headings }: Block,
): string | null {
  const { cells } = at(records, index);
  const clubs = clubColumn(headings);
  const [only, more] = filledCells(cells);
  if (only === undefined || more !== undefined || cells.length < headings.length) return null;
  if ((cells[clubs] ?? '').trim() !== only) return null;
  let next = index + 1;
  while (next < records.length && isBlank(records[next]?.cells ?? [])) next += 1;
  const following = records[next];
  if (following === undefined || headers.has(next)) return null;
  return (following.cells[clubs] ?? '').trim() === '' ? spacesJoined(only) : null;
}

function reportRemark({ cells, line }: CsvRecord, report: Report): void {
  if (isComment(cells)) return;
  report('text-line-ignored', {
    line,
    expected: 'a row with one cell for each heading',
    found: filledCells(cells).join(', ').slice(0, 80),
    cure: 'nothing need be done if this line is a remark; if it is a shot, give it all its cells',
  });
}
