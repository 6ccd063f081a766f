import { ownEnds } from '../prose/english/charts/gaps.ts';
import type { ContenderName } from './contenderName.ts';
import { asIntervalRow, type GapRow } from './gapRow.ts';
import type { GapWords } from './gapWords.ts';
import { absentChart, drawnChart, type ChartWords, type MadeChart } from './madeChart.ts';
import { outwardRows, refuseOutward } from './outwardRows.ts';
import { fewerThanTwoGolfers } from '../prose/english/charts/hitters.ts';
import { oneReport } from '../prose/english/charts/meetings.ts';

export interface PooledRowsInput extends ChartWords, Omit<GapWords, 'ends'> {
  /** The one that gaps are counted towards, at the right end. */
  readonly a: ContenderName;
  readonly b: ContenderName;
  readonly each: readonly GapRow[];
  /** What a row of `each` is. */
  readonly counted: 'golfers' | 'reports';
  /** All of them combined; null where too few. */
  readonly pooled: GapRow | null;
  /** What another golfer might see, a bar without ring; null where too few golfers. */
  readonly another: GapRow | null;
  /** What the one at an end of the scale is there: "farther". */
  readonly ahead: string;
  /** Whether it is open what made the difference of the pair. */
  readonly open?: boolean;
}

/**
 * Rows of one pair's difference, a golfer or a report each, then all of them combined, then the range for another golfer. Absent under two
 * rows with a difference. Throws on numbers out of order, on another golfer without a range.
 */
export function drawPooledRows(input: PooledRowsInput): MadeChart {
  const { a, b, each, counted, pooled, another, ahead, open = false } = input;
  if (another !== null && (another.estimate !== null || another.interval === null))
    throw new Error(`${another.name}: a golfer not yet seen has a range and no estimate.`);
  const rows = [
    ...each.map((row) => asIntervalRow(row, false, open)),
    ...(pooled === null ? [] : [asIntervalRow(pooled, true, open)]),
    ...(another === null ? [] : [asIntervalRow(another, pooled === null, open)]),
  ];
  const drawing = {
    ...input,
    sections: [{ heading: null, rows }],
    ends: ownEnds(a.label, b.label, ahead),
  };
  refuseOutward(drawing);
  const drawn = each.filter(({ estimate }) => estimate !== null).length;
  if (drawn < 2) return absentChart(input, counted === 'golfers' ? fewerThanTwoGolfers : oneReport);
  return drawnChart(input, { drawn, recorded: each.length, counted }, (layout) =>
    outwardRows(drawing, layout),
  );
}
