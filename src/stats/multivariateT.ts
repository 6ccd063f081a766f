import { at } from './at.ts';
import { chiSquareDraw } from './chiSquareDraw.ts';
import type { Covariance } from './covariance.ts';
import type { Random } from './random.ts';
import { requireAtLeast } from './statisticsError.ts';
import { cholesky } from './symmetricMatrix.ts';

/**
 * Draws of a mean vector as uncertain as its sample leaves it: means + N(0, S / n) / sqrt(chi-square(n - 1) /
 * (n - 1)), the multivariate t with n - 1 df, which is the posterior under the usual flat prior (Gelman et al.,
 * *Bayesian Data Analysis*, section 3.6, up to its df). Columns without spread stay at their mean.
 *
 * @returns a function that gives the next draw, one number a column
 * @throws StatisticsError `sample-too-small` under two rows
 */
export function meanVectorDraws(sample: Covariance, random: Random): () => readonly number[] {
  requireAtLeast('meanVectorDraws', 'rows', sample.n, 2);
  const df = sample.n - 1;
  const scaled = sample.matrix.map((row) => row.map((entry) => entry / sample.n));
  const lower = cholesky('meanVectorDraws', scaled, true);
  const size = sample.means.length;
  const means = Float64Array.from(sample.means);
  const rows = lower.map((row) => Float64Array.from(row));
  const z = new Float64Array(size);
  return () => {
    for (let i = 0; i < size; i++) z[i] = random.normal();
    const stretch = Math.sqrt(df / chiSquareDraw(df, random));
    const draw: number[] = [];
    for (let i = 0; i < size; i++) {
      const row = at(rows, i);
      let offset = 0;
      for (let j = 0; j <= i; j++) offset += (z[j] ?? 0) * (row[j] ?? 0);
      draw.push((means[i] ?? 0) + stretch * offset);
    }
    return draw;
  };
}
