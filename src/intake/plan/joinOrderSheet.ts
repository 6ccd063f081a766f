import { makeProblem } from '../../problems/makeProblem.ts';
import type { Problem } from '../../problems/problem.ts';
import { clubName, inHitOrder, type PlacedRow } from '../placedRows.ts';
import { foldedName } from '../contenderNames.ts';
import { isMisread } from '../leftOutReadings.ts';
import type { ShotFile, ShotRow } from '../shots/shotFile.ts';
import type { OrderEntry, OrderSheet } from './readOrderSheet.ts';

export interface Joined {
  /** The files with each row's contender and round from the sheet, where the row itself has none. */
  readonly shotFiles: readonly ShotFile[];
  readonly problems: readonly Problem[];
}

/**
 * Tells by the order sheet what was hit with each shot, for a monitor that does not record it: by shot number; where
 * the file has no numbers, or counts from another one, by place. What a row says itself holds, and where the sheet
 * says otherwise that is a problem; but one name for all shots that no contender has, such as "Driver", says nothing. A sheet that lists more or fewer shots than the files is not used at all: one
 * shot off, every later one would be credited to another contender.
 *
 * @param contenderOf the contender of the report behind a name
 * @param inOrder whether the rows stand in the order of hitting
 */
export function joinOrderSheet(
  shotFiles: readonly ShotFile[],
  sheet: OrderSheet,
  contenderOf: (name: string) => string | null,
  inOrder: boolean,
): Joined {
  if (shotFiles.some(cannotBeRead)) return { shotFiles, problems: sheet.problems };
  if (sheet.problems.some(({ severity }) => severity === 'error')) return unused(shotFiles, sheet.problems);
  const all = inHitOrder(shotFiles);
  // A sheet that lists no warm-ups counts the shots of the test alone.
  const counted = sheet.entries.some(({ contender }) => contender === null);
  const rows = all.filter(({ row }) => counted || !row.warmUp);
  const matched = matchedEntries(rows, sheet.entries, inOrder);
  if ('found' in matched)
    return unused(shotFiles, [...sheet.problems, mismatch(sheet, rows.length, matched)]);
  const told = new Set(rows.map(({ row }) => (row.club === null ? null : foldedName(row.club))));
  const [forAll = null] = told.size === 1 ? told : [];
  const saysNothing = ({ club }: ShotRow): boolean =>
    club === null || (foldedName(club) === forAll && contenderOf(club) === null);
  const entryOf = new Map(rows.map(({ row }, index) => [row, matched.entries[index]]));
  const problems: Problem[] = [...sheet.problems];
  const joined = shotFiles.map((file): ShotFile => ({
    ...file,
    problems: file.problems.filter(({ kind }) => kind !== 'club-column-missing'),
    rows: file.rows.map((row): ShotRow => {
      const entry = entryOf.get(row);
      if (entry === undefined) return row;
      const own = contenderOf(clubName(row, file.file));
      if (own !== null || !saysNothing(row)) {
        const listed = entry.contender === null ? null : contenderOf(entry.contender);
        if (own !== null && listed !== null && own !== listed && !row.warmUp)
          problems.push(contradiction(row, file.file, entry));
        return { ...row, round: row.round ?? entry.round };
      }
      return {
        ...row,
        club: entry.contender ?? 'warm-up',
        warmUp: row.warmUp || entry.contender === null,
        round: row.round ?? entry.round,
        note: row.note ?? entry.note,
      };
    }),
  }));
  const filled = rows.filter(
    ({ row, file }) => saysNothing(row) && contenderOf(clubName(row, file)) === null,
  );
  if (filled.length > 0) problems.push(fromSheet(sheet, filled.length, filled[0]?.row.club ?? null));
  return { shotFiles: joined, problems };
}

/** Without the sheet nobody knows what was hit: no shot is handed on, and only the sheet's trouble is said. */
function unused(shotFiles: readonly ShotFile[], problems: readonly Problem[]): Joined {
  const shots = shotFiles.map((file, index): ShotFile => ({
    ...file,
    rows: [],
    problems: [
      ...file.problems.filter(({ kind }) => kind !== 'club-column-missing'),
      ...(index === 0 ? problems : []),
    ],
  }));
  return { shotFiles: shots, problems: shots.length === 0 ? problems : [] };
}

