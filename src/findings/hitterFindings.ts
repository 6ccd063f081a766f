import { binomialTwoSided } from '../stats/binomialTest.ts';
import { nextValueInterval } from '../stats/meanInterval.ts';
import { meanOf } from '../stats/moments.ts';
import { clopperPearsonInterval } from '../stats/proportion.ts';
import type { HitterGap, Interval, WhoGained } from './findings.ts';
import { fewestHittersAsUnit } from './hitterModelGaps.ts';
import type { Sample } from './samples.ts';
import { shotGaps } from './shotGaps.ts';

/** The samples of one hitter. */
export interface HitterSamples {
  readonly hitter: string;
  readonly samples: readonly Sample[];
}

/** Each hitter's own gap of a pair, `a` minus `b`, with the interval of that hitter's own shots where they bear one. */
export function hitterGaps(
  a: string,
  b: string,
  byHitter: readonly HitterSamples[],
  level: number,
  step: number,
): readonly HitterGap[] {
  return byHitter.flatMap(({ hitter, samples }) => {
    const own = (id: string): readonly number[] =>
      samples.find(({ contender }) => contender === id)?.values ?? [];
    if (own(a).length === 0 || own(b).length === 0) return [];
    const gap = shotGaps(samples, level, step).gaps.find((pair) => pair.a === a && pair.b === b);
    return [{ hitter, estimate: meanOf(own(a)) - meanOf(own(b)), ci: gap?.ci ?? null }];
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
    share: clopperPearsonInterval(more, gaps.length, 0.95),
  };
}

/** What another golfer's own test of this length would show: mean gap +- t s sqrt(1 + 1/H); null under six hitters. */
export function newHitterRange(gaps: readonly HitterGap[]): Interval | null {
  if (gaps.length < fewestHittersAsUnit) return null;
  const estimates = gaps.map(({ estimate }) => estimate);
  return new Set(estimates).size === 1 ? null : nextValueInterval(estimates, 0.95);
}

/** Whether the gaps of two hitters surely differ: the interval of their difference excludes 0 (normal, 95 %). */
export function hittersDiffer(first: HitterGap, second: HitterGap): boolean {
  if (first.ci === null || second.ci === null) return false;
  const halfWidth = Math.hypot((first.ci[1] - first.ci[0]) / 2, (second.ci[1] - second.ci[0]) / 2);
  return Math.abs(first.estimate - second.estimate) > halfWidth;
}
