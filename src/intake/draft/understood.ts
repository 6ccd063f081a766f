import { orderClass, type OrderClass } from '../../stats/orderClass.ts';
import type { MetricId } from '../../trade/metrics.ts';
import { clubName, inHitOrder, type PlacedRow } from '../placedRows.ts';
import { foldedName } from '../contenderNames.ts';
import type { ShotColumn, ShotFile } from '../shots/shotFile.ts';

/** A club or a hitter that the files name. */
export interface FoundName {
  /** As first seen. */
  readonly name: string;
  readonly spellings: readonly string[];
  readonly shots: number;
}

/** What session files say by themselves, before anybody has answered a question. */
export interface Understood {
  readonly files: readonly string[];
  /** Warm-ups not counted, shots marked as not to be used counted. */
  readonly shots: number;
  readonly markedExcluded: number;
  readonly warmUps: number;
  readonly contenders: readonly FoundName[];
  readonly hitters: readonly FoundName[];
  /** Shots without a hitter. */
  readonly nameless: number;
  readonly columns: readonly ShotColumn[];
  readonly ignoredHeadings: readonly string[];
  /** ISO dates, in order: those of the shots, else those that the files state above their headings. */
  readonly days: readonly string[];
  /** How the contenders followed one another, for each hitter (null: not named). */
  readonly orders: readonly { readonly hitter: string | null; readonly order: OrderClass }[];
}

export function understand(files: readonly ShotFile[]): Understood {
  const all = inHitOrder(files);
  const hit = all.filter(({ row }) => !row.warmUp);
  const hitterOf = ({ row }: PlacedRow): string | null => row.hitter;
  const clubOf = ({ row, file }: PlacedRow): string => clubName(row, file);
  const perHitter = Map.groupBy(hit, (placed) => {
    const hitter = hitterOf(placed);
    return hitter === null ? null : foldedName(hitter);
  });
  return {
    files: files.map(({ file }) => file),
    shots: hit.length,
    markedExcluded: hit.filter(({ row }) => row.excluded).length,
    warmUps: all.length - hit.length,
    contenders: names(hit, clubOf),
    hitters: names(hit, hitterOf),
    nameless: hit.filter((placed) => hitterOf(placed) === null).length,
    columns: [...new Map(files.flatMap(columnsOf).map((column) => [column.metric, column])).values()],
    ignoredHeadings: [...new Set(files.flatMap(({ unknownHeadings }) => unknownHeadings))],
    days: daysOf(hit, files),
    orders: [...perHitter.values()].map((rows) => ({
      hitter: rows[0] === undefined ? null : hitterOf(rows[0]),
      order: orderOf(rows, clubOf),
    })),
  };
}

function daysOf(hit: readonly PlacedRow[], files: readonly ShotFile[]): readonly string[] {
  const ofShots = hit.flatMap(({ row }) => /^\d{4}-\d{2}-\d{2}/.exec(row.time ?? '')?.[0] ?? []);
  const days = ofShots.length > 0 ? ofShots : files.flatMap(({ statedDays }) => statedDays);
  return [...new Set(days)].sort();
}

function columnsOf({ columns }: ShotFile): readonly ShotColumn[] {
  return (Object.keys(columns) as MetricId[]).flatMap((metric) => columns[metric] ?? []);
}

function names(
  rows: readonly PlacedRow[],
  nameOf: (placed: PlacedRow) => string | null,
): readonly FoundName[] {
  const found = rows.flatMap((placed) => nameOf(placed) ?? []);
  return [...Map.groupBy(found, foldedName).values()].map((own) => ({
    name: own[0] ?? '',
    spellings: [...new Set(own)],
    shots: own.length,
  }));
}

function orderOf(rows: readonly PlacedRow[], clubOf: (placed: PlacedRow) => string): OrderClass {
  const rounds = rows.map(({ row }) => row.round);
  return orderClass(
    rows.map((placed) => foldedName(clubOf(placed))),
    rounds.every((round) => round !== null) ? rounds : undefined,
  );
}
