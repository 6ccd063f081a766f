import { metrics, type MetricId } from '../../trade/metrics.ts';
import { binaryKind, decodeBytes, type DecodedText } from './bytes.ts';
import { collectProblems, type Report } from './collector.ts';
import { reportUnmatchedOverrides } from './columns.ts';
import { decideDecimalMark } from './decimalMark.ts';
import { findDelimiter } from './delimiter.ts';
import { findRepeatedRows } from './duplicates.ts';
import { readHitters, reportHitters } from './hitters.ts';
import { layOut, type Block } from './layout.ts';
import { readMarks } from './marks.ts';
import { noSpellings, readClubs, reportNames } from './names.ts';
import type { MetricValues } from './plausibility.ts';
import { reportDamage } from './damage.ts';
import { readRecords } from './records.ts';
import { decideDateOrder, readRowTimes } from './rowTimes.ts';
import type { ShotColumn, ShotFile, ShotFileOptions, ShotRow } from './shotFile.ts';
import { readWholeNumbers } from './shotNumbers.ts';
import { gatherTables, type Table } from './table.ts';
import { readMetrics } from './tableRows.ts';
import { isMissingMark } from './cell.ts';
import { reportOddText, spacesJoined, type PlacedText } from './texts.ts';

/** Largest file in bytes, and most rows, that are read. */
export const largestFile = 50_000_000;
export const mostRows = 200_000;

/**
 * Reads one CSV of shots. Never throws: whatever cannot be read for certain is a problem with its place, and no shot
 * is dropped, invented or changed in silence.
 */
export function readShotFile(file: string, bytes: Uint8Array, options: ShotFileOptions = {}): ShotFile {
  const { report, problems } = collectProblems(file);
  const nothing = (): ShotFile => ({
    file,
    rows: [],
    columns: {},
    problems: problems(),
    setAside: [],
    unknownHeadings: [],
  });

  const decoded = decodeFile(bytes, report);
  if (decoded === null) return nothing();
  const { text } = decoded;
  const wanted = new Set(
    [...Object.values(options.columns ?? {}).map(({ heading }) => heading), options.club ?? ''].map(
      (heading) => spacesJoined(heading).toLowerCase(),
    ),
  );
  const isNamed = (heading: string): boolean => heading !== '' && wanted.has(heading.toLowerCase());
  const { delimiter, readable, stated } = findDelimiter(text, isNamed);
  const found = readRecords(text, delimiter);
  if (found.records.length > mostRows) {
    report(
      'too-many-rows',
      { line: mostRows },
      {
        expected: `at most ${mostRows} rows`,
        found: `${found.records.length} rows`,
        cure: 'split the session over several files',
      },
    );
    return nothing();
  }
  if (!readable) {
    report(
      'header-missing',
      { line: 1 },
      {
        expected: 'a line of headings such as Club, Carry (yd), Ball speed (mph)',
        found: text.trim().slice(0, 80),
        cure: stated
          ? 'the first line states a delimiter with which no headings can be read; correct it or take it out'
          : 'export with a line of headings, or name the columns in the report under columns:',
      },
    );
    return nothing();
  }

  const cut = !/[\r\n]$/.test(text);
  const { blocks, summaryLines } = layOut(found.records, isNamed, cut, report);
  const tables = gatherTables(blocks, options, cut, report);
  reportDamage(found, tables, delimiter, report);
  reportUnmatchedOverrides(blocks, options, report);
  const rows = readRows(tables, blocks, report);
  if (rows.shots.length === 0 && blocks.every((block) => block.rows.length === 0)) {
    report(
      'no-shots',
      { line: blocks[0]?.line ?? 1 },
      {
        expected: 'a row for each shot below the headings',
        found: null,
        cure: 'export the session again',
      },
    );
  }
  const [firstSummary] = summaryLines;
  if (firstSummary !== undefined) {
    report(
      'summary-rows-ignored',
      { line: firstSummary },
      {
        expected: 'one row for each shot',
        found: `rows of averages and the like in ${summaryLines.length === 1 ? 'line' : 'lines'} ${summaryLines.slice(0, 40).join(', ')}`,
        cure: 'nothing need be done: they are no shots and are left out',
      },
    );
  }
  return {
    file,
    rows: rows.shots,
    columns: rows.columns,
    problems: problems(),
    setAside: [
      ...summaryLines.map((line) => ({ line, reason: 'summary' as const })),
      ...rows.repeatedLines.map((line) => ({ line, reason: 'duplicate' as const })),
    ].sort((a, b) => a.line - b.line),
    unknownHeadings: [
      ...new Set(
        blocks.flatMap((block) =>
          block.headings
            .filter(
              ({ text: heading, meaning }) =>
                meaning.kind === 'unknown' && heading !== '' && !isNamed(heading),
            )
            .map(({ text: heading }) => heading),
        ),
      ),
    ],
  };
}

