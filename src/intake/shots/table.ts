import { isMetricId, metrics } from '../../trade/metrics.ts';
import type { Report } from './collector.ts';
import { readColumns, type Columns } from './columns.ts';
import type { Block } from './layout.ts';
import type { CsvRecord } from './records.ts';
import type { ShotFileOptions } from './shotFile.ts';

export interface TableRow extends CsvRecord {
  readonly block: Block;
}

/** Blocks with the same headings and units: their columns can be judged together. */
export interface Table {
  readonly columns: Columns;
  readonly headingLine: number;
  readonly width: number;
  readonly rows: TableRow[];
}

const keyOf = (block: Block): string =>
  JSON.stringify([
    block.headings.map(({ text }) => text),
    block.units,
    [...block.statements.units],
    block.statements.positive,
  ]);

/** Checks that a row has a cell for each heading and nothing beyond; says what is wrong where it has not. */
function fits(record: CsvRecord, block: Block, mayBeCut: boolean, report: Report): boolean {
  const width = block.headings.length;
  const { cells, line } = record;
  if (cells.length < width) {
    if (mayBeCut) {
      report('truncated-row', {
        line,
        column: cells.length,
        expected: `${width} cells and a line end`,
        found: `${cells.length} cells, then the file stops`,
        cure: 'export the session again: more shots may be missing',
      });
    } else {
      report('too-few-cells', {
        line,
        expected: `${width} cells, one for each heading`,
        found: `${cells.length}`,
        cure: 'give the row the cell it lacks, or delete the row and say so in the report',
      });
    }
    return false;
  }
  const surplus = surplusAt(cells, width);
  if (surplus < 0) return true;
  report('too-many-cells', {
    line,
    column: surplus + 1,
    expected: `${width} cells, one for each heading`,
    found: `${cells.length}; beyond the last heading stands "${(cells[surplus] ?? '').trim().slice(0, 60)}"`,
    cure: 'put quotes around a cell that holds a comma, or export without thousands marks',
  });
  return false;
}

/** The first cell beyond the headings that is not blank; -1 where there is none. */
const surplusAt = (cells: readonly string[], width: number): number =>
  cells.findIndex((cell, index) => index >= width && cell.trim() !== '');

/** Rows that are too long by accident are few; where all are, the file tells its decimals and its cells by one mark. */
const fewestForAll = 3;

/** Says once of a whole block, where it is so, that each of its rows has too many cells. */
function allTooLong({ headings, rows }: Block, report: Report): boolean {
  const [first] = rows;
  const width = headings.length;
  if (first === undefined || rows.length < fewestForAll) return false;
  if (rows.some(({ cells }) => surplusAt(cells, width) < 0)) return false;
  report('too-many-cells', {
    line: first.line,
    column: surplusAt(first.cells, width) + 1,
    expected: `${width} cells, one for each heading`,
    found: `${first.cells.length}, and too many in every one of the ${rows.length} rows`,
    cure: 'if the numbers have commas as decimal marks, export the session with decimal points, or with semicolons between the cells; else put quotes around cells that hold a comma',
  });
  return true;
}

/** Gathers the blocks of a file into tables; rows that do not fit their headings are refused and left out. */
export function gatherTables(
  blocks: readonly Block[],
  options: ShotFileOptions,
  cut: boolean,
  report: Report,
): readonly Table[] {
  const tables = new Map<string, Table>();
  const lastBlock = blocks.findLast((block) => block.rows.length > 0);
  for (const block of blocks) {
    for (const { of, line } of block.statements.conflicts) {
      report('unit-contradiction', {
        line,
        expected: 'one unit for each quantity',
        found: `two units of ${isMetricId(of) ? metrics[of].name : of}`,
        cure: 'state the unit once',
      });
    }
    const key = keyOf(block);
    const table = tables.get(key) ?? {
      columns: readColumns(block, options, report),
      headingLine: block.line,
      width: block.headings.length,
      rows: [],
    };
    tables.set(key, table);
    if (allTooLong(block, report)) continue;
    for (const [index, record] of block.rows.entries()) {
      const mayBeCut = cut && block === lastBlock && index === block.rows.length - 1;
      if (fits(record, block, mayBeCut, report)) table.rows.push({ ...record, block });
    }
  }
  return [...tables.values()];
}
