import { notDrawn } from '../prose/english/charts/notDrawn.ts';
import { contenderMark } from './contenderMarks.ts';
import { absentFigure, drawnFigure, imageName, type Figure } from './figure.ts';
import type { OrderInput } from './orderInput.ts';
import { orderVariant } from './orderVariant.ts';

const refuse = ({ contenders, shots, trends, recorded }: OrderInput): void => {
  for (const { index } of contenders) contenderMark(index);
  for (const { number, value, contender } of shots) {
    if (!contenders.some(({ index }) => index === contender)) {
      throw new Error(`Shot ${number} is of contender number ${contender + 1}, who is not named.`);
    }
    if (!(Number.isFinite(value) && Number.isInteger(number) && number > 0))
      throw new Error(`Shot ${number} has the value ${value}, which cannot be drawn.`);
  }
  for (const { contender, from, to } of trends) {
    contenderMark(contender);
    if (!(from.number < to.number && [from.value, to.value].every(Number.isFinite)))
      throw new Error(
        `The trend from ${from.value} at shot ${from.number} to ${to.value} at shot ${to.number} cannot be drawn.`,
      );
  }
  if (shots.length > recorded)
    throw new Error(`${shots.length} shots to draw but only ${recorded} recorded.`);
};

/**
 * *Shots in order.* Value over place in the session, a mark for every shot at its true place, a line of trend for each contender over its
 * own shots. Absent without shots. Throws on values that are not finite, a trend out of order, a shot of nobody, a seventh contender.
 */
export const orderChart = (input: OrderInput): Figure => {
  refuse(input);
  if (input.shots.length === 0) {
    return absentFigure(input, notDrawn.noShots);
  }
  const drawing = { ...input, name: imageName(input) };
  const { recorded, shots } = input;
  return drawnFigure(input, { drawn: shots.length, recorded, counted: 'shots' }, (variant) =>
    orderVariant(drawing, variant),
  );
};
