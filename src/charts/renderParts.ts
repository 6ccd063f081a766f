import type { Layout } from './layout.ts';
import type { Mark } from './mark.ts';
import { stack, type Part } from './part.ts';
import { renderChart } from './renderChart.ts';

/** Room under the last part, px. */
const foot = 8;

/**
 * A chart variant of parts below one another.
 *
 * @param behind marks that lie under all others, such as a hatching that parts refer to
 */
export const renderParts = (
  { id, name }: { readonly id: string; readonly name: string },
  layout: Layout,
  makers: readonly ((top: number) => Part)[],
  behind: readonly Mark[] = [],
): string => {
  const parts = stack(1, makers);
  return renderChart({
    prefix: `${id}-${layout.variant}`,
    name,
    width: layout.width,
    height: Math.ceil(parts.height) + foot,
    marks: [...behind, ...parts.marks],
  });
};
