import { axisBelow } from './axisBelow.ts';
import { layouts, type Layout, type Variant } from './layout.ts';
import type { LuckInput } from './luckInput.ts';
import type { Part } from './part.ts';
import { renderParts } from './renderParts.ts';
import { roundScale, type RoundScale } from './roundScale.ts';
import { label, lines, ring, ringReach, texts, type Label, type Line } from './signs.ts';
import { textWidth, wrapText } from './textWidth.ts';

/** What one variant shows, with the image's name. */
type LuckDrawing = Pick<LuckInput, 'id' | 'luck' | 'seen' | 'roundIn' | 'axis'> & {
  readonly name: string;
};

const lineHeight = 20;
/** Least room between the ends of the scale and the edges, px. */
const inset = 14;
const tick = 18;

/** Words about a place on the rule, each in lines, as near to the place as the edges let them. */
const wordsAt = (
  x: number,
  words: readonly string[],
  style: Layout['sentence'],
  { width, textRoom }: Layout,
): { readonly lines: readonly string[]; readonly at: (y: number) => readonly Label[] } => {
  const split = words.flatMap((one) => wrapText(one, style.size, style.weight, textRoom));
  // As long as a line is that just fills the room.
  const half =
    ((width / textRoom) * Math.max(...split.map((line) => textWidth(line, style.size, style.weight)))) / 2;
  const middle = Math.min(Math.max(x, half), width - half);
  return {
    lines: split,
    at: (y) => split.map((line, index) => label(style, 'middle', middle, y + index * lineHeight, line)),
  };
};

const rulePart = ({ luck, seen }: LuckDrawing, scale: RoundScale, layout: Layout, top: number): Part => {
  const { width, sentence, name } = layout;
  const seenX = scale.place(seen.gap);
  const [averageX, upToX] = [scale.place(luck.average), scale.place(luck.upTo)];
  const above = wordsAt(seenX, seen.words, sentence, layout);
  const below = wordsAt((averageX + upToX) / 2, [luck.words], { ...name, weight: 400 }, layout);
  const seenTop = top + 20 + (above.lines.length - 1) * lineHeight + 7;
  const rule = seenTop + tick;
  const down = (x: number): Line => ({ x1: x, y1: rule, x2: x, y2: rule + tick });
  const bottom = rule + tick + 6 + below.lines.length * lineHeight;
  return {
    height: bottom + 10 - top,
    marks: [
      lines([{ x1: scale.place(0), y1: rule, x2: width - inset, y2: rule }], 'ink', 1.25),
      lines([down(averageX), down(upToX)], 'ink', 2.5),
      lines([{ x1: seenX, y1: seenTop, x2: seenX, y2: rule - ringReach }], 'ink', 2.5),
      ring({ x: seenX, y: rule }),
      ...texts([...above.at(top + 20), ...below.at(rule + tick + 21)]),
    ],
  };
};

/** One variant of *Luck yardstick* as SVG text. */
export const luckVariant = (drawing: LuckDrawing, variant: Variant): string => {
  const layout = layouts[variant];
  const { luck, seen, roundIn, axis } = drawing;
  const room = { from: inset, to: layout.width - inset };
  const scale = roundScale([0, luck.upTo, seen.gap], room, layout, roundIn);
  return renderParts(drawing, layout, [
    (top) => rulePart(drawing, scale, layout, top),
    (top) => axisBelow(axis, scale.ticks, layout, top),
  ]);
};
