import type { Layout } from './layout.ts';
import type { ChartParts } from './madeChart.ts';
import { stack } from './part.ts';
import { renderChart } from './renderChart.ts';

/** Room under the last part, px. */
const foot = 8;

/** A chart in one width as SVG text: its parts below one another. */
export const renderParts = (
  { id, name }: { readonly id: string; readonly name: string },
  layout: Layout,
  { parts, behind = [] }: ChartParts,
): string => {
  const { height, marks } = stack(1, parts);
  return renderChart({
    prefix: `${id}-${layout.variant}`,
    name,
    width: layout.width,
    height: Math.ceil(height) + foot,
    marks: [...behind, ...marks],
  });
};
