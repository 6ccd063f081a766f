import { familyInterval } from '../stats/familyInterval.ts';
import { pairsOf } from '../stats/gapInterval.ts';
import { moments, type Moments } from '../stats/moments.ts';
import { noGaps, type Gap, type Gaps } from './gap.ts';
import type { Sample } from './samples.ts';
import { atLeastRounding } from './shotGaps.ts';
import { fewestShotsJudged } from './thresholds.ts';

/**
 * The gaps for two to five hitters, each counted alike and no other golfer judged: the mean over hitters of each
 * one's own gap, standard error from every cell's own spread, Satterthwaite's df, simultaneous over all pairs.
 *
 * @param byHitter a hitter each: the samples of all contenders, in one order
 */
export function fewHitterGaps(byHitter: readonly (readonly Sample[])[], level: number, step: number): Gaps {
  const contenders = byHitter[0]?.map(({ contender }) => contender) ?? [];
  const enough = (index: number): boolean =>
    byHitter.every((samples) => (samples[index]?.values.length ?? 0) >= fewestShotsJudged);
  const judged = contenders.map((_, index) => index).filter(enough);
  const cells = judged.map((index) => byHitter.map((samples) => moments(samples[index]?.values ?? [])));
  if (judged.length < 2 || cells.flat().every(({ variance }) => variance === 0)) return noGaps;
  const gaps = pairsOf(judged.length).map(([first, second]): Gap => {
    const a = (cells[first] ?? []).map((cell) => atLeastRounding(cell, step));
    const b = (cells[second] ?? []).map((cell) => atLeastRounding(cell, step));
    return {
      a: contenders[judged[first] ?? -1] ?? '',
      b: contenders[judged[second] ?? -1] ?? '',
      method: 'hitters-alike',
      ...meanGap(a, b, level, judged.length),
    };
  });
  return { ...noGaps, gaps };
}

function meanGap(
  a: readonly Moments[],
  b: readonly Moments[],
  level: number,
  family: number,
): ReturnType<typeof familyInterval> {
  const hitters = a.length;
  const estimate = a.reduce((sum, cell, hitter) => sum + cell.mean - (b[hitter]?.mean ?? 0), 0) / hitters;
  const parts = [...a, ...b].map(({ variance, n }) => ({ part: variance / n / hitters ** 2, df: n - 1 }));
  const squaredError = parts.reduce((sum, { part }) => sum + part, 0);
  const df = squaredError ** 2 / parts.reduce((sum, { part, df: own }) => sum + part ** 2 / own, 0);
  return familyInterval(estimate, Math.sqrt(squaredError), df, level, family);
}
