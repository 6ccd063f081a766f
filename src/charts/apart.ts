import { notDrawn } from '../prose/english/charts/notDrawn.ts';
import type { ApartInput } from './apartInput.ts';
import { apartVariant } from './apartVariant.ts';
import { absentFigure, drawnFigure, imageName, type Figure } from './figure.ts';

const refuse = ({ matters, pairs, recorded, table }: ApartInput): void => {
  if (!(matters >= 0 && Number.isFinite(matters))) {
    throw new Error(`The gap that matters is ${matters}; it must be 0 or more.`);
  }
  for (const pair of pairs) {
    if (pair.kind === 'not-judged') continue;
    const { name, low, estimate, high } = pair;
    if (![low, estimate, high].every(Number.isFinite) || low > estimate || estimate > high) {
      throw new Error(
        `${name}: low ${low}, estimate ${estimate} and high ${high} must be numbers in rising order.`,
      );
    }
  }
  if (table.rows.length < recorded || recorded < pairs.length) {
    throw new Error(
      `The table has ${table.rows.length} rows for ${Math.max(recorded, pairs.length)} pairs; it must hold all of them.`,
    );
  }
};

/**
 * *How far apart?* One row a pair, the one ahead named first and to the right; the bar is thick where the gap would matter, and not
 * filled where its cause is open. Absent if no pair was judged. Throws on gaps that are not numbers in order, on a table without all
 * pairs.
 */
export const apartChart = (input: ApartInput): Figure => {
  refuse(input);
  const { pairs, recorded } = input;
  if (!pairs.some(({ kind }) => kind === 'judged')) return absentFigure(input, notDrawn.noPairJudged);
  const drawing = {
    ...input,
    // One that was not judged says so in each of its pairs, in one sentence, which stands once.
    pairs: pairs.filter(
      (pair, index) =>
        pair.kind === 'judged' ||
        pairs.findIndex((other) => other.kind === 'not-judged' && other.sentence === pair.sentence) === index,
    ),
    name: imageName(input),
  };
  return drawnFigure(input, { drawn: pairs.length, recorded, counted: 'pairs' }, (variant) =>
    apartVariant(drawing, variant),
  );
};
