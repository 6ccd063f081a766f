import { at } from '../stats/at.ts';
import { covariance } from '../stats/covariance.ts';
import { onceEach } from '../stats/onceEach.ts';
import { meanVectorDraws } from '../stats/multivariateT.ts';
import type { Random } from '../stats/random.ts';

/** Rows of the same columns for two contenders; `rounds` names the round of each row where the gap goes by rounds. */
interface TwoSamples {
  readonly a: readonly (readonly number[])[];
  readonly b: readonly (readonly number[])[];
  readonly rounds?: { readonly a: readonly number[]; readonly b: readonly number[] } | undefined;
}

/** Mean vectors of both contenders. */
export interface MeanPair {
  readonly a: readonly number[];
  readonly b: readonly number[];
}

/** One contender is in several pairs. */
const covarianceOf = onceEach(covariance);

/** The means themselves: of the shots, or by rounds of the round means of the rounds that hold both. */
export function meansOf(samples: TwoSamples): MeanPair {
  if (samples.rounds === undefined)
    return { a: covarianceOf(samples.a).means, b: covarianceOf(samples.b).means };
  const { middles, differences } = byRounds(samples);
  return around(columnMeans(middles), covariance(differences).means);
}

/**
 * Draws of both mean vectors, as uncertain as shots or rounds leave them (see `meanVectorDraws`). By rounds the
 * difference alone is drawn, around the rounds' common middle.
 *
 * @throws StatisticsError `sample-too-small` under two shots a contender or two rounds that hold both
 */
export function meanDraws(samples: TwoSamples, random: Random): () => MeanPair {
  if (samples.rounds === undefined) {
    const drawA = meanVectorDraws(covarianceOf(samples.a), random);
    const drawB = meanVectorDraws(covarianceOf(samples.b), random);
    return () => ({ a: drawA(), b: drawB() });
  }
  const { middles, differences } = byRounds(samples);
  const middle = columnMeans(middles);
  const draw = meanVectorDraws(covariance(differences), random);
  return () => around(middle, draw());
}

function byRounds({ a, b, rounds = { a: [], b: [] } }: TwoSamples): {
  readonly middles: readonly (readonly number[])[];
  readonly differences: readonly (readonly number[])[];
} {
  const both = [...new Set(rounds.a)].filter((round) => rounds.b.includes(round));
  const pairs = both.map((round) => ({
    a: columnMeans(a.filter((_, i) => rounds.a[i] === round)),
    b: columnMeans(b.filter((_, i) => rounds.b[i] === round)),
  }));
  return {
    middles: pairs.map((pair) => pair.a.map((value, i) => (value + (pair.b[i] ?? 0)) / 2)),
    differences: pairs.map((pair) => pair.a.map((value, i) => value - (pair.b[i] ?? 0))),
  };
}

function around(middle: readonly number[], difference: readonly number[]): MeanPair {
  return {
    a: middle.map((value, i) => value + (difference[i] ?? 0) / 2),
    b: middle.map((value, i) => value - (difference[i] ?? 0) / 2),
  };
}

function columnMeans(rows: readonly (readonly number[])[]): readonly number[] {
  const first = at(rows, 0);
  return first.map((_, i) => rows.reduce((sum, row) => sum + at(row, i), 0) / rows.length);
}
