import { at } from '../stats/at.ts';
import { contrast, type ContrastTerm } from '../stats/contrast.ts';
import { pairsOf } from '../stats/gapInterval.ts';
import { moments, type Moments } from '../stats/moments.ts';
import { noGaps, type Gap, type Gaps } from './gap.ts';
import { quietly } from './quietly.ts';
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
    byHitter.every((samples) => at(samples, index).values.length >= fewestShotsJudged);
  const judged = contenders.map((_, index) => index).filter(enough);
  const cells = judged.map((index) => byHitter.map((samples) => moments(at(samples, index).values)));
  if (judged.length < 2 || cells.flat().every(({ variance }) => variance === 0)) return noGaps;
  const gaps = pairsOf(judged.length).flatMap(([first, second]): Gap[] => {
    const terms = (own: readonly Moments[] | undefined, sign: 1 | -1): readonly ContrastTerm[] =>
      (own ?? []).map((cell) => ({ weight: sign / byHitter.length, group: atLeastRounding(cell, step) }));
    const found = quietly(() =>
      contrast([...terms(cells[first], 1), ...terms(cells[second], -1)], level, judged.length),
    );
    const [a = '', b = ''] = [first, second].map((index) => contenders[at(judged, index)]);
    return found === null ? [] : [{ a, b, method: 'hitters-alike', ...found }];
  });
  return { ...noGaps, gaps };
}
