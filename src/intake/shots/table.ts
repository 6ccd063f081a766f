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
function fits(record: CsvRecord, block: Block, isLast: boolean, cut: boolean, report: Report): boolean {
  const width = block.headings.length;
  const { cells, line } = record;
  if (cells.length < width) {
    if (isLast && cut) {
      report(
        'truncated-row',
        { line, column: cells.length },
        {
          expected: `${width} cells and a line end`,
          found: `${cells.length} cells, then the file stops`,
          cure: 'export the session again: more shots may be missing',
        },
      );
    } else {
      report(
        'too-few-cells',
        { line },
        {
          expected: `${width} cells, one for each heading`,
          found: `${cells.length}`,
          cure: 'give the row the cell it lacks, or delete the row and say so in the report',
        },
      );
    }
    return false;
  }
  const surplus = cells.findIndex((cell, index) => index >= width && cell.trim() !== '');
  if (surplus < 0) return true;
  report(
    'too-many-cells',
    { line, column: surplus + 1 },
    {
      expected: `${width} cells, one for each heading`,
      found: `${cells.length}; beyond the last heading stands "${(cells[surplus] ?? '').trim().slice(0, 60)}"`,
      cure: 'put quotes around a cell that holds a comma, or export without thousands marks',
    },
  );
  return false;
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
      report(
        'unit-contradiction',
        { line },
        {
          expected: 'one unit for each quantity',
          found: `two units of ${isMetricId(of) ? metrics[of].name : of}`,
          cure: 'state the unit once',
        },
      );
    }
    const key = keyOf(block);
    const table = tables.get(key) ?? {
      columns: readColumns(block, options, report),
      headingLine: block.line,
      width: block.headings.length,
      rows: [],
    };
    tables.set(key, table);
    for (const [index, record] of block.rows.entries()) {
      const isLast = block === lastBlock && index === block.rows.length - 1;
      if (fits(record, block, isLast, cut, report)) table.rows.push({ ...record, block });
    }
  }
  return [...tables.values()];
}
