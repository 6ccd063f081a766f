import type { Layout } from './layout.ts';
import type { Part } from './part.ts';
import { label, lines, texts } from './signs.ts';
import { wrapText } from './textWidth.ts';

/** A heading over rows, under a rule. */
export const rowHeading = (
  heading: string,
  { sentence, width, textRoom, firstBaseline }: Layout,
  top: number,
): Part => {
  const split = wrapText(heading, sentence.size, sentence.weight, textRoom);
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
