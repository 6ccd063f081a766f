import { at } from '../../stats/at.ts';
import type { MetricId } from '../../trade/metrics.ts';
import { isMissingMark } from './cell.ts';
import type { Report } from './collector.ts';
import { reportClubsLikeSummaries } from './clubsLikeSummaries.ts';
import { decideDecimalMark } from './decimalMark.ts';
import { findRepeatedRows } from './duplicates.ts';
import { readHitters, reportHitters } from './hitters.ts';
import type { Block } from './layout.ts';
import { readMarks } from './marks.ts';
import { noSpellings, readClubs, reportNames } from './names.ts';
import type { MetricValues } from './plausibility.ts';
import { decideDateOrder, readRowTimes, statedDays } from './rowTimes.ts';
import type { ShotColumn, ShotFile, ShotRow } from './shotFile.ts';
import { readWholeNumbers } from './shotNumbers.ts';
import type { Table } from './table.ts';
import { readMetrics } from './tableRows.ts';
import { reportOddText, spacesJoined, type PlacedText } from './texts.ts';

/** All shots of a file in the order of its lines. */
interface Rows {
  readonly shots: readonly ShotRow[];
  readonly columns: ShotFile['columns'];
  /** Lines that repeat a shot, and the line of that shot. */
  readonly repeatedLines: readonly { readonly line: number; readonly of: number }[];
  readonly statedDays: ShotFile['statedDays'];
}

/** Reads the rows of all tables into shots. */
export function readRows(tables: readonly Table[], blocks: readonly Block[], report: Report): Rows {
  const mark = decideDecimalMark(tables, report);
  const order = decideDateOrder(tables, blocks, report);
  const clubs = noSpellings();
  const people = noSpellings();
  const shots: ShotRow[] = [];
  const repeatedLines: Rows['repeatedLines'][number][] = [];
  const texts: PlacedText[] = [];
  let columns: ShotFile['columns'] = {};

  for (const table of tables) {
    const repeated = findRepeatedRows(table, report);
    const all = readMetrics(table, mark, report);
    columns = withColumns(columns, all);
    const clubNames = readClubs(table, clubs, report);
    const hitters = readHitters(table, people);
    const numbers = readWholeNumbers(table, 'shot', report);
    const rounds = readWholeNumbers(table, 'round', report);
    const times = readRowTimes(table, order, report);
    const { excluded, warmUp } = readMarks(table, report);
    const [noteIndex] = table.columns.roles.get('note') ?? [];
    for (const [row, { cells, line, block }] of table.rows.entries()) {
      const of = repeated.get(row);
      if (of !== undefined) {
        repeatedLines.push({ line, of });
        continue;
      }
      const noted = noteIndex === undefined ? '' : spacesJoined(cells[noteIndex] ?? '');
      const note = isMissingMark(noted) ? null : noted;
      const values: Partial<Record<MetricId, number | null>> = {};
      for (const { column, values: column_ } of all) values[column.metric] = column_[row] ?? null;
      const club = clubNames[row] ?? null;
      const hitter = hitters[row] ?? null;
      const heading = (index: number | undefined): string | null =>
        index === undefined ? null : (block.headings[index]?.text ?? null);
      for (const [text, index] of [
        [club, table.columns.roles.get('club')?.[0]],
        [hitter, table.columns.roles.get('hitter')?.[0]],
        [note, noteIndex],
      ] as const) {
        if (text !== null && /[<&=@+-]/.test(text)) {
          texts.push({
            text,
            line,
            column: index === undefined ? null : index + 1,
            columnName: heading(index),
          });
        }
      }
      shots.push({
        club,
        hitter,
        shotNo: numbers[row] ?? null,
        round: rounds[row] ?? null,
        time: times[row] ?? null,
        note,
        excluded: at(excluded, row),
        warmUp: at(warmUp, row),
        values,
        line,
      });
    }
  }
  shots.sort((a, b) => a.line - b.line);
  reportNames('club', clubs, report);
  reportClubsLikeSummaries(shots, report);
  reportNames('hitter', people, report);
  reportHitters(
    shots.map(({ hitter }) => hitter),
    report,
  );
  reportOddText(texts, report);
  reportSetAside(shots, report);
  return { shots, columns, repeatedLines, statedDays: statedDays(blocks, order) };
}

/** The columns of a file as its first table has them; the step is the coarsest of all. */
function withColumns(columns: ShotFile['columns'], all: readonly MetricValues[]): ShotFile['columns'] {
  const next: Partial<Record<MetricId, ShotColumn>> = { ...columns };
  for (const { column, unit, step } of all) {
    const { metric, heading, index } = column;
    const known = next[metric];
    next[metric] =
      known === undefined
        ? { metric, heading, column: index + 1, unit, step, class: column.class }
        : { ...known, step: Math.max(known.step, step) };
  }
  return next;
}

/** Says what the fitter marked, and where a file names no club at all. */
function reportSetAside(shots: readonly ShotRow[], report: Report): void {
  const marked = shots.filter(({ excluded }) => excluded);
  if (marked.length > 0) {
    report(
      'shots-marked-excluded',
      { line: marked[0]?.line ?? null },
      {
        expected: 'a reason in the report for each shot that is not to be used',
        found: `${marked.length} ${marked.length === 1 ? 'shot' : 'shots'} marked, in ${marked.length === 1 ? 'line' : 'lines'} ${marked
          .slice(0, 40)
          .map(({ line }) => line)
          .join(', ')}`,
        cure: 'say in the report under "exclusions" by which rule; the shots are kept and shown',
        forReader: `${marked.length} ${marked.length === 1 ? 'shot was' : 'shots were'} marked by the fitter as not to be used.`,
      },
    );
  }
  const warm = shots.filter(({ warmUp }) => warmUp);
  if (warm.length > 0) {
    report(
      'warm-up-shots',
      { line: warm[0]?.line ?? null },
      {
        expected: 'test shots',
        found: `${warm.length} warm-up ${warm.length === 1 ? 'shot' : 'shots'}`,
        cure: 'nothing need be done: warm-ups are not counted',
        forReader: `${warm.length} warm-up ${warm.length === 1 ? 'shot in the file is' : 'shots in the file are'} not counted.`,
      },
    );
  }
  if (shots.length > 0 && shots.every(({ club }) => club === null)) {
    report(
      'club-column-missing',
      {},
      {
        expected: 'a column headed Club, or a line such as "Club: Head A" above the headings',
        found: null,
        cure: 'name the file under "match" of its contender; if several were hit, list what was hit with each shot in an order sheet and name that under order_sheet',
      },
    );
  }
}
