import { readAllRecords } from './allRecords.ts';
import { collectProblems } from './collector.ts';
import { reportUnmatchedOverrides } from './columns.ts';
import { reportCutCell } from './cutCell.ts';
import { decodeFile } from './decodeFile.ts';
import { findDelimiter } from './delimiter.ts';
import { layOut } from './layout.ts';
import { spacesJoined } from './texts.ts';
import { withTitlesAsClubs } from './titles.ts';
import { reportDamage } from './damage.ts';
import type { ShotFile, ShotFileOptions } from './shotFile.ts';
import { readRows } from './shotRows.ts';
import { gatherTables } from './table.ts';
import { reportUnusedColumns } from './unusedColumns.ts';

/** Most rows that are read. */
const mostRows = 200_000;

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
    statedDays: [],
    unknownHeadings: [],
  });

  const decoded = decodeFile(bytes, report);
  if (decoded === null) return nothing();
  const { text } = decoded;
  const wanted = new Set(
    [
      ...Object.values(options.columns ?? {}).map(({ heading }) => heading),
      options.club ?? '',
      options.varied ?? '',
    ].map((heading) => spacesJoined(heading).toLowerCase()),
  );
  const isNamed = (heading: string): boolean => heading !== '' && wanted.has(heading.toLowerCase());
  const { delimiter, readable, stated } = findDelimiter(text, isNamed);
  const found = readAllRecords(text, delimiter, isNamed);
  if (found.records.length > mostRows) {
    report('too-many-rows', {
      line: mostRows,
      expected: `at most ${mostRows} rows`,
      found: `${found.records.length} rows`,
      cure: 'split the session over several files',
    });
    return nothing();
  }
  if (!readable) {
    reportDamage(found, [], delimiter, report);
    report('header-missing', {
      line: 1,
      expected: 'a line of headings in English words, such as Club, Carry (yd), Ball speed (mph)',
      found: (text.trim().split(/[\r\n]/)[0] ?? '').slice(0, 80),
      cure: stated
        ? 'the first line states a delimiter with which no headings can be read; correct it or take it out'
        : 'export with such headings, or write a report that names the columns under "columns"',
    });
    return nothing();
  }

  if (found.changesAt !== null) {
    report('delimiter-changes', {
      line: found.changesAt,
      expected: 'one delimiter in the whole file',
      found: 'headings that can be read with another one only',
      cure: 'check the shots below this line: it was read with its own delimiter',
    });
  }
  const cut = !/[\r\n]$/.test(text);
  const layout = layOut(found.records, isNamed, cut, report);
  const { summaryLines } = layout;
  const blocks = withTitlesAsClubs(layout.blocks, report);
  const tables = gatherTables(blocks, options, cut, report);
  reportDamage(found, tables, delimiter, report);
  if (cut) reportCutCell(tables, found.records.at(-1), report);
  reportUnmatchedOverrides(blocks, options, report);
  reportUnusedColumns(blocks, isNamed, options, report);
  const rows = readRows(tables, blocks, report);
  const broken = found.unclosedQuote !== null || found.tooLong !== null;
  if (!broken && rows.shots.length === 0 && blocks.every((block) => block.rows.length === 0)) {
    report('no-shots', {
      line: blocks[0]?.line ?? 1,
      expected: 'a row for each shot below the headings',
      found: null,
      cure: 'export the session again',
    });
  }
  const [firstSummary] = summaryLines;
  if (firstSummary !== undefined) {
    report('summary-rows-ignored', {
      line: firstSummary,
      expected: 'one row for each shot',
      found: `rows of averages and the like in ${summaryLines.length === 1 ? 'line' : 'lines'} ${summaryLines.slice(0, 40).join(', ')}`,
      cure: 'nothing need be done: they are no shots and are left out',
    });
  }
  return {
    file,
    rows: rows.shots,
    columns: rows.columns,
    problems: problems(),
    setAside: [
      ...summaryLines.map((line) => ({ line, reason: 'summary' as const })),
      ...rows.repeatedLines.map(({ line, of }) => ({ line, reason: 'duplicate' as const, of })),
    ].sort((a, b) => a.line - b.line),
    statedDays: rows.statedDays,
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
