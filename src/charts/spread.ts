import { notDrawn } from '../prose/english/charts/notDrawn.ts';
import { contenderMark } from './contenderMarks.ts';
import { absentFigure, drawnFigure, imageName, type Figure } from './figure.ts';
import { refuseRow } from './intervalRows.ts';
import type { SpreadInput, SpreadRow } from './spreadInput.ts';
import { asIntervalRow, spreadVariant } from './spreadVariant.ts';

const refuse = (row: SpreadRow): void => {
  contenderMark(row.contender.index);
  refuseRow(asIntervalRow(row));
  if ((row.interval?.low ?? row.spread ?? 0) < 0)
    throw new Error(`${row.contender.label}: a spread cannot be under 0.`);
};

/**
 * *Spread.* Which is more consistent? The standard deviation of each contender with its likely range, carry and side on one
 * scale from 0. Absent without one. Throws on broken or negative spreads and on a seventh contender.
 */
export const spreadChart = (input: SpreadInput): Figure => {
  const rows = input.groups.flatMap((group) => group.rows);
  for (const row of rows) refuse(row);
  const drawn = rows.filter(({ spread }) => spread !== null).length;
  if (drawn === 0) {
    return absentFigure(input, notDrawn.tooFewToScatter);
  }
  const drawing = { ...input, name: imageName(input) };
  return drawnFigure(input, { drawn, recorded: rows.length, counted: 'spreads' }, (variant) =>
    spreadVariant(drawing, variant),
  );
};
