import { drawnFigure, imageName, type Figure } from './figure.ts';
import type { LuckInput } from './luckInput.ts';
import { luckVariant } from './luckVariant.ts';

const refuse = ({ luck, seen }: LuckInput): void => {
  const { average, upTo } = luck;
  if (!(average > 0 && upTo >= average && Number.isFinite(upTo))) {
    throw new Error(`Luck brings ${average} on average and up to ${upTo}; these must rise from above 0.`);
  }
  if (!(seen.gap >= 0 && Number.isFinite(seen.gap))) {
    throw new Error(`The gap seen is ${seen.gap}; best minus worst cannot be under 0.`);
  }
};

/**
 * *Luck yardstick.* How large a difference does chance make? One rule from 0: what equal contenders would differ by below it, what was seen above it.
 * Throws on gaps that are negative, broken or out of order.
 */
export const luckChart = (input: LuckInput): Figure => {
  refuse(input);
  const drawing = { ...input, name: imageName(input) };
  return drawnFigure(input, { drawn: 1, recorded: 1, counted: 'pairs' }, (variant) =>
    luckVariant(drawing, variant),
  );
};
