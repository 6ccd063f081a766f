import { at } from '../stats/at.ts';
import { gamesHowell } from '../stats/gamesHowell.ts';
import { moments, type Moments } from '../stats/moments.ts';
import { welchAnova } from '../stats/welchAnova.ts';
import { welchT } from '../stats/welchT.ts';
import { noGaps, type Gaps } from './gap.ts';
import type { Sample } from './samples.ts';
import { fewestShotsJudged } from './thresholds.ts';

/** Contenders with shots enough to be judged. */
export function judgedContenders(samples: readonly Sample[]): readonly string[] {
  return samples.filter(({ values }) => values.length >= fewestShotsJudged).map(({ contender }) => contender);
}

/**
 * The gaps between contenders with the shot as the unit, for one hitter: Welch's t for two contenders, Games-Howell
 * for three or more, with one simultaneous level. Contenders with too few shots stay out; where every contender
 * reads flat there is no gap to judge.
 *
 * @param step the step the file's numbers are written in: a spread smaller than rounding makes is not believed
 */
export function shotGaps(samples: readonly Sample[], level: number, step: number): Gaps {
  const judged = samples.filter(({ values }) => values.length >= fewestShotsJudged);
  const raw = judged.map(({ values }) => moments(values));
  if (judged.length < 2 || raw.every(({ variance }) => variance === 0)) return noGaps;
  const floored = raw.map((group) => atLeastRounding(group, step));
  const idOf = (index: number): string => at(judged, index).contender;
  const [first, second] = floored;
  if (floored.length === 2 && first !== undefined && second !== undefined) {
    return {
      gaps: [{ ...welchT(first, second, level), a: idOf(0), b: idOf(1), method: 'welch' }],
      omnibus: null,
      cellsLeftOut: 0,
    };
  }
  return {
    gaps: gamesHowell(floored, level).map((gap) => ({
      ...gap,
      a: idOf(gap.a),
      b: idOf(gap.b),
      method: 'games-howell',
    })),
    omnibus: { method: 'welch-anova', ...welchAnova(floored) },
    cellsLeftOut: 0,
  };
}

/** Rounding to a step w alone has variance w^2 / 12 (a rectangular error, JCGM 100:2008, 4.3.7). */
export function atLeastRounding(group: Moments, step: number): Moments {
  return { ...group, variance: Math.max(group.variance, (step * step) / 12) };
}
