import type { JudgedPair, UnjudgedPair } from './apartRow.ts';
import { apartRows } from './apartRows.ts';
import type { GapWords } from './gapWords.ts';
import { absentChart, drawnChart, type ChartWords, type MadeChart } from './madeChart.ts';
import { nothingPriced } from '../prose/english/charts/delivery.ts';

/**
 * A pair's difference in one measure of delivery, the first-named minus the second, as what it could be worth in the metric of the
 * answer. Its name names the measure: "Club speed: Heron and Wren".
 */
export interface PricedDelivery extends JudgedPair {
  readonly measure: string;
  /** Whether path or face is priced across as well, which may make another answer of it. */
  readonly acrossToo: boolean;
  /** Same: the whole interval lies within the margin. Different: off 0, and the estimate is worth the margin or more. */
  readonly judgement: 'same' | 'different' | 'cannot-tell';
}

/** A measure that has no price, or was not recorded often enough: words alone. */
interface UnpricedDelivery extends UnjudgedPair {
  readonly measure: string;
}

export type DeliveryRow = PricedDelivery | UnpricedDelivery;

export interface DeliveryInput extends ChartWords, Omit<GapWords, 'matters'> {
  /** One a measure and pair, or one a measure: its largest difference. */
  readonly rows: readonly DeliveryRow[];
  /** What a difference must be worth to count, in the unit of the rows. */
  readonly margin: number;
}

/**
 * Rows as in *How far apart?*, each difference of delivery as what it could be worth; the band is the margin. Absent if no measure
 * has a price. Throws on numbers out of order, on an answer its interval does not bear, on a table without all rows.
 */
export function drawDelivery(input: DeliveryInput): MadeChart {
  refuse(input);
  const rows = deliveryDrawn(input.rows);
  if (!rows.some(({ kind }) => kind === 'judged')) return absentChart(input, nothingPriced);
  return drawnChart(
    input,
    { drawn: rows.length, recorded: input.rows.length, counted: 'comparisons' },
    (layout) => apartRows({ ...input, pairs: rows, matters: input.margin }, layout),
  );
}

/** The most rows in one chart. */
const mostRows = 8;

const answerOf = ({ low, estimate, high }: PricedDelivery, margin: number): PricedDelivery['judgement'] => {
  if (low >= -margin && high <= margin) return 'same';
  return (low > 0 || high < 0) && Math.abs(estimate) >= margin ? 'different' : 'cannot-tell';
};

const refuse = ({ rows, margin, table }: DeliveryInput): void => {
  if (!(margin > 0 && Number.isFinite(margin)))
    throw new Error(`The margin is ${margin}; it must be more than 0.`);
  for (const row of rows) {
    if (row.kind === 'not-judged') continue;
    const { low, estimate, high, name: what } = row;
    if (![low, estimate, high].every(Number.isFinite) || low > estimate || estimate > high) {
      throw new Error(
        `${what}: low ${low}, estimate ${estimate} and high ${high} must be numbers in rising order.`,
      );
    }
    const answer = answerOf(row, margin);
    // A second price may make a small or unsure one a different swing, and leave a small one unsure; never the other way.
    const borne = row.acrossToo && answer !== 'different' && row.judgement !== 'same';
    if (row.judgement !== answer && !borne) {
      throw new Error(
        `${what}: ${low} to ${high} with a margin of ${margin} is "${answer}", not "${row.judgement}".`,
      );
    }
  }
  if (table.rows.length < rows.length) {
    throw new Error(`The table has ${table.rows.length} rows for ${rows.length}; it must hold all of them.`);
  }
};

/** How far a row reaches from 0; a row of words alone does not. */
const reach = (row: DeliveryRow): number =>
  row.kind === 'judged' ? Math.max(Math.abs(row.low), Math.abs(row.high)) : -1;

/** Up to eight rows all of them; beyond, of each measure the one that could be worth most. */
export const deliveryDrawn = (rows: readonly DeliveryRow[]): readonly DeliveryRow[] =>
  rows.length <= mostRows
    ? rows
    : [...Map.groupBy(rows, ({ measure }) => measure).values()].flatMap((same) =>
        same.toSorted((one, other) => reach(other) - reach(one)).slice(0, 1),
      );
