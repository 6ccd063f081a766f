import { notDrawn } from '../prose/english/charts/notDrawn.ts';
import { absentFigure, drawnFigure, imageName, type Figure } from './figure.ts';
import { gapRow } from './pooledRows.ts';
import { outwardRows, refuseOutward, type OutwardDrawing } from './outwardRows.ts';
import type { WithAndWithoutInput } from './withAndWithoutInput.ts';

/** The most pairs in one chart. */
const mostPairs = 6;

/**
 * *With and without.* Did leaving shots out change it? For each pair its gap from all shots and from those kept; beyond six pairs only
 * those with the contender listed first. Absent where none was left out. Throws on numbers out of order.
 */
export const withAndWithoutChart = (input: WithAndWithoutInput): Figure => {
  const { leftOut } = input;
  const pairs =
    input.pairs.length <= mostPairs ? input.pairs : input.pairs.filter(({ indices }) => indices.includes(0));
  const drawing: OutwardDrawing = {
    ...input,
    name: imageName(input),
    sections: pairs.map(({ sentence, all, kept, open }) => ({
      heading: sentence,
      rows: [gapRow(all, false, open), gapRow(kept, false, open)],
    })),
  };
  refuseOutward(drawing);
  if (leftOut === 0) return absentFigure(input, notDrawn.noneLeftOut);
  if (!pairs.some(({ all, kept }) => all.interval !== null && kept.interval !== null)) {
    return absentFigure(input, notDrawn.noPairBothWays);
  }
  return drawnFigure(
    input,
    { drawn: pairs.length, recorded: input.pairs.length, counted: 'pairs' },
    (variant) => outwardRows(drawing, variant),
  );
};
