import type { ApartPair, JudgedPair } from './apartInput.ts';
import { nameLines } from './apartScale.ts';
import { contenderMark } from './contenderMarks.ts';
import type { Layout } from './layout.ts';
import type { OutwardScale } from './outwardScale.ts';
import type { Part } from './part.ts';
import { barWithRing, hatched, label, lines, marks, texts, type Label, type Stretch } from './signs.ts';
import { shortenText, textWidth, wrapText } from './textWidth.ts';

const bandHeight = 30;
const lineHeight = 20;
/** Nearer to the ring than this, px, a number at a bar's end is dropped; the row's head says it too. */
const nearRing = 22;

type Block = { readonly labels: readonly Label[]; readonly height: number };

/** The answer, and the numbers beside it where both fit on one line, else below. */
const head = (pair: ApartPair, layout: Layout, top: number): Block => {
  const { sentence, numbers, width } = layout;
  const answer = wrapText(pair.sentence, sentence.size, sentence.weight, width);
  const baseline = (line: number): number => top + layout.firstBaseline + line * lineHeight;
  const labels = answer.map((line, index) => label(sentence, 'start', 0, baseline(index), line));
  const beside =
    answer.length === 1 &&
    layout.variant === 'wide' &&
    textWidth(pair.sentence, sentence.size, sentence.weight) +
      textWidth(pair.numbers, numbers.size, numbers.weight) +
      24 <=
      width;
  if (beside) labels.push(label(numbers, 'end', width, baseline(0), pair.numbers));
  const below = beside ? [] : wrapText(pair.numbers, numbers.size, numbers.weight, width);
  labels.push(
    ...below.map((line, index) => label(numbers, 'start', 0, baseline(answer.length + index), line)),
  );
  return { labels, height: layout.firstBaseline + (answer.length + below.length - 1) * lineHeight };
};

/** Names in line with the bar, in one line or two. */
const wideNames = (pair: JudgedPair, layout: Layout, middle: number): readonly Label[] => {
  const side = (words: string, anchor: 'start' | 'end', x: number): readonly Label[] => {
    const split = nameLines(words, layout);
    return split.map((line, index) =>
      label(layout.name, anchor, x, middle + 5 + (index - (split.length - 1) / 2) * 17, line),
    );
  };
  return [
    ...side(pair.a.label, 'start', layout.nameInset),
    ...side(pair.b.label, 'end', layout.width - layout.nameInset),
  ];
};

/** Names above the bar, side by side where they fit, else the second one line lower. */
const narrowNames = (pair: JudgedPair, layout: Layout, top: number) => {
  const { size, weight } = layout.name;
  const room = layout.width - layout.nameInset;
  const fitted = (words: string): string => shortenText(words, size, weight, room);
  const [a, b] = [fitted(pair.a.label), fitted(pair.b.label)];
  const taken = textWidth(a, size, weight) + textWidth(b, size, weight) + 2 * layout.nameInset + 16;
  const drop = taken <= layout.width ? 0 : lineHeight;
  return {
    labels: [
      label(layout.name, 'start', layout.nameInset, top + 29, a),
      label(layout.name, 'end', room, top + 29 + drop, b),
    ],
    drop,
    height: 29 + drop,
  };
};

/** Numbers under the ring and the ends of the bar. */
const endNumbers = (
  pair: JudgedPair,
  scale: OutwardScale,
  layout: Layout,
  baseline: number,
): readonly Label[] => {
  const placed = (gap: number, words: string, style: Layout['small']) => {
    const half = textWidth(words, style.size, style.weight) / 2;
    const x = Math.min(Math.max(scale.place(gap), half), layout.width - half);
    return { half, x, label: label(style, 'middle', x, baseline, words) };
  };
  const middle = placed(pair.estimate, pair.printed.estimate, layout.estimate);
  const ends = [
    placed(pair.low, pair.printed.low, layout.small),
    placed(pair.high, pair.printed.high, layout.small),
  ].filter(({ x, half }) => Math.abs(x - middle.x) >= Math.max(nearRing, half + middle.half + 4));
  return [middle.label, ...ends.map((end) => end.label)];
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

const stretch = (scale: OutwardScale, low: number, high: number): Stretch => ({
  from: scale.place(low),
  to: scale.place(high),
});

const judgedRow = (
  pair: JudgedPair,
  matters: number,
  scale: OutwardScale,
  layout: Layout,
  top: number,
): Part => {
  const { labels, height } = head(pair, layout, top);
  const wide = layout.variant === 'wide';
  const names = wide ? undefined : narrowNames(pair, layout, top + height);
  const bandTop = top + height + (names === undefined ? 11 : names.height + 8);
  const middle = bandTop + bandHeight / 2;
  const bandBottom = bandTop + bandHeight;
  const upright = (x: number) => ({ x1: x, y1: bandTop, x2: x, y2: bandBottom });
  const [left, right] = [scale.place(matters), scale.place(-matters)];
  const nameMiddle = top + height + 24;
  const fits = barWithRing(
    { x: scale.place(pair.estimate), y: middle },
    stretch(scale, pair.low, pair.high),
    beyondBand(pair.low, pair.high, matters).map(([low, high]) => stretch(scale, low, high)),
  );
  const markOf = (index: number, x: number, y: number) =>
    marks([{ x, y }], contenderMark(index), layout.markRadius);
  return {
    height: bandBottom + (wide ? 21 : 23) - top,
    marks: [
      ...(matters > 0
        ? [
            hatched([{ x1: left, y1: bandTop, x2: right, y2: bandBottom }]),
            lines([upright(left), upright(right)], 'band-edge', 1.25),
          ]
        : []),
      lines([upright(scale.place(0))], 'ink', 1.25),
      ...fits,
      markOf(pair.a.index, layout.markInset, wide ? middle : nameMiddle),
      markOf(pair.b.index, layout.width - layout.markInset, wide ? middle : nameMiddle + (names?.drop ?? 0)),
      ...texts([
        ...labels,
        ...(names?.labels ?? wideNames(pair, layout, middle)),
        ...endNumbers(pair, scale, layout, middle + 30),
      ]),
    ],
  };
};

/** One pair between its rule above and the next: answer, numbers, and the bar if the pair was judged. */
export const apartRow = (
  pair: ApartPair,
  matters: number,
  scale: OutwardScale,
  layout: Layout,
  top: number,
): Part => {
  const rule = lines([{ x1: 0, y1: top, x2: layout.width, y2: top }], 'rule', 1);
  if (pair.kind === 'not-judged') {
    const { labels, height } = head(pair, layout, top);
    return { marks: [rule, ...texts(labels)], height: height + 14 };
  }
  const row = judgedRow(pair, matters, scale, layout, top);
  return { marks: [rule, ...row.marks], height: row.height };
};
