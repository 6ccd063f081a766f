import type { ApartInput } from './apartInput.ts';
import { apartRow } from './apartRow.ts';
import { apartScale } from './apartScale.ts';
import { bandKey } from './keys.ts';
import { layouts, type Layout, type Variant } from './layout.ts';
import type { OutwardScale } from './outwardScale.ts';
import type { Part } from './part.ts';
import { renderParts } from './renderParts.ts';
import { hatch, label, lines, texts } from './signs.ts';
import { wrapText } from './textWidth.ts';

/** What one variant shows: the pairs drawn and the image's name. */
export type ApartDrawing = Pick<ApartInput, 'id' | 'pairs' | 'matters' | 'axis' | 'legend'> & {
  readonly name: string;
};

const axisPart = (axis: string, { ticks }: OutwardScale, layout: Layout, top: number): Part => {
  const { small, width } = layout;
  const numbers = ticks.map(({ x, text }) => label(small, 'middle', x, top + 21, text));
  const wide = layout.variant === 'wide';
  const words = wide
    ? [label(small, 'start', 0, top + 21, axis), label(small, 'end', width, top + 21, axis)]
    : wrapText(`${axis}, either way from 0`, small.size, small.weight, width).map((line, index) =>
        label(small, 'middle', width / 2, top + 42 + index * 19, line),
      );
  return {
    height: wide ? 21 : 42 + (words.length - 1) * 19,
    marks: [
      lines([{ x1: 0, y1: top, x2: width, y2: top }], 'axis', 1),
      lines(
        ticks.map(({ x }) => ({ x1: x, y1: top, x2: x, y2: top + 6 })),
        'axis',
        1,
      ),
      ...texts([...numbers, ...words]),
    ],
  };
};

/** One variant of *How far apart?* as SVG text. */
export const apartVariant = (drawing: ApartDrawing, variant: Variant): string => {
  const layout = layouts[variant];
  const { pairs, matters, axis, legend } = drawing;
  const scale = apartScale(pairs, matters, axis, layout);
  return renderParts(
    drawing,
    layout,
    [
      ...pairs.map((pair) => (top: number) => apartRow(pair, matters, scale, layout, top)),
      (top) => axisPart(axis, scale, layout, top),
      ...(matters > 0 ? [(top: number) => bandKey(legend, layout, top)] : []),
    ],
    matters > 0 ? [hatch] : [],
  );
};
