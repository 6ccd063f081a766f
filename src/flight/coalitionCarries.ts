import type { CoalitionAxes } from './coalitionAxes.ts';
import { polynomialGrid } from './polynomialGrid.ts';
import type { Landing } from './smoothedSurface.ts';

/**
 * Writes the carry of every coalition of the pair in a row of `grid`, metres, into `out`: bit i says that part i is a's,
 * else b's.
 */
export function coalitionCarries(
  { box, along, across }: Landing,
  { sizes, cellOf, width, rows }: CoalitionAxes,
): (row: number, out: Float64Array) => void {
  const axes = sizes.map((size) => new Float64Array(size));
  const directions = sizes.at(-1) ?? 1;
  // The carry is what lies along the launch direction less what lies across it, each by its share of the target line.
  const cosines = new Float64Array(directions);
  const negativeSines = new Float64Array(directions);
  const weights = [cosines, negativeSines];
  const grid = polynomialGrid([along, across], sizes);
  const cells = new Float64Array(sizes.reduce((product, size) => product * size, 1));
  return (row, out) => {
    let at = row * width;
    for (let i = 0; i < axes.length; i++) {
      const axis = axes[i] ?? cells;
      const middle = box.middle[i] ?? 0;
      const half = box.half[i] ?? 1;
      for (let k = 0; k < axis.length; k++) axis[k] = ((rows[at++] ?? 0) - middle) / half;
    }
    for (let k = 0; k < directions; k++) {
      cosines[k] = rows[at + k] ?? 0;
      negativeSines[k] = -(rows[at + directions + k] ?? 0);
    }
    grid(axes, weights, cells);
    for (let set = 0; set < cellOf.length; set++) out[set] = cells[cellOf[set] ?? 0] ?? 0;
  };
}
