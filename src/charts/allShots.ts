import type { AllShotsInput } from './allShotsInput.ts';
import { allShotsVariant } from './allShotsVariant.ts';
import { contenderMark } from './contenderMarks.ts';
import { imageName, pageWords, type Figure } from './figure.ts';

const refuse = ({ strips, recorded }: AllShotsInput): number => {
  let drawn = 0;
  for (const { contender, shots, average } of strips) {
    contenderMark(contender.index);
    const numbers = [
      ...shots.map(({ value }) => value),
      ...(average === null ? [] : [average.value]),
      ...(average?.interval ? [average.interval.low, average.interval.high] : []),
    ];
    const broken = numbers.find((value) => !Number.isFinite(value));
    if (broken !== undefined)
      throw new Error(`${contender.label} has the value ${broken}, which cannot be drawn.`);
    drawn += shots.length;
  }
  if (drawn > recorded) throw new Error(`${drawn} shots to draw but only ${recorded} recorded.`);
  return drawn;
};

/**
 * *All the shots.* One strip a contender on one scale; a mark for every shot, moved only up and down so that none covers another; the
 * average under them. Absent without shots. Throws on values that are not finite and on a seventh contender.
 */
export const allShotsChart = (input: AllShotsInput): Figure => {
  const drawn = refuse(input);
  if (drawn === 0) {
    return { kind: 'absent', id: input.id, question: input.question, why: 'No shot has a value to draw.' };
  }
  const drawing = { ...input, name: imageName(input) };
  return {
    kind: 'drawn',
    ...pageWords(input),
    drawn,
    recorded: input.recorded,
    counted: 'shots',
    svg: { wide: allShotsVariant(drawing, 'wide'), narrow: allShotsVariant(drawing, 'narrow') },
  };
};
