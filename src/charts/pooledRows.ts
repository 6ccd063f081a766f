import { ownEnds } from '../prose/english/charts/gaps.ts';
import { notDrawn } from '../prose/english/charts/notDrawn.ts';
import { absentFigure, drawnFigure, imageName, type Figure } from './figure.ts';
import type { GapRow, PooledRowsInput } from './pooledRowsInput.ts';
import type { IntervalRow } from './intervalRows.ts';
import { outwardRows, refuseOutward, type OutwardDrawing } from './outwardRows.ts';

export const gapRow = (row: GapRow, setOff = false, open = false): IntervalRow => ({
  ...row,
  // A bar without a ring has numbers at its ends alone.
  printed: row.printed === null || row.estimate !== null ? row.printed : { ...row.printed, estimate: '' },
  contender: null,
  setOff,
  open,
});

/**
 * Rows of one pair's difference, a golfer or a report each, then all of them combined, then the range for another golfer. Absent under two
 * rows with a difference. Throws on numbers out of order, on another golfer without a range.
 */
export const pooledRowsChart = (input: PooledRowsInput): Figure => {
  const { a, b, each, counted, pooled, another, ahead, open = false } = input;
  if (another !== null && (another.estimate !== null || another.interval === null))
    throw new Error(`${another.name}: a golfer not yet seen has a range and no estimate.`);
  const rows = [
    ...each.map((row) => gapRow(row, false, open)),
    ...(pooled === null ? [] : [gapRow(pooled, true, open)]),
    ...(another === null ? [] : [gapRow(another, pooled === null, open)]),
  ];
  const drawing: OutwardDrawing = {
    ...input,
    name: imageName(input),
    sections: [{ heading: null, rows }],
    ends: ownEnds(a.label, b.label, ahead),
  };
  refuseOutward(drawing);
  const drawn = each.filter(({ estimate }) => estimate !== null).length;
  if (drawn < 2)
    return absentFigure(input, counted === 'golfers' ? notDrawn.fewerThanTwoGolfers : notDrawn.oneReport);
  return drawnFigure(input, { drawn, recorded: each.length, counted }, (variant) =>
    outwardRows(drawing, variant),
  );
};
