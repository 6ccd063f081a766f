import { at } from './at.ts';
import { compensatedSum } from './compensatedSum.ts';
import { fUpper } from './distributions/f.ts';
import { greatestOf } from './extremes.ts';
import { familyInterval } from './familyInterval.ts';
import { pairsOf, type PairGap } from './gapInterval.ts';
import { requireAtLeast, requireFinite, requireFraction, StatisticsError } from './statisticsError.ts';
import { cholesky, choleskyInverse, choleskySolve, type Matrix } from './symmetricMatrix.ts';
import type { FTest } from './welchAnova.ts';

/** One entry of a two-way table: block (hitter, round) and treatment (what is compared), both counted from 0. */
export interface Cell {
  readonly block: number;
  readonly treatment: number;
  readonly value: number;
}

/** Fit of value = block + treatment + rest. Sums of squares in the values' unit squared. */
interface AdditiveModel {
  /** treatments, adjusted for blocks, against none */
  readonly test: FTest;
  /** treatment effects, summing to 0 */
  readonly effects: readonly number[];
  readonly treatmentSumOfSquares: number;
  /** blocks without regard to treatments */
  readonly blockSumOfSquares: number;
  readonly residualSumOfSquares: number;
  readonly residualDf: number;
  readonly residualVariance: number;
  /** all pairs by Tukey-Kramer: q(level; treatments, residualDf) / sqrt(2) */
  readonly gaps: readonly PairGap[];
}

/**
 * Two-way table without interaction by least squares; cells may be missing as long as the table hangs together
 * (Tukey-Kramer gaps: Kramer 1957, Biometrics 13, for adjusted means). Blocks are swept out first, then the
 * treatments solved from the reduced normal equations (Yates 1940, recovery within blocks). Assumes equal spread
 * of the rest in all cells.
 *
 * @throws StatisticsError `sample-too-small` under two treatments or without residual df, `not-connected`,
 * `no-spread` when the model fits exactly
 */
export function additiveModel(cells: readonly Cell[], level: number): AdditiveModel {
  requireFraction('additiveModel', 'level', level);
  requireFinite(
    'additiveModel',
    cells.map(({ value }) => value),
  );
  const treatments = 1 + Math.max(0, greatestOf(cells.map(({ treatment }) => treatment)));
  requireAtLeast('additiveModel', 'treatments', treatments, 2);
  const blocks = blocksOf(cells);
  requireConnected(blocks, treatments);
  const residualDf = cells.length - blocks.length - treatments + 1;
  requireAtLeast('additiveModel', 'residual degrees of freedom', residualDf, 1);

  const swept = blocks.map((block) => {
    const mean = compensatedSum(block.map(({ value }) => value)) / block.length;
    return { mean, block, rests: block.map(({ value }) => value - mean) };
  });
  const lower = cholesky('additiveModel', reducedNormalMatrix(blocks, treatments));
  const inverse = choleskyInverse(lower);
  const right = new Array<number>(treatments).fill(0);
  for (const { block, rests } of swept) {
    block.forEach(({ treatment }, i) => (right[treatment] = at(right, treatment) + at(rests, i)));
  }
  const raw = [...choleskySolve(lower, right.slice(0, -1)), 0];
  const centre = compensatedSum(raw) / treatments;
  const effects = raw.map((effect) => effect - centre);

  const residuals = swept.flatMap(({ block, rests }) => {
    const fitted = block.map(({ treatment }) => at(effects, treatment));
    const mean = compensatedSum(fitted) / fitted.length;
    return rests.map((rest, i) => rest - (at(fitted, i) - mean));
  });
  const residualSumOfSquares = compensatedSum(residuals.map((rest) => rest * rest));
  const withinBlocks = compensatedSum(swept.flatMap(({ rests }) => rests.map((rest) => rest * rest)));
  if (!(residualSumOfSquares > 1e-24 * withinBlocks)) {
    throw new StatisticsError(
      'no-spread',
      'additiveModel',
      'blocks and treatments explain every value exactly',
    );
  }
  const residualVariance = residualSumOfSquares / residualDf;
  const treatmentSumOfSquares = compensatedSum(effects.map((effect, i) => effect * at(right, i)));
  const grand = compensatedSum(swept.map(({ mean, block }) => mean * block.length)) / cells.length;
  const blockSumOfSquares = compensatedSum(
    swept.map(({ mean, block }) => block.length * (mean - grand) ** 2),
  );
  const df = [treatments - 1, residualDf] as const;
  const statistic = treatmentSumOfSquares / df[0] / residualVariance;
  // The treatment held at 0 has no row.
  const spread = (a: number, b: number): number => inverse[a]?.[b] ?? 0;
  const gaps = pairsOf(treatments).map(([a, b]) => {
    const standardError = Math.sqrt(residualVariance * (spread(a, a) + spread(b, b) - 2 * spread(a, b)));
    const estimate = at(raw, a) - at(raw, b);
    return { a, b, ...familyInterval({ estimate, standardError, df: residualDf }, level, treatments) };
  });
  return {
    test: { statistic, df, p: fUpper(statistic, df[0], df[1]) },
    effects,
    treatmentSumOfSquares,
    blockSumOfSquares,
    residualSumOfSquares,
    residualDf,
    residualVariance,
    gaps,
  };
}

function blocksOf(cells: readonly Cell[]): readonly (readonly Cell[])[] {
  return [...Map.groupBy(cells, ({ block }) => block).values()];
}

/** The treatments' normal equations after blocks, the last treatment held at 0. */
function reducedNormalMatrix(blocks: readonly (readonly Cell[])[], treatments: number): Matrix {
  const full = Array.from({ length: treatments }, () => new Array<number>(treatments).fill(0));
  for (const block of blocks) {
    for (const { treatment } of block) {
      const row = at(full, treatment);
      row[treatment] = at(row, treatment) + 1;
      for (const other of block) row[other.treatment] = at(row, other.treatment) - 1 / block.length;
    }
  }
  return full.slice(0, -1).map((row) => row.slice(0, -1));
}

/** Whether every treatment can be reached from the first by way of shared blocks. */
function requireConnected(blocks: readonly (readonly Cell[])[], treatments: number): void {
  const reached = new Set([0]);
  let waiting = blocks;
  for (;;) {
    const touches = (block: readonly Cell[]): boolean =>
      block.some(({ treatment }) => reached.has(treatment));
    const touching = waiting.filter(touches);
    const apart = waiting.filter((block) => !touches(block));
    if (touching.length === 0) break;
    for (const { treatment } of touching.flat()) reached.add(treatment);
    waiting = apart;
  }
  if (reached.size < treatments) {
    throw new StatisticsError(
      'not-connected',
      'additiveModel',
      `only ${reached.size} of ${treatments} treatments are tied together by shared blocks`,
    );
  }
}
