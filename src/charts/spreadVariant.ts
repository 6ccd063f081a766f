import { flowKey } from './flowKey.ts';
import { barItem, ringItem } from './gapKey.ts';
import { axisBelow } from './axisBelow.ts';
import { rowHeading } from './rowHeadings.ts';
import { intervalRow, rowColumns, type IntervalRow } from './intervalRows.ts';
import { layouts, type Variant } from './layout.ts';
import { renderParts } from './renderParts.ts';
import { roundScale } from './roundScale.ts';
import type { SpreadInput, SpreadRow } from './spreadInput.ts';

/** What one variant shows, with the image's name. */
type SpreadDrawing = Pick<SpreadInput, 'id' | 'groups' | 'key' | 'axis'> & { readonly name: string };

export const asIntervalRow = ({ contender, spread, interval, figure, words }: SpreadRow): IntervalRow => ({
  name: contender.label,
  contender: contender.index,
  figure,
  words,
  printed: null,
  estimate: spread,
  interval,
  setOff: false,
  open: false,
});

/** One variant of *Spread* as SVG text: a heading and rows for each direction, all on one scale from 0. */
export const spreadVariant = (drawing: SpreadDrawing, variant: Variant): string => {
  const layout = layouts[variant];
  const { groups, key, axis } = drawing;
  const rows = groups.flatMap((group) => group.rows.map(asIntervalRow));
  const columns = rowColumns(rows, layout);
  const values = rows.flatMap(({ estimate, interval }) => [estimate ?? 0, interval?.high ?? 0]);
  const scale = roundScale([0, ...values], columns.track, layout);
  const style = { columns, place: scale.place, ticks: scale.ticks, matters: null };
  const { from, to } = columns.track;
  return renderParts(drawing, layout, [
    (top) => flowKey([ringItem(key.ring), barItem(key.bar)], layout, top),
    ...groups.flatMap((group) => [
      (top: number) => rowHeading(group.heading, layout, top),
      ...group.rows.map((row) => (top: number) => intervalRow(asIntervalRow(row), style, layout, top)),
    ]),
    (top) => axisBelow(axis, scale.ticks, layout, top, { from: from - 10, to: to + 10 }),
  ]);
};
