import { notDrawn } from '../prose/english/charts/notDrawn.ts';
import { absentFigure, drawnFigure, imageName, type Figure } from './figure.ts';
import type { PriceInput } from './priceInput.ts';
import { priceVariant } from './priceVariant.ts';

const refuse = ({ pairs, matters }: PriceInput): void => {
  if (!(matters >= 0 && Number.isFinite(matters)))
    throw new Error(`The gap that matters is ${matters}; it must be 0 or more.`);
  for (const { name, price, low, estimate, high } of pairs) {
    if (!(price >= 0 && Number.isFinite(price)))
      throw new Error(`${name}: the dearer one comes first, so that a difference of ${price} cannot be.`);
    if (![low, estimate, high].every(Number.isFinite) || low > estimate || estimate > high) {
      throw new Error(
        `${name}: low ${low}, estimate ${estimate} and high ${high} must be numbers in rising order.`,
      );
    }
    if (low <= 0 && high >= 0)
      throw new Error(`${name}: ${low} to ${high} holds 0; only clear gaps have a price.`);
  }
};

/**
 * *Price and yards.* What does a yard cost? Each clear gap over the difference of price, with its likely range, numbered and named
 * below. Absent without a clear gap. Throws on numbers out of order, on a gap that is not clear, on a negative difference of price.
 */
export const priceChart = (input: PriceInput): Figure => {
  refuse(input);
  const pairs = input.pairs.toSorted((one, other) => one.price - other.price);
  if (pairs.length === 0) {
    return absentFigure(input, notDrawn.nothingToPrice);
  }
  const drawing = { ...input, pairs, name: imageName(input) };
  return drawnFigure(input, { drawn: pairs.length, recorded: pairs.length, counted: 'pairs' }, (variant) =>
    priceVariant(drawing, variant),
  );
};