/** Bytes to text, or null where there is none to read. */
function decodeFile(bytes: Uint8Array, report: Report): DecodedText | null {
  if (bytes.length > largestFile) {
    report(
      'file-too-large',
      {},
      {
        expected: `at most ${largestFile / 1_000_000} MB`,
        found: `${(bytes.length / 1_000_000).toFixed(1)} MB`,
        cure: 'split the session over several files',
      },
    );
    return null;
  }
  const binary = binaryKind(bytes);
  if (binary !== null) {
    report(
      'not-text',
      {},
      { expected: 'a CSV, which is plain text', found: binary, cure: 'export or save the session as CSV' },
    );
    return null;
  }
  const decoded = decodeBytes(bytes);
  if (decoded.text.trim() === '') {
    report(
      'empty-file',
      {},
      {
        expected: 'a line of headings and a row for each shot',
        found: null,
        cure: 'export the session again',
      },
    );
    return null;
  }
  if (decoded.brokenLine !== null) {
    report(
      'encoding-broken',
      { line: decoded.brokenLine },
      {
        expected: 'text in the encoding that the file states',
        found: 'bytes that are no characters',
        cure: 'export the session again, as UTF-8 if you are asked',
      },
    );
  }
  if (decoded.guessed !== null) {
    report(
      'encoding-guessed',
      {},
      {
        expected: 'UTF-8, or a mark at the start of the file that names its encoding',
        found: decoded.guessed,
        cure: `check names with accents; the file was read as ${decoded.guessed}`,
      },
    );
  }
  if (decoded.padding > 0) {
    report(
      'trailing-nul-padding',
      {},
      {
        expected: 'nothing after the last row',
        found: `${decoded.padding} empty bytes`,
        cure: 'nothing need be done if the last shot is in the file; else export it again',
      },
    );
  }
  return decoded;
}

interface Rows {
  readonly shots: readonly ShotRow[];
  readonly columns: ShotFile['columns'];
  readonly repeatedLines: readonly number[];
}

function readRows(tables: readonly Table[], blocks: readonly Block[], report: Report): Rows {
  const mark = decideDecimalMark(tables, report);
  const order = decideDateOrder(tables, blocks, report);
  const repeated = findRepeatedRows(tables, report);
  const clubs = noSpellings();
  const people = noSpellings();
  const shots: ShotRow[] = [];
  const repeatedLines: number[] = [];
  const texts: PlacedText[] = [];
  let columns: ShotFile['columns'] = {};

  for (const [at, table] of tables.entries()) {
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
      if (repeated.has(`${at} ${row}`)) {
        repeatedLines.push(line);
        continue;
      }
      const noted = noteIndex === undefined ? '' : spacesJoined(cells[noteIndex] ?? '');
      const note = noted === '' ? null : noted;
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
        excluded: excluded[row] ?? false,
        warmUp: warmUp[row] ?? false,
        values,
        line,
      });
    }
  }
  shots.sort((a, b) => a.line - b.line);
  reportNames(clubs, null, null, report);
  reportHitters(
    shots.map(({ hitter }) => hitter),
    report,
  );
  reportOddText(texts, report);
  reportSetAside(shots, report);
  return { shots, columns, repeatedLines };
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
        cure: 'say in the report under exclusions: by which rule; the shots are kept and shown',
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
        cure: 'nothing need be done: warm-ups count in no figure',
        forReader: `${warm.length} warm-up ${warm.length === 1 ? 'shot is' : 'shots are'} in the file and count in no figure.`,
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
        cure: 'say in the report which contender this file belongs to',
      },
    );
  }
}

/** Names of the metrics found, for messages. */
export const metricNames = (ids: readonly MetricId[]): string => ids.map((id) => metrics[id].name).join(', ');

export { isMissingMark };
