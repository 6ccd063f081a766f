import { ownEnds } from '../prose/english/charts/gaps.ts';
import { notDrawn } from '../prose/english/charts/notDrawn.ts';
import { absentFigure, drawnFigure, type Figure } from './figure.ts';
import { gapRow } from './pooledRows.ts';
import { outwardRows, refuseOutward, type OutwardDrawing } from './outwardRows.ts';
import type { YardsInput } from './yardsInput.ts';

/**
 * *Where the yards come from.* A ledger: the gap as measured, its parts, and on the last line what they do not explain. Absent without a
 * part that has a range. Throws on numbers out of order.
 */
export const yardsChart = (input: YardsInput): Figure => {
  const { a, b, measured, parts, rest, ahead } = input;
  const drawing: OutwardDrawing = {
    ...input,
    // The question has the reader's unit.
    name: input.subject,
    sections: [
      {
        heading: null,
        rows: [
          gapRow(measured),
          ...parts.map((part, index) => gapRow(part, index === 0)),
          gapRow(rest, true),
        ],
      },
    ],
    ends: ownEnds(a.label, b.label, ahead),
  };
  refuseOutward(drawing);
  const drawn = parts.filter(({ interval }) => interval !== null).length;
  if (drawn === 0) {
    return absentFigure(input, notDrawn.noFlightRecorded);
  }
  return drawnFigure(input, { drawn, recorded: parts.length, counted: 'parts' }, (variant) =>
    outwardRows(drawing, variant),
  );
};
