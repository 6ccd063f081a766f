import { notDrawn } from '../prose/english/charts/notDrawn.ts';
import type { ApartInput, ApartPair } from './apartInput.ts';
import { apartVariant } from './apartVariant.ts';
import { contenderMark } from './contenderMarks.ts';
import { absentFigure, drawnFigure, imageName, type Figure } from './figure.ts';

/** The most pairs in one chart; four contenders have six. */
const mostPairs = 6;

const refuse = (input: ApartInput): void => {
  if (!(input.matters >= 0 && Number.isFinite(input.matters))) {
    throw new Error(`The gap that matters is ${input.matters}; it must be 0 or more.`);
  }
  for (const pair of input.pairs) {
    contenderMark(pair.a.index);
    contenderMark(pair.b.index);
    if (pair.kind === 'not-judged') continue;
    const { low, estimate, high } = pair;
    if (![low, estimate, high].every(Number.isFinite) || low > estimate || estimate > high) {
      throw new Error(
        `${pair.a.label} and ${pair.b.label}: low ${low}, estimate ${estimate} and high ${high} must be numbers in rising order.`,
      );
    }
  }
  if (input.table.rows.length < input.pairs.length) {
    throw new Error(
      `The table has ${input.table.rows.length} rows for ${input.pairs.length} pairs; it must hold all of them.`,
    );
  }
};

/** Up to six pairs all of them; beyond, only those with the first contender that was judged against another. */
export const pairsDrawn = (pairs: readonly ApartPair[]): readonly ApartPair[] => {
  if (pairs.length <= mostPairs) return pairs;
  const judged = pairs.filter(({ kind }) => kind === 'judged').flatMap(({ a, b }) => [a.index, b.index]);
  const first = judged.length === 0 ? 0 : Math.min(...judged);
  return pairs.filter(({ a, b }) => a.index === first || b.index === first);
};

/** A contender that was not judged says so in each of its pairs, in one sentence, which stands once. */
const saidOnce = (pairs: readonly ApartPair[]): readonly ApartPair[] =>
  pairs.filter(
    ({ kind, sentence }, index) =>
      kind === 'judged' || pairs.findIndex((pair) => pair.sentence === sentence) === index,
  );

/**
 * *How far apart?* One row a pair; the ring leans towards the one that had more, the bar is thick where the gap would matter.
 * Absent if no pair was judged. Throws on gaps that are not numbers in order, on a seventh contender, on a table without all pairs.
 */
export const apartChart = (input: ApartInput): Figure => {
  refuse(input);
  const pairs = saidOnce(pairsDrawn(input.pairs));
  if (!pairs.some(({ kind }) => kind === 'judged')) {
    return absentFigure(input, notDrawn.noPairJudged);
  }
  const drawing = { ...input, pairs, name: imageName(input) };
  return drawnFigure(
    input,
    { drawn: pairsDrawn(input.pairs).length, recorded: input.pairs.length, counted: 'pairs' },
    (variant) => apartVariant(drawing, variant),
  );
};
