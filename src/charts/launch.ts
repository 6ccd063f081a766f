import { notDrawn } from '../prose/english/charts/notDrawn.ts';
import { contenderMark } from './contenderMarks.ts';
import { absentFigure, drawnFigure, type Figure } from './figure.ts';
import type { LaunchInput } from './launchInput.ts';
import { launchVariant } from './launchVariant.ts';

const refuseGrid = ({ grid, within }: LaunchInput): void => {
  const { launch, spin, short } = grid;
  const columns = short[0]?.length ?? 0;
  if (short.length < 2 || columns < 2 || short.some((row) => row.length !== columns)) {
    throw new Error(`The grid has ${short.length} rows; it must have two or more of each, all rows as long.`);
  }
  if (
    ![...short.flat(), ...launch, ...spin].every(Number.isFinite) ||
    short.flat().some((value) => value < 0)
  )
    throw new Error('The grid holds a value that is not a distance short of the best.');
  if (!(launch[0] < launch[1] && spin[0] < spin[1]))
    throw new Error(
      `The grid must rise from ${launch[0]} to ${launch[1]} and from ${spin[0]} to ${spin[1]}.`,
    );
  if (!(within > 0 && Number.isFinite(within)))
    throw new Error(`The plateau is within ${within}; it must be more than 0.`);
};

const refuse = (input: LaunchInput): void => {
  const { contenders, shots, recorded } = input;
  refuseGrid(input);
  for (const { index } of contenders) contenderMark(index);
  for (const { launch, spin, contender } of shots) {
    if (!contenders.some(({ index }) => index === contender))
      throw new Error(`A shot is of contender number ${contender + 1}, who is not named.`);
    if (![launch, spin].every(Number.isFinite))
      throw new Error(`A shot has launch ${launch} and spin ${spin}, which cannot be drawn.`);
  }
  if (shots.length > recorded)
    throw new Error(`${shots.length} shots to draw but only ${recorded} recorded.`);
};

/**
 * *Launch and spin.* Is this golfer near the top for this ball speed? Every shot at its launch angle and spin, and a line round all that
 * would carry within `within` of the best. Absent without shots. Throws on a broken grid, on values that are not finite, on a shot of
 * nobody, on a seventh contender.
 */
export const launchChart = (input: LaunchInput): Figure => {
  refuse(input);
  if (input.shots.length === 0) {
    return absentFigure(input, notDrawn.noLaunches);
  }
  // The question has a speed in the reader's units.
  const drawing = { ...input, name: input.subject };
  const { recorded, shots } = input;
  return drawnFigure(input, { drawn: shots.length, recorded, counted: 'shots' }, (variant) =>
    launchVariant(drawing, variant),
  );
};
