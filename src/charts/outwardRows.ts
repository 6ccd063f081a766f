import { gapAxis } from './gapAxis.ts';
import { gapKey } from './gapKey.ts';
import { gapScale } from './gapScale.ts';
import type { GapWords } from './gapWords.ts';
import { intervalRow, refuseRow, rowColumns, type IntervalRow } from './intervalRows.ts';
import type { Layout } from './layout.ts';
import type { ChartParts } from './madeChart.ts';
import { rowHeading } from './rowHeadings.ts';
import { hatch } from './signs.ts';

/** Gaps in rows below one another; what the first-named has more lies right. */
interface RowSection {
  /** A sentence over the rows; null for none. */
  readonly heading: string | null;
  readonly rows: readonly IntervalRow[];
}

interface OutwardRows extends GapWords {
  readonly sections: readonly RowSection[];
}

/** Throws on rows whose numbers do not rise, on a gap that cannot matter. */
export const refuseOutward = ({ sections, matters }: OutwardRows): void => {
  if (!(matters >= 0 && Number.isFinite(matters)))
    throw new Error(`The gap that matters is ${matters}; it must be 0 or more.`);
  for (const { rows } of sections) for (const row of rows) refuseRow(row);
};

/** A chart of gaps in rows. */
export const outwardRows = (
  { sections, matters, bandWords, unit, ends, foot, key }: OutwardRows,
  layout: Layout,
): ChartParts => {
  const rows = sections.flatMap((section) => section.rows);
  const columns = rowColumns(rows, layout);
  const gaps = rows.flatMap(({ estimate, interval }) => [
    estimate ?? 0,
    interval?.low ?? 0,
    interval?.high ?? 0,
  ]);
  const scale = gapScale(gaps, matters, unit, layout, columns.track);
  const style = { columns, place: scale.place, ticks: scale.ticks, matters };
  const line = { from: columns.track.from - 10, to: columns.track.to + 10 };
  const first = rows.find(({ estimate, interval }) => estimate !== null || interval !== null);
  return {
    parts: [
      (top) => gapKey(key, layout, top),
      ...sections.flatMap(({ heading, rows: own }) => [
        ...(heading === null ? [] : [(top: number) => rowHeading(heading, layout, top)]),
        ...own.map(
          (row) => (top: number) =>
            intervalRow(row, style, layout, top, matters > 0 && row === first ? bandWords : null),
        ),
      ]),
      (top) => gapAxis({ ends, foot, scale, layout, line }, top),
    ],
    behind: matters > 0 ? [hatch] : [],
  };
};
