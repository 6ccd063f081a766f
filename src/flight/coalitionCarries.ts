import type { AttributionPlan } from './attributionPlan.ts';
import { coalitionAxes } from './coalitionAxes.ts';
import type { MeanPair } from './meanDraws.ts';
import { polynomialGrid } from './polynomialGrid.ts';
import type { Landing } from './smoothedSurface.ts';

/** Writes the carry of every coalition of a pair, metres, into `out`: bit i says that part i is a's, else b's. */
export function coalitionCarries(
  { box, along, across }: Landing,
  plan: AttributionPlan,
): (pair: MeanPair, out: Float64Array) => void {
  const { sizes, cellOf, turnOf, axes, cosines, sines, fill } = coalitionAxes(plan);
  const alongGrid = polynomialGrid(along, sizes);
  const acrossGrid = polynomialGrid(across, sizes);
  const cells = sizes.reduce((product, size) => product * size, 1);
  const ahead = new Float64Array(cells);
  const aside = new Float64Array(cells);
  return (pair, out) => {
    fill(pair);
    for (let i = 0; i < axes.length; i++) {
      const axis = axes[i] ?? ahead;
      const middle = box.middle[i] ?? 0;
      const half = box.half[i] ?? 1;
      for (let k = 0; k < axis.length; k++) axis[k] = ((axis[k] ?? 0) - middle) / half;
    }
    alongGrid(axes, ahead);
    acrossGrid(axes, aside);
    for (let set = 0; set < cellOf.length; set++) {
      const cell = cellOf[set] ?? 0;
      const turn = turnOf[set] ?? 0;
      out[set] = (ahead[cell] ?? 0) * (cosines[turn] ?? 1) - (aside[cell] ?? 0) * (sines[turn] ?? 0);
    }
  };
}
