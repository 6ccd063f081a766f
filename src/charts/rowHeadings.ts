import type { ContenderName } from './apartInput.ts';
import { contenderMark } from './contenderMarks.ts';
import type { Layout } from './layout.ts';
import type { Part } from './part.ts';
import { label, lines, marks, texts, type Stretch } from './signs.ts';
import { fitText, wrapText } from './textWidth.ts';

/** A heading over rows, under a rule. */
export const rowHeading = (
  heading: string,
  { sentence, width, firstBaseline }: Layout,
  top: number,
): Part => {
  const split = wrapText(heading, sentence.size, sentence.weight, width);
  return {
    height: firstBaseline + (split.length - 1) * 20 + 10,
    marks: [
      lines([{ x1: 0, y1: top, x2: width, y2: top }], 'axis', 1),
      ...texts(
        split.map((line, index) => label(sentence, 'start', 0, top + firstBaseline + index * 20, line)),
      ),
    ],
  };
};

/** Whom the scale leans to: the contenders at its left and right end, with their marks. */
export const rowEnds = (
  a: ContenderName,
  b: ContenderName,
  { from, to }: Stretch,
  layout: Layout,
  top: number,
): Part => {
  const { name, nameInset, markInset, markRadius } = layout;
  const room = (to - from) / 2 - nameInset - 8;
  const [left, right] = [a, b].map(({ label: words }) => fitText(words, name.size, name.weight, room, 2));
  const baseline = (line: number): number => top + 22 + line * 18;
  const most = Math.max(left?.length ?? 0, right?.length ?? 0);
  const middle = top + 17 + ((most - 1) * 18) / 2;
  const placed = (split: readonly string[] | undefined, anchor: 'start' | 'end', x: number) =>
    (split ?? []).map((line, index) =>
      label(name, anchor, x, baseline(index + (most - (split?.length ?? 0)) / 2), line),
    );
  return {
    height: baseline(most - 1) + 10 - top,
    marks: [
      marks([{ x: from + markInset, y: middle }], contenderMark(a.index), markRadius),
      marks([{ x: to - markInset, y: middle }], contenderMark(b.index), markRadius),
      ...texts([...placed(left, 'start', from + nameInset), ...placed(right, 'end', to - nameInset)]),
    ],
  };
};
