import { additiveModel, type Cell } from './additiveModel.ts';
import { familyInterval } from './familyInterval.ts';
import type { PairGap } from './gapInterval.ts';
import { moments } from './moments.ts';

/** A gap of two treatments over blocks; `direct` counts the blocks that hold both. */
interface BlockGap extends PairGap {
  readonly direct: number;
  readonly ruledBy: 'all-pairs' | 'own-pair';
}

/**
 * Gaps of the additive model, never narrower than the pair's own paired t: half-width = the greater of
 * Tukey-Kramer and t(H - 1) s_d / sqrt(H), s_d the sd of the pair's differences over the H blocks that hold
 * both. Standard error, df, statistic and p are those of the one that rules. The pooled residual alone
 * understates the error of a pair whose gap differs from block to block more than the others' do.
 *
 * @param cells one value a block and treatment (further ones of a cell are averaged for the pair's own t)
 * @throws StatisticsError as `additiveModel`
 */
export function blockGaps(cells: readonly Cell[], level: number): readonly BlockGap[] {
  return additiveModel(cells, level).gaps.map((gap) => {
    const differences = pairDifferences(cells, gap.a, gap.b);
    const shared = { direct: differences.length, ruledBy: 'all-pairs' as const };
    if (differences.length < 2) return { ...gap, ...shared };
    const { n, variance } = moments(differences);
    if (!(variance > 0)) return { ...gap, ...shared };
    const own = familyInterval(
      { estimate: gap.estimate, standardError: Math.sqrt(variance / n), df: n - 1 },
      level,
      2,
    );
    if (own.ci[1] - own.ci[0] <= gap.ci[1] - gap.ci[0]) return { ...gap, ...shared };
    return { a: gap.a, b: gap.b, ...own, direct: n, ruledBy: 'own-pair' };
  });
}

/** Treatment a minus b in every block that holds both, blocks in order of first appearance. */
export function pairDifferences(cells: readonly Cell[], a: number, b: number): readonly number[] {
  const blocks = [...Map.groupBy(cells, ({ block }) => block).values()];
  return blocks.flatMap((block) => {
    const mean = (of: number): number | null => {
      const values = block.filter(({ treatment }) => treatment === of).map(({ value }) => value);
      return values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length;
    };
    const first = mean(a);
    const second = mean(b);
    return first === null || second === null ? [] : [first - second];
  });
}
