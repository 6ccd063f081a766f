import type { Mark } from './mark.ts';
import type { GapScale } from './gapScale.ts';
import type { Layout } from './layout.ts';
import type { Part } from './part.ts';
import { label, lines, texts, type Label, type Line, type Stretch } from './signs.ts';
import { textWidth, wrapText } from './textWidth.ts';

/** What the two ends of a scale of gaps say. */
export interface GapEnds {
  /** What lies left of 0: "named second farther". */
  readonly left: string;
  readonly right: string;
}

const lineHeight = 18;
const arrow = { length: 12, gap: 6, head: 3.5 };

/** An arrow along the page that ends at `tip`. */
const arrowTo = (tip: number, y: number, towards: 1 | -1): readonly Line[] => [
  { x1: tip - towards * arrow.length, y1: y, x2: tip, y2: y },
  { x1: tip - towards * arrow.head, y1: y - arrow.head, x2: tip, y2: y },
  { x1: tip - towards * arrow.head, y1: y + arrow.head, x2: tip, y2: y },
];

/** What lies towards either end, with an arrow: on one line where both fit, else in lines of half the width. */
const endWords = (
  { left, right }: GapEnds,
  { from, to }: Stretch,
  { small }: Layout,
  first: number,
): { readonly rows: number; readonly marks: readonly Mark[] } => {
  const inset = arrow.length + arrow.gap;
  const [wide, half] = [to - from - 2 * inset - 10, (to - from) / 2 - inset - 6];
  const taken = [left, right].map((words) => textWidth(words, small.size, small.weight));
  const most = taken.reduce((sum, one) => sum + one, 0) <= wide ? wide : half;
  const set = (words: string): readonly string[] => wrapText(words, small.size, small.weight, most);
  const labels = (words: string, anchor: 'start' | 'end', x: number): readonly Label[] =>
    set(words).map((line, index) => label(small, anchor, x, first + index * lineHeight, line));
  return {
    rows: Math.max(set(left).length, set(right).length),
    marks: [
      lines([...arrowTo(from, first - 5, -1), ...arrowTo(to, first - 5, 1)], 'ink-2', 1.25),
      ...texts([...labels(left, 'start', from + inset), ...labels(right, 'end', to - inset)]),
    ],
  };
};

interface GapAxis {
  readonly ends: GapEnds;
  /** What the ranges are, in a line below. */
  readonly foot: string;
  readonly scale: GapScale;
  readonly layout: Layout;
  /** From edge to edge where nothing else is given. */
  readonly line?: Stretch;
}

/** The axis of a chart of gaps: numbers outward from 0, what lies towards either end, and what the ranges are. */
export const gapAxis = (
  { ends, foot, scale: { ticks }, layout, line = { from: 0, to: layout.width } }: GapAxis,
  top: number,
): Part => {
  const { small, width, textRoom } = layout;
  const clamped = (x: number, words: string): number => {
    const half = textWidth(words, small.size, small.weight) / 2;
    return Math.min(Math.max(x, half), width - half);
  };
  const words = endWords(ends, line, layout, top + 38);
  const footTop = top + 38 + words.rows * lineHeight;
  const split = wrapText(foot, small.size, small.weight, textRoom);
  return {
    height: footTop + (split.length - 1) * lineHeight + 4 - top,
    marks: [
      lines([{ x1: line.from, y1: top, x2: line.to, y2: top }], 'axis', 1),
      lines(
        ticks.map(({ x }) => ({ x1: x, y1: top, x2: x, y2: top + 5 })),
        'axis',
        1,
      ),
      ...texts(
        ticks
          .filter(({ text }) => text !== '')
          .map(({ x, text }) => label(small, 'middle', clamped(x, text), top + 19, text)),
      ),
      ...words.marks,
      ...texts(split.map((part, index) => label(small, 'start', 0, footTop + index * lineHeight, part))),
    ],
  };
};
