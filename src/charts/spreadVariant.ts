import { axisBelow } from './axisBelow.ts';
import { intervalRow, rowColumns, type IntervalRow } from './intervalRows.ts';
import { layouts, type Layout, type Variant } from './layout.ts';
import { stack, type Part } from './part.ts';
import { renderChart } from './renderChart.ts';
import { roundScale } from './roundScale.ts';
import { label, lines, texts } from './signs.ts';
import type { SpreadInput, SpreadRow } from './spreadInput.ts';
import { wrapText } from './textWidth.ts';

/** What one variant shows, with the image's name. */
export type SpreadDrawing = Pick<SpreadInput, 'id' | 'groups' | 'axis'> & { readonly name: string };

export const asIntervalRow = ({ contender, spread, interval, figure, words }: SpreadRow): IntervalRow => ({
  name: contender.label,
  contender: contender.index,
  figure,
  words,
  estimate: spread,
  interval,
});

/** A heading over rows, under a rule. */
const headingPart = (heading: string, { sentence, width, firstBaseline }: Layout, top: number): Part => {
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

/** One variant of *Spread* as SVG text: a heading and rows for each direction, all on one scale from 0. */
export const spreadVariant = (drawing: SpreadDrawing, variant: Variant): string => {
  const layout = layouts[variant];
  const { groups, axis } = drawing;
  const rows = groups.flatMap((group) => group.rows.map(asIntervalRow));
  const columns = rowColumns(rows, layout);
  const values = rows.flatMap(({ estimate, interval }) => [estimate ?? 0, interval?.high ?? 0]);
  const scale = roundScale([0, ...values], columns.track, layout);
  const style = { columns, place: scale.place, ticks: scale.ticks, matters: null };
  const { from, to } = columns.track;
  const parts = stack(1, [
    ...groups.flatMap((group) => [
      (top: number) => headingPart(group.heading, layout, top),
      ...group.rows.map((row) => (top: number) => intervalRow(asIntervalRow(row), style, layout, top)),
    ]),
    (top) => axisBelow(axis, scale.ticks, layout, top, { from: from - 10, to: to + 10 }),
  ]);
  return renderChart({
    prefix: `${drawing.id}-${variant}`,
    name: drawing.name,
    width: layout.width,
    height: Math.ceil(parts.height) + 8,
    marks: parts.marks,
  });
};
