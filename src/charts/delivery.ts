import { notDrawn } from '../prose/english/charts/notDrawn.ts';
import { apartVariant } from './apartVariant.ts';
import type { DeliveryInput, DeliveryRow, PricedDelivery } from './deliveryInput.ts';
import { absentFigure, drawnFigure, imageName, type Figure } from './figure.ts';

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

/**
 * *Delivery check.* Was it the same swing? Rows as in *How far apart?*, each difference of delivery as what it could be worth; the band is
 * the margin. Absent if no measure has a price. Throws on numbers out of order, on an answer its interval does not bear, on a
 * table without all rows.
 */
export const deliveryChart = (input: DeliveryInput): Figure => {
  refuse(input);
  const rows = deliveryDrawn(input.rows);
  if (!rows.some(({ kind }) => kind === 'judged')) {
    return absentFigure(input, notDrawn.nothingPriced);
  }
  const drawing = { ...input, pairs: rows, matters: input.margin, name: imageName(input) };
  return drawnFigure(
    input,
    { drawn: rows.length, recorded: input.rows.length, counted: 'comparisons' },
    (variant) => apartVariant(drawing, variant),
  );
};
