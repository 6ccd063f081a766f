import type { Interval, MetricFindings, PairFindings } from '../findings/findings.ts';
import { comparisonOf } from '../prose/english/comparisons.ts';
import type { Telling } from '../prose/telling.ts';
import { contenderName, type ContenderName } from './contenderName.ts';

/** A pair turned so that the one ahead is named first, with what turns its numbers. */
export interface TurnedPair {
  readonly a: ContenderName;
  readonly b: ContenderName;
  /** What the first-named one is: farther, faster. */
  readonly more: string;
  /** A difference of the pair as found, counted towards the first-named one; SI both. */
  readonly estimate: (found: number) => number;
  readonly ci: (found: Interval) => Interval;
}

/** The pair as charts and tables name it. */
export function turnedPair(pair: PairFindings, metric: MetricFindings, telling: Telling): TurnedPair {
  const wantsLess = metric.better === 'less';
  const [first, second] = pair.ahead === pair.b ? [pair.b, pair.a] : [pair.a, pair.b];
  const flip = (first === pair.b) === wantsLess ? 1 : -1;
  return {
    a: contenderName(first, telling),
    b: contenderName(second, telling),
    more: comparisonOf(metric.id).axis[wantsLess ? 'less' : 'more'],
    estimate: (found) => found * flip,
    ci: ([low, high]) => (flip === 1 ? [low, high] : [-high, -low]),
  };
}
