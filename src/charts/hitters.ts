import { imageName, pageWords, type Figure } from './figure.ts';
import type { GapRow, HittersInput } from './hittersInput.ts';
import type { IntervalRow } from './intervalRows.ts';
import { outwardRows, refuseOutward, type OutwardDrawing } from './outwardRows.ts';

export const gapRow = (row: GapRow, setOff = false): IntervalRow => ({ ...row, contender: null, setOff });

/**
 * *Many hitters.* Who gained? One row a hitter, then all together, then the range for another golfer. Absent under two hitters with a
 * gap. Throws on numbers out of order, on a seventh contender, on another golfer without a range.
 */
export const hittersChart = (input: HittersInput): Figure => {
  const { id, a, b, hitters, pooled, another, matters, axis, legend } = input;
  if (another !== null && (another.estimate !== null || another.interval === null))
    throw new Error(`${another.name}: a golfer not yet seen has a range and no estimate.`);
  const rows = [
    ...hitters.map((row) => gapRow(row)),
    ...(pooled === null ? [] : [gapRow(pooled, true)]),
    ...(another === null ? [] : [gapRow(another, pooled === null)]),
  ];
  const drawing: OutwardDrawing = {
    id,
    name: imageName(input),
    sections: [{ heading: null, a, b, rows }],
    matters,
    axis,
    legend,
  };
  refuseOutward(drawing);
  const drawn = hitters.filter(({ estimate }) => estimate !== null).length;
  if (drawn < 2) {
    return { kind: 'absent', id, question: input.question, why: 'Fewer than two hitters hit both.' };
  }
  return {
    kind: 'drawn',
    ...pageWords(input),
    drawn,
    recorded: hitters.length,
    counted: 'hitters',
    svg: { wide: outwardRows(drawing, 'wide'), narrow: outwardRows(drawing, 'narrow') },
  };
};
