import { notDrawn } from '../prose/english/charts/notDrawn.ts';
import { contenderMark } from './contenderMarks.ts';
import { absentFigure, drawnFigure, imageName, type Figure } from './figure.ts';
import type { LandingInput, LandingPanel } from './landingInput.ts';
import { landingVariant } from './landingVariant.ts';

const numbersOf = ({ shots, average, curve }: LandingPanel): readonly number[] => [
  ...[...shots, ...(average === null ? [] : [average])].flatMap(({ side, carry }) => [side, carry]),
  ...(curve === null ? [] : [...curve.centre, ...curve.halfAxes, curve.angle]),
];

const refuse = ({ panels, within, recorded }: LandingInput): number => {
  if (!(within > 0 && Number.isFinite(within))) {
    throw new Error(`The lane is ${within} to either side; it must be more than 0.`);
  }
  let drawn = 0;
  for (const panel of panels) {
    contenderMark(panel.contender.index);
    const broken = numbersOf(panel).find((value) => !Number.isFinite(value));
    if (broken !== undefined)
      throw new Error(`${panel.contender.label} has the value ${broken}, which cannot be drawn.`);
    drawn += panel.shots.length;
  }
  if (drawn > recorded) throw new Error(`${drawn} shots to draw but only ${recorded} recorded.`);
  return drawn;
};

/**
 * *Where they landed.* One panel a contender, seen from above on one scale; its shots at their true places, the others' as grey dots, the
 * average as a ring, the curve the next shot would land inside, and the share within the lane. Absent without shots. Throws on values
 * that are not finite, a lane without width, a seventh contender, more shots than recorded.
 */
export const landingChart = (input: LandingInput): Figure => {
  const drawn = refuse(input);
  if (drawn === 0) {
    return absentFigure(input, notDrawn.noPlaces);
  }
  const drawing = { ...input, name: imageName(input) };
  return drawnFigure(input, { drawn, recorded: input.recorded, counted: 'shots' }, (variant) =>
    landingVariant(drawing, variant),
  );
};
