import { isSummaryWord } from './summaryWords.ts';
import { readCell } from './cell.ts';
import type { Report } from './collector.ts';
import type { Heading } from './heading.ts';
import { readHeaderRow, readUnitsRow, type IsNamed, type UnitsRowCell } from './headerRow.ts';
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

export interface Layout {
  readonly blocks: readonly Block[];
  /** Lines of rows that sum up others. */
  readonly summaryLines: readonly number[];
}

type Open = { -readonly [Key in keyof Block]: Block[Key] } & { rows: CsvRecord[]; statements: Statements };

const isBlank = (cells: readonly string[]): boolean => cells.every((cell) => cell.trim() === '');
const isInstruction = (cells: readonly string[]): boolean =>
  /^"?sep=/i.test((cells[0] ?? '').trim()) && isBlank(cells.slice(1));
const isComment = (cells: readonly string[]): boolean => /^(?:#\s|\/\/)/.test((cells[0] ?? '').trimStart());

/** Cells that are filled, outer spaces off. */
const filledCells = (cells: readonly string[]): readonly string[] =>
  cells.map((cell) => cell.trim()).filter((cell) => cell !== '');

const columnOf = (headings: readonly Heading[], role: 'shot' | 'club' | 'time'): number =>
  headings.findIndex(({ meaning }) => meaning.kind === 'role' && meaning.role === role);

/** Whether a record holds a reading or a shot number: then it must be read as a shot or refused. */
function holdsNumber(cells: readonly string[], headings: readonly Heading[]): boolean {
  return cells.some((cell, index) => {
    const meaning = headings[index]?.meaning;
    if (meaning === undefined || !/\d/.test(cell)) return false;
    const counts =
      meaning.kind === 'metric' ||
      meaning.kind === 'ambiguous' ||
      (meaning.kind === 'role' && meaning.role === 'shot');
    return counts && readCell(cell).kind === 'number';
  });
}

/** A line between two blocks that belongs to the one below: no shot of the one above. */
function standsAbove(cells: readonly string[], block: Open): boolean {
  const filled = filledCells(cells);
  const width = block.headings.length;
  if (!holdsNumber(cells, block.headings)) return cells.length < width || 2 * filled.length < width;
  if (filled.length > 2) return false;
  const clubs = columnOf(block.headings, 'club');
  const first = spacesJoined(filled[0] ?? '').toLowerCase();
  const isClub = block.rows.some((row) => spacesJoined(row.cells[clubs] ?? '').toLowerCase() === first);
  return width >= 4 && !/^[\d#]/.test(first) && !isClub;
}

/** A line of one or two texts, too short for a row and without a number where a number would stand. */
function isRemark(cells: readonly string[], block: Open): boolean {
  const filled = filledCells(cells);
  if (holdsNumber(cells, block.headings) || filled.length > 2) return false;
  return filled.length === 1 || (cells.length < block.headings.length && block.headings.length >= 4);
}

/** Where the shot number stands, or a column without a name in front of it. */
function isSummary(cells: readonly string[], headings: readonly Heading[]): boolean {
  return headings.some(({ text, meaning }, index) => {
    const names =
      (meaning.kind === 'role' && ['shot', 'time', 'round'].includes(meaning.role)) || text === '';
    return names && isSummaryWord(cells[index] ?? '');
  });
}

/**
 * Sorts the records of a file into blocks, each under its line of headings. Blank rows, repeated headings, units rows,
 * titles and instruction lines are no shots; whatever may be one stays in a block.
 */
export function layOut(
  records: readonly CsvRecord[],
  isNamed: IsNamed,
  cut: boolean,
  report: Report,
): Layout {
  const headers = new Map<number, readonly Heading[]>();
  for (const [index, { cells }] of records.entries()) {
    const headings = readHeaderRow(cells, isNamed);
    if (headings !== null) headers.set(index, headings);
  }
  const lastHeader = [...headers.keys()].at(-1) ?? -1;
  const blocks: Open[] = [];
  const summaryLines: number[] = [];
  let block: Open | null = null;
  let above: CsvRecord[] = [];
  let awaitsUnits = false;
  let skipTo = 0;

  for (const [index, record] of records.entries()) {
    const { cells, line } = record;
    if (index < skipTo || isBlank(cells) || isInstruction(cells)) continue;
    const headings = headers.get(index);
    if (headings !== undefined) {
      const statements = readStatements(above);
      const known: Open | undefined = blocks.at(-1);
      const same = known !== undefined && signature(known.headings) === signature(headings) ? known : null;
      const alone = above.length === 0 ? null : aloneOn(above.at(-1)?.cells ?? []);
      block = {
        headings,
        line,
        units: null,
        statements: same === null ? statements : withInherited(statements, same.statements),
        club: statements.club ?? (above.length === 0 ? (same?.club ?? null) : null),
        hitter: statements.hitter ?? same?.hitter ?? null,
        bareTitle: statements.club === null ? alone : null,
        rows: [],
      };
      blocks.push(block);
      above = [];
      awaitsUnits = true;
      continue;
    }
    if (block === null) {
      above.push(record);
      continue;
    }
    if (awaitsUnits) {
      awaitsUnits = false;
      const units = readUnitsRow(cells);
      if (units !== null) {
        block.units = units;
        continue;
      }
    }
    if (isSummary(cells, block.headings)) {
      summaryLines.push(line);
      continue;
    }
    const keyed = readKeyLine(cells);
    if (keyed !== null && !holdsNumber(cells, block.headings)) {
      above.push(record);
      if (keyed.key === 'club') block = continued(blocks, block, { club: keyed.value });
      if (keyed.key === 'hitter') block = continued(blocks, block, { hitter: keyed.value });
      continue;
    }
    if (index < lastHeader) {
      // Everything from here to the next headings may be the lines above them.
      let next = index;
      while (next < records.length && !headers.has(next) && next - index < 40) {
        const ahead: readonly string[] = records[next]?.cells ?? [];
        if (!isBlank(ahead) && !isInstruction(ahead) && !standsAbove(ahead, block)) break;
        next += 1;
      }
      if (headers.has(next)) {
        above.push(
          ...records.slice(index, next).filter((each) => !isBlank(each.cells) && !isInstruction(each.cells)),
        );
        skipTo = next;
        continue;
      }
    }
    above = [];
    const filled = filledCells(cells);
    const clubColumn = columnOf(block.headings, 'club');
    const isLast = index === records.length - 1;
    const [only = ''] = filled;
    if (
      filled.length === 1 &&
      (cells[clubColumn] ?? '').trim() === only &&
      cells.length >= block.headings.length
    ) {
      let next = index + 1;
      while (next < records.length && isBlank(records[next]?.cells ?? [])) next += 1;
      const following = records[next];
      if (
        following !== undefined &&
        !headers.has(next) &&
        (following.cells[clubColumn] ?? '').trim() === ''
      ) {
        block = continued(blocks, block, { club: spacesJoined(only) });
        continue;
      }
    } else if (isRemark(cells, block) && !(isLast && cut)) {
      if (!isComment(cells)) {
        report(
          'text-line-ignored',
          { line },
          {
            expected: 'a row with one cell for each heading',
            found: filled.join(', '),
            cure: 'nothing need be done if this line is a remark; if it is a shot, give it all its cells',
          },
        );
      }
      continue;
    }
    block.rows.push(record);
  }
  return { blocks, summaryLines };
}

const signature = (headings: readonly Heading[]): string => headings.map(({ text }) => text).join('\u0001');

function aloneOn(cells: readonly string[]): string | null {
  const filled = filledCells(cells);
  return filled.length === 1 && !(filled[0] ?? '').includes(':') ? spacesJoined(filled[0] ?? '') : null;
}

/** A unit stated once holds for later blocks with the same headings, until another is stated. */
function withInherited(own: Statements, earlier: Statements): Statements {
  return {
    ...own,
    units: new Map([...earlier.units, ...own.units]),
    positive: own.positive ?? earlier.positive,
  };
}

function continued(blocks: Open[], block: Open, title: Partial<Pick<Block, 'club' | 'hitter'>>): Open {
  const next: Open = { ...block, ...title, bareTitle: null, rows: [] };
  blocks.push(next);
  return next;
}
