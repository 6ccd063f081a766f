import { binomialTwoSided } from '../stats/binomialTest.ts';
import { contrast } from '../stats/contrast.ts';
import { pairsOf } from '../stats/gapInterval.ts';
import { nextValueInterval } from '../stats/meanInterval.ts';
import { meanOf, moments, type Moments } from '../stats/moments.ts';
import { once } from '../stats/onceEach.ts';
import { clopperPearsonInterval } from '../stats/proportion.ts';
import type { HitterGap, Interval, PairFindings, WhoGained } from './findings.ts';
import type { Sample } from './samples.ts';
import { quietly } from './quietly.ts';
import { atLeastRounding, shotGaps } from './shotGaps.ts';
import { confidence, fewestHittersAsUnit, fewestShotsJudged } from './thresholds.ts';

/** The samples of one hitter. */
export interface HitterSamples {
  readonly hitter: string;
  readonly samples: readonly Sample[];
}

/** Each hitter's own gap of a pair. */
export type HitterGaps = (a: string, b: string) => readonly HitterGap[];

/**
 * Each hitter's own gap of a pair, `a` minus `b`, with the interval of that hitter's own shots where they bear one. A
 * hitter's intervals are worked out once for all pairs.
 */
export function hitterGaps(byHitter: readonly HitterSamples[], level: number, step: number): HitterGaps {
  const hitters = byHitter.map(({ hitter, samples }) => {
    const valuesOf = (id: string): readonly number[] =>
      samples.find(({ contender }) => contender === id)?.values ?? [];
    return { hitter, valuesOf, gaps: once(() => shotGaps(samples, level, step).gaps) };
  });
  return (a, b) =>
    hitters.flatMap(({ hitter, valuesOf, gaps }) => {
      const [ofA, ofB] = [valuesOf(a), valuesOf(b)];
      if (ofA.length === 0 || ofB.length === 0) return [];
      const gap = gaps().find((pair) => pair.a === a && pair.b === b);
      return [{ hitter, estimate: meanOf(ofA) - meanOf(ofB), ci: gap?.ci ?? null }];
    });
}

/** How many hitters had more with `a`, counted with its luck; null under six hitters. */
export function whoGained(gaps: readonly HitterGap[]): WhoGained | null {
  if (gaps.length < fewestHittersAsUnit) return null;
  const more = gaps.filter(({ estimate }) => estimate > 0).length;
  return {
    more,
    of: gaps.length,
    clearlyMore: gaps.filter(({ ci }) => ci !== null && ci[0] > 0).length,
    clearlyLess: gaps.filter(({ ci }) => ci !== null && ci[1] < 0).length,
    byLuck: binomialTwoSided(more, gaps.length),
    share: clopperPearsonInterval(more, gaps.length, confidence),
  };
}

/** What another golfer's own test of this length would show: mean gap +- t s sqrt(1 + 1/H); null under six hitters. */
export function newHitterRange(gaps: readonly HitterGap[]): Interval | null {
  if (gaps.length < fewestHittersAsUnit) return null;
  const estimates = gaps.map(({ estimate }) => estimate);
  return new Set(estimates).size === 1 ? null : nextValueInterval(estimates, confidence);
}

/**
 * Hitters whose gaps of a pair differ: the contrast of their four averages excludes 0 (Satterthwaite's df), at the level
 * that all pairs of hitters together are wrong in at most 5 of 100 tests (Bonferroni).
 */
export function hittersApart(
  a: string,
  b: string,
  byHitter: readonly HitterSamples[],
  step: number,
): PairFindings['hittersDiffer'] {
  const cells = byHitter.flatMap(({ hitter, samples }) => {
    const own = (id: string): readonly number[] =>
      samples.find(({ contender }) => contender === id)?.values ?? [];
    if (Math.min(own(a).length, own(b).length) < fewestShotsJudged) return [];
    const of = (id: string): Moments => atLeastRounding(moments(own(id)), step);
    return [{ hitter, a: of(a), b: of(b) }];
  });
  const pairs = pairsOf(cells.length);
  const level = 1 - (1 - confidence) / pairs.length;
  return pairs.flatMap(([first, second]) => {
    const [x, y] = [cells[first], cells[second]];
    if (x === undefined || y === undefined) return [];
    const found = quietly(() =>
      contrast(
        [
          { weight: 1, group: x.a },
          { weight: -1, group: x.b },
          { weight: -1, group: y.a },
          { weight: 1, group: y.b },
        ],
        level,
      ),
    );
    const differ = found !== null && (found.ci[0] > 0 || found.ci[1] < 0);
    return differ ? [{ x: x.hitter, y: y.hitter }] : [];
  });
}
