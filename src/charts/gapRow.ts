import type { Interval, MetricFindings } from '../findings/findings.ts';
import {
  barNumbers,
  differenceCells,
  estimateAndRange,
  rangeWords,
  tooFewShots,
} from '../prose/english/charts/ranges.ts';
import { printingOf } from '../prose/printSteps.ts';
import { toReader } from '../prose/readerUnits.ts';
import type { Telling } from '../prose/telling.ts';
import type { BarNumbers } from './endNumbers.ts';
import type { Interval as ReaderInterval, IntervalRow } from './intervalRows.ts';
import type { TurnedPair } from './turnedPair.ts';

/** A gap with its words, in the unit the reader sees. */
export interface GapRow {
  /** "88 mph, handicap 16-20", "All eight", "Another golfer". */
  readonly name: string;
  readonly estimate: number | null;
  /** The likely range; null where too little to say. */
  readonly interval: ReaderInterval | null;
  /** The gap as printed, without sign or unit: "9". May be empty. */
  readonly figure: string;
  /** What goes with it: "likely 2 to 16 yards". */
  readonly words: string;
  /** Numbers under the bar where a row is narrow; null where the words stand there too. */
  readonly printed: BarNumbers | null;
}

/** A gap as a line of a chart of intervals. */
export const asIntervalRow = (row: GapRow, setOff = false, open = false): IntervalRow => ({
  ...row,
  // A bar without a ring has numbers at its ends alone.
  printed: row.printed === null || row.estimate !== null ? row.printed : { ...row.printed, estimate: '' },
  contender: null,
  setOff,
  open,
});

/** A difference as a row of bars, with its cells in a table and its words in a description. */
interface ToldRow extends GapRow {
  readonly cells: readonly [estimate: string, lower: string, upper: string];
  readonly told: string;
}

/** How many of these rows have the one named first ahead, of those that have a difference. */
export function rowsAhead(rows: readonly GapRow[]): { readonly ahead: number; readonly of: number } {
  const found = rows.flatMap(({ estimate }) => (estimate === null ? [] : [estimate]));
  return { ahead: found.filter((estimate) => estimate > 0).length, of: found.length };
}

/** Rows as cells; the last has the range of one golfer more, which has no estimate of its own. */
export function rowCells(rows: readonly ToldRow[], another: ToldRow | null): readonly (readonly string[])[] {
  return [
    ...rows.map(({ name, cells }) => [name, ...cells]),
    ...(another === null ? [] : [[another.name, '–', ...another.cells.slice(1)]]),
  ];
}

/** A difference of a pair, found as `a` minus `b`, as a row of bars counted towards the first-named of `turned`. */
export function gapRow(
  name: string,
  gap: { readonly estimate: number | null; readonly ci: Interval | null },
  turned: TurnedPair,
  { metric, telling }: { readonly metric: MetricFindings; readonly telling: Telling },
): ToldRow {
  const read = (value: number): number => toReader(value, metric.id, telling.system);
  if (gap.estimate === null || gap.ci === null) {
    const estimate = gap.estimate === null ? null : read(turned.estimate(gap.estimate));
    return {
      name,
      estimate,
      interval: null,
      printed: null,
      figure: '',
      words: tooFewShots,
      told: tooFewShots,
      cells: ['–', '–', '–'],
    };
  }
  const printing = printingOf(metric, telling);
  const [estimate, ci] = [turned.estimate(gap.estimate), turned.ci(gap.ci)];
  const difference = { first: turned.a.label, second: turned.b.label, estimate, ci };
  const printed = barNumbers(estimate, ci, printing);
  return {
    name,
    estimate: read(estimate),
    interval: { low: read(ci[0]), high: read(ci[1]) },
    printed,
    figure: printed.estimate,
    words: rangeWords(difference, printing),
    told: estimateAndRange(difference, printing),
    cells: differenceCells(estimate, ci, printing),
  };
}
