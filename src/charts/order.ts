import { contenderMark } from './contenderMarks.ts';
import { imageName, pageWords, type Figure } from './figure.ts';
import type { OrderInput } from './orderInput.ts';
import { orderVariant } from './orderVariant.ts';

const refuse = ({ contenders, shots, trend, recorded }: OrderInput): void => {
  for (const { index } of contenders) contenderMark(index);
  for (const { number, value, contender } of shots) {
    if (!contenders.some(({ index }) => index === contender)) {
      throw new Error(`Shot ${number} is of contender number ${contender + 1}, who is not named.`);
    }
    if (!(Number.isFinite(value) && Number.isInteger(number) && number > 0))
      throw new Error(`Shot ${number} has the value ${value}, which cannot be drawn.`);
  }
  if (trend !== null) {
    const { from, to, interval } = trend;
    const rising = interval.low <= to.value && to.value <= interval.high && from.number < to.number;
    if (!rising || ![from.value, interval.low, interval.high].every(Number.isFinite)) {
      throw new Error(
        `The trend from ${from.value} at shot ${from.number} to ${to.value} at shot ${to.number}, low ${interval.low} and high ${interval.high}, must be numbers in rising order.`,
      );
    }
  }
  if (shots.length > recorded)
    throw new Error(`${shots.length} shots to draw but only ${recorded} recorded.`);
};

/**
 * *Shots in order.* Value over place in the session, a mark for every shot at its true place, the line of trend with its bar at the end.
 * Absent without shots. Throws on values that are not finite, a trend out of order, a shot of nobody, a seventh contender.
 */
export const orderChart = (input: OrderInput): Figure => {
  refuse(input);
  if (input.shots.length === 0) {
    return { kind: 'absent', id: input.id, question: input.question, why: 'No shot has a value to draw.' };
  }
  const drawing = { ...input, name: imageName(input) };
  return {
    kind: 'drawn',
    ...pageWords(input),
    drawn: input.shots.length,
    recorded: input.recorded,
    counted: 'shots',
    svg: { wide: orderVariant(drawing, 'wide'), narrow: orderVariant(drawing, 'narrow') },
  };
};
