import type { ShotFile, ShotRow } from './shots/shotFile.ts';

/** A row of a session file, with the file that it stands in. */
export interface PlacedRow {
  readonly row: ShotRow;
  readonly file: string;
}

/** Rows of all files; where there are several and every row has a time, by time. */
export function inHitOrder(files: readonly ShotFile[]): readonly PlacedRow[] {
  const rows = files.flatMap(({ rows: own, file }) => own.map((row) => ({ row, file })));
  const timed = files.length > 1 && rows.every(({ row }) => row.time !== null);
  return timed ? [...rows].sort((x, y) => ((x.row.time ?? '') < (y.row.time ?? '') ? -1 : 1)) : rows;
}

/** What was hit, as the row names it; where it names nothing, the file does. */
export function clubName({ club }: ShotRow, file: string): string {
  return club ?? nameInFile(file);
}

/** The name that a file of a single contender gives it. */
export const nameInFile = (file: string): string => (file.split('/').pop() ?? file).replace(/\.[^.]+$/, '');

interface FirstRow {
  readonly name: string;
  readonly first: PlacedRow;
  readonly count: number;
}

/** Each name that `nameOf` gives, with the first row that has it and how many have. */
export function firstRows(
  rows: readonly PlacedRow[],
  nameOf: (placed: PlacedRow) => string | null,
): readonly FirstRow[] {
  const found = new Map<string, FirstRow>();
  for (const placed of rows) {
    const name = nameOf(placed);
    if (name === null) continue;
    const known = found.get(name);
    found.set(name, { name, first: known?.first ?? placed, count: (known?.count ?? 0) + 1 });
  }
  return [...found.values()];
}

/** A name as a report can write it in a list. */
export function yamlText(name: string): string {
  return `'${name.replace(/'/g, "''")}'`;
}
