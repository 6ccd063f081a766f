import type { ContenderName } from './apartInput.ts';
import { axisBelow } from './axisBelow.ts';
import { contenderMark } from './contenderMarks.ts';
import { intervalRow, refuseRow, rowColumns, type IntervalRow } from './intervalRows.ts';
import { bandKey } from './keys.ts';
import { layouts, type Variant } from './layout.ts';
import { outwardScale } from './outwardScale.ts';
import type { Part } from './part.ts';
import { renderParts } from './renderParts.ts';
import { rowEnds, rowHeading } from './rowHeadings.ts';
import { hatch, lines } from './signs.ts';

/** Gaps `a` minus `b` in rows below one another; what `a` has more lies left. */
export interface RowSection {
  /** A sentence over the rows; null for none. */
  readonly heading: string | null;
  readonly a: ContenderName;
  readonly b: ContenderName;
  readonly rows: readonly IntervalRow[];
}

/** What one variant shows, with the image's name. */
export interface OutwardDrawing {
  readonly id: string;
  readonly name: string;
  readonly sections: readonly RowSection[];
  /** The smallest gap that matters, in the unit of the rows; 0 draws no band. */
  readonly matters: number;
  /** What the scale counts towards either end: "yards farther". */
  readonly axis: string;
  /** What the hatched band says. */
  readonly legend: string;
}

/** Throws on a seventh contender, on rows whose numbers do not rise, on a gap that cannot matter. */
export const refuseOutward = ({ sections, matters }: OutwardDrawing): void => {
  if (!(matters >= 0 && Number.isFinite(matters)))
    throw new Error(`The gap that matters is ${matters}; it must be 0 or more.`);
  for (const { a, b, rows } of sections) {
    contenderMark(a.index);
    contenderMark(b.index);
    for (const row of rows) refuseRow(row);
  }
};

/** One variant of a chart of gaps in rows, as SVG text. */
export const outwardRows = (drawing: OutwardDrawing, variant: Variant): string => {
  const layout = layouts[variant];
  const { sections, matters, axis, legend } = drawing;
  const rows = sections.flatMap((section) => section.rows);
  const columns = rowColumns(rows, layout);
  const gaps = rows.flatMap(({ estimate, interval }) => [
    estimate ?? 0,
    interval?.low ?? 0,
    interval?.high ?? 0,
  ]);
  const scale = outwardScale([...gaps, matters * 1.25], layout, () => columns.track);
  const style = { columns, place: scale.place, ticks: scale.ticks, matters };
  const line = { from: columns.track.from - 10, to: columns.track.to + 10 };
  const rule = (top: number): Part => ({
    height: 0,
    marks: [lines([{ x1: 0, y1: top, x2: layout.width, y2: top }], 'axis', 1)],
  });
  return renderParts(
    drawing,
    layout,
    [
      ...sections.flatMap(({ heading, a, b, rows: own }) => [
        heading === null ? rule : (top: number) => rowHeading(heading, layout, top),
        (top: number) => rowEnds(a, b, line, layout, top),
        ...own.map((row) => (top: number) => intervalRow(row, style, layout, top)),
      ]),
      (top) => axisBelow(`${axis}, either way from 0`, scale.ticks, layout, top, line),
      ...(matters > 0 ? [(top: number) => bandKey(legend, layout, top)] : []),
    ],
    matters > 0 ? [hatch] : [],
  );
};
