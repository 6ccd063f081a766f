import { endNumbers, type BarNumbers } from './endNumbers.ts';
import type { GapScale } from './gapScale.ts';
import type { Layout } from './layout.ts';
import type { Part } from './part.ts';
import { barWithRing, hatched, label, lines, texts, type Label, type Stretch } from './signs.ts';
import { fitText, textWidth, wrapText } from './textWidth.ts';

/** A pair with its gap, the first-named minus the second, in the unit the reader sees. */
export interface JudgedPair {
  readonly kind: 'judged';
  /** "Sorrel over Tansy"; where nobody is ahead "Rowan and Tansy". */
  readonly name: string;
  /** The answer in words: "Difference, size uncertain". */
  readonly answer: string;
  readonly estimate: number;
  readonly low: number;
  readonly high: number;
  /** Whether the cause of the difference is open: then the bar is not filled. */
  readonly open: boolean;
  readonly printed: BarNumbers;
}

/** A pair that was not judged, in words alone. */
export interface UnjudgedPair {
  readonly kind: 'not-judged';
  readonly sentence: string;
}

export type ApartPair = JudgedPair | UnjudgedPair;

const bandHeight = 22;
const lineHeight = 18;

/** Whether name and answer of every row fit on one line. */
export const answersFit = (pairs: readonly ApartPair[], { name, numbers, width }: Layout): boolean =>
  pairs.every(
    (pair) =>
      pair.kind === 'not-judged' ||
      textWidth(pair.name, name.size, name.weight) +
        20 +
        textWidth(pair.answer, numbers.size, numbers.weight) <=
        width,
  );

/** Name, and the answer at the right or under it. */
const head = ({ name: words, answer }: JudgedPair, beside: boolean, layout: Layout, top: number) => {
  const { name, numbers, width } = layout;
  const first = top + 17;
  if (beside) {
    return {
      labels: [label(name, 'start', 0, first, words), label(numbers, 'end', width, first, answer)],
      bottom: first,
    };
  }
  const named = fitText(words, name.size, name.weight, width, 2);
  const answered = wrapText(answer, numbers.size, numbers.weight, width);
  return {
    labels: [
      ...named.map((line, index) => label(name, 'start', 0, first + index * lineHeight, line)),
      ...answered.map((line, index) =>
        label(numbers, 'start', 0, first + (named.length + index) * lineHeight, line),
      ),
    ],
    bottom: first + (named.length + answered.length - 1) * lineHeight,
  };
};

/** The parts of the interval from `low` to `high` that lie outside `-matters` to `matters`. */
export const beyondBand = (
  low: number,
  high: number,
  matters: number,
): readonly (readonly [number, number])[] => {
  const less = [low, Math.min(high, -matters)] as const;
  const more = [Math.max(low, matters), high] as const;
  return [less, more].filter(([from, to]) => from < to);
};

const stretch = ({ place }: GapScale, low: number, high: number): Stretch => ({
  from: place(low),
  to: place(high),
});

/** What the rows of a chart have in common. */
interface ApartStyle {
  readonly matters: number;
  readonly scale: GapScale;
  /** Whether answers stand beside the names. */
  readonly beside: boolean;
}

/** The words over the band, as near its middle as the edges let them. */
export const bandLabel = (
  words: string,
  middle: number,
  { small, width, textRoom }: Layout,
  top: number,
): { readonly height: number; readonly labels: readonly Label[] } => {
  const split = wrapText(words, small.size, small.weight, textRoom);
  return {
    height: split.length * lineHeight,
    labels: split.map((line, index) => {
      // Where letters reach beyond their width, none is cut off at the edge.
      const half = textWidth(line, small.size, small.weight) / 2 + 2;
      const x = Math.min(Math.max(middle, half), width - half);
      return label(small, 'middle', x, top + 15 + index * lineHeight, line);
    }),
  };
};

/** One judged pair: name and answer, then the bar on its band with the numbers under it. */
const judgedRow = (
  pair: JudgedPair,
  bandWords: string | null,
  { matters, scale, beside }: ApartStyle,
  layout: Layout,
  top: number,
): Part => {
  const { place } = scale;
  const { labels, bottom } = head(pair, beside, layout, top);
  const over = bandWords === null ? null : bandLabel(bandWords, place(0), layout, bottom + 3);
  const bandTop = bottom + 7 + (over?.height ?? 0);
  const middle = bandTop + bandHeight / 2;
  const bandBottom = bandTop + bandHeight;
  const upright = (x: number) => ({ x1: x, y1: bandTop, x2: x, y2: bandBottom });
  const [left, right] = [place(-matters), place(matters)];
  return {
    height: bandBottom + 23 - top,
    marks: [
      ...(matters > 0
        ? [
            hatched([{ x1: left, y1: bandTop, x2: right, y2: bandBottom }]),
            lines([upright(left), upright(right)], 'band-edge', 1.25),
          ]
        : []),
      lines([upright(place(0))], 'ink', 1.25),
      ...barWithRing(
        { x: place(pair.estimate), y: middle },
        stretch(scale, pair.low, pair.high),
        beyondBand(pair.low, pair.high, matters).map(([low, high]) => stretch(scale, low, high)),
        pair.open,
      ),
      ...texts([...labels, ...(over?.labels ?? []), ...endNumbers(pair, place, layout, bandBottom + 15)]),
    ],
  };
};

/** One pair between its rule above and the next; `bandWords` stand over the band of the first that has one. */
export const apartRow = (
  pair: ApartPair,
  bandWords: string | null,
  style: ApartStyle,
  layout: Layout,
  top: number,
): Part => {
  const { width, textRoom, numbers } = layout;
  const rule = lines([{ x1: 0, y1: top, x2: width, y2: top }], 'rule', 1);
  if (pair.kind === 'not-judged') {
    const split = wrapText(pair.sentence, numbers.size, numbers.weight, textRoom);
    return {
      height: 17 + (split.length - 1) * lineHeight + 9,
      marks: [
        rule,
        ...texts(split.map((line, index) => label(numbers, 'start', 0, top + 17 + index * lineHeight, line))),
      ],
    };
  }
  const row = judgedRow(pair, bandWords, style, layout, top);
  return { ...row, marks: [rule, ...row.marks] };
};