/** A misread cell takes no row away, and is cured by leaving out a shot, which the sheet must name first. */
const cannotBeRead = ({ problems }: ShotFile): boolean =>
  problems.some((problem) => problem.severity === 'error' && !isMisread(problem));

/** The entry of each row, in the order of the rows; else what keeps them apart. */
type Matched =
  { readonly entries: readonly OrderEntry[] } | { readonly found: string; readonly line: number | null };

function matchedEntries(
  rows: readonly PlacedRow[],
  entries: readonly OrderEntry[],
  inOrder: boolean,
): Matched {
  const numbers = rows.map(({ row }) => row.shotNo);
  const byNumber = new Map(entries.map((entry) => [entry.shot, entry]));
  const numbered = numbers.every((number) => number !== null) && new Set(numbers).size === numbers.length;
  const found = rows.flatMap(({ row }) => byNumber.get(row.shotNo ?? NaN) ?? []);
  if (numbered && found.length === rows.length && rows.length === entries.length) return { entries: found };
  const shots = `${rows.length} ${rows.length === 1 ? 'shot' : 'shots'} in the session`;
  if (rows.length !== entries.length) {
    const missing = numbered ? entries.filter(({ shot }) => !numbers.includes(shot)) : [];
    const more = numbered ? numbers.filter((number) => !byNumber.has(number ?? NaN)) : [];
    const which = [
      ...(missing.length > 0 && missing.length <= 8
        ? [`the session lacks ${missing.map(({ shot }) => shot).join(', ')}`]
        : []),
      ...(more.length > 0 && more.length <= 8 ? [`the sheet lacks ${more.join(', ')}`] : []),
    ];
    return { found: [shots, ...which].join('; '), line: missing[0]?.line ?? null };
  }
  if (!inOrder) return { found: 'rows that do not stand in hit order and have other numbers', line: null };
  const [first] = entries;
  const start = numbers[0] ?? null;
  const shifted =
    first !== undefined &&
    start !== null &&
    numbers.every(
      (number, index) => number !== null && number - start === (entries[index]?.shot ?? NaN) - first.shot,
    );
  if (shifted || numbers.every((number) => number === null)) return { entries };
  return { found: `${shots}, under numbers that the sheet does not list`, line: null };
}

/** @param name under which the file has all of them, where it has one */
function fromSheet({ file }: OrderSheet, shots: number, name: string | null): Problem {
  return makeProblem(
    'club-from-order-sheet',
    { file },
    {
      expected: 'a session file that says what was hit',
      found: `${shots} ${shots === 1 ? 'shot' : 'shots'} ${name === null ? 'without a name' : `all named ${name}`}`,
      cure: 'Be sure that the order sheet says what was hit with each of them.',
      forReader:
        'The session file does not say what was hit; that was taken from the order sheet, shot by shot.',
    },
  );
}

function mismatch(
  { file, entries }: OrderSheet,
  rows: number,
  { found, line }: Exclude<Matched, { entries: unknown }>,
): Problem {
  const reason =
    rows === entries.length
      ? 'Give each row of the order sheet the number under which the session has the shot.'
      : 'Add a row for each shot hit beyond the plan, with what was hit; take out rows that were not hit; mark warm-up swings in the session, or list them with warm-up as contender.';
  return makeProblem(
    'order-sheet-mismatch',
    { file, line },
    {
      expected: `the shots of the session, one row each; the order sheet lists ${entries.length}`,
      found,
      cure: reason,
    },
  );
}

function contradiction(row: ShotRow, file: string, { contender, line }: OrderEntry): Problem {
  return makeProblem(
    'order-sheet-differs',
    { file, line: row.line },
    {
      expected: `${contender ?? ''}, as line ${line} of the order sheet has it`,
      found: clubName(row, file),
      cure: 'What the session file says holds. Correct the order sheet if the order was changed while hitting.',
    },
  );
}
