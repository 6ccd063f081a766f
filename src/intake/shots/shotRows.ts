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
import type { Table, TableRow } from './table.ts';
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

/** Reads the rows of all tables into shots: each table column by column, and of its columns a shot a row. */
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
    const metrics = readMetrics(table, mark, report);
    columns = withColumns(columns, metrics);
    const read: TableColumns = {
      metrics,
      clubs: readClubs(table, clubs, report),
      hitters: readHitters(table, people),
      numbers: readWholeNumbers(table, 'shot', report),
      rounds: readWholeNumbers(table, 'round', report),
      times: readRowTimes(table, order, report),
      notes: readNotes(table),
      ...readMarks(table, report),
    };
    for (const [place, row] of table.rows.entries()) {
      const of = repeated.get(place);
      if (of !== undefined) {
        repeatedLines.push({ line: row.line, of });
        continue;
      }
      const shot = shotAt(place, row.line, read);
      shots.push(shot);
      texts.push(...oddTextsOf(shot, row, table));
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

/** What stands in a table, a list a column; a column that is not there has an empty list. */
interface TableColumns {
  readonly metrics: readonly MetricValues[];
  readonly clubs: readonly (string | null)[];
  readonly hitters: readonly (string | null)[];
  readonly numbers: readonly (number | null)[];
  readonly rounds: readonly (number | null)[];
  readonly times: readonly (string | null)[];
  readonly notes: readonly (string | null)[];
  readonly excluded: readonly boolean[];
  readonly warmUp: readonly boolean[];
}

function readNotes({ rows, columns }: Table): TableColumns['notes'] {
  const [index] = columns.roles.get('note') ?? [];
  if (index === undefined) return [];
  return rows.map(({ cells }) => {
    const note = spacesJoined(cells[index] ?? '');
    return isMissingMark(note) ? null : note;
  });
}

function shotAt(place: number, line: number, read: TableColumns): ShotRow {
  const values: Partial<Record<MetricId, number | null>> = {};
  for (const { column, values: own } of read.metrics) values[column.metric] = own[place] ?? null;
  return {
    club: read.clubs[place] ?? null,
    hitter: read.hitters[place] ?? null,
    shotNo: read.numbers[place] ?? null,
    round: read.rounds[place] ?? null,
    time: read.times[place] ?? null,
    note: read.notes[place] ?? null,
    excluded: at(read.excluded, place),
    warmUp: at(read.warmUp, place),
    values,
    line,
  };
}

/** The texts of a shot that may be markup or a formula, each with its place. */
function oddTextsOf(
  { club, hitter, note, line }: ShotRow,
  { block }: TableRow,
  { columns: { roles } }: Table,
): readonly PlacedText[] {
  const texts = [
    [club, roles.get('club')?.[0]],
    [hitter, roles.get('hitter')?.[0]],
    [note, roles.get('note')?.[0]],
  ] as const;
  return texts.flatMap(([text, index]): PlacedText[] => {
    if (text === null || !/[<&=@+-]/.test(text)) return [];
    if (index === undefined) return [{ text, line, column: null, columnName: null }];
    return [{ text, line, column: index + 1, columnName: block.headings[index]?.text ?? null }];
  });
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
    report('shots-marked-excluded', {
      line: marked[0]?.line ?? null,
      expected: 'a reason in the report for each shot that is not to be used',
      found: `${marked.length} ${marked.length === 1 ? 'shot' : 'shots'} marked, in ${marked.length === 1 ? 'line' : 'lines'} ${marked
        .slice(0, 40)
        .map(({ line }) => line)
        .join(', ')}`,
      cure: 'say in the report under "exclusions" by which rule; the shots are kept and shown',
      forReader: `${marked.length} ${marked.length === 1 ? 'shot was' : 'shots were'} marked by the fitter as not to be used.`,
    });
  }
  const warm = shots.filter(({ warmUp }) => warmUp);
  if (warm.length > 0) {
    report('warm-up-shots', {
      line: warm[0]?.line ?? null,
      expected: 'test shots',
      found: `${warm.length} warm-up ${warm.length === 1 ? 'shot' : 'shots'}`,
      cure: 'nothing need be done: warm-ups are not counted',
      forReader: `${warm.length} warm-up ${warm.length === 1 ? 'shot in the file is' : 'shots in the file are'} not counted.`,
    });
  }
  if (shots.length > 0 && shots.every(({ club }) => club === null)) {
    report('club-column-missing', {
      expected: 'a column headed Club, or a line such as "Club: Head A" above the headings',
      found: null,
      cure: 'name the file under "match" of its contender; if several were hit, list what was hit with each shot in an order sheet and name that under order_sheet',
    });
  }
}
