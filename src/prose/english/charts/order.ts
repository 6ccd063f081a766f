import type { Interval, MetricFindings, OrderKind } from '../../../findings/findings.ts';
import { metrics, type MetricId } from '../../../trade/metrics.ts';
import { orderInWords } from '../order.ts';
import { printDifference, printSize, type Printing } from '../../printSteps.ts';
import { shortUnit, unitFor, withUnit } from '../../readerUnits.ts';
import type { Telling } from '../../telling.ts';
import { capitalised, listed } from '../../words.ts';
import { comparedNames, inBrackets, rangeWords } from './ranges.ts';
import { namesOf } from '../names.ts';

/** A trend is told over this many shots. */
const stretch = 10;

/** The words of *Shots in order*; each trend is one contender's, over its own shots. */
export function orderWords(
  { id }: MetricFindings,
  order: OrderKind,
  { trends, driftShows }: { readonly trends: readonly string[]; readonly driftShows: boolean },
  telling: Telling,
) {
  const { name } = metrics[id];
  const names = comparedNames(telling);
  return {
    subject: `${capitalised(name)} of every shot with ${names}, in the order hit`,
    found: [
      `The ${telling.nouns} were hit ${orderInWords(order)}.`,
      ...(driftShows ? [] : ['Seeing no drift does not prove there was none.']),
    ],
    signs: [],
    numberAxis: `Shot number; one mark is one shot${trends.length === 0 ? '' : `, a line the trend with one ${telling.noun} over its own shots`}`,
    ...(trends.length === 0 ? {} : { shows: trends.map((words) => `${words}.`).join(' ') }),
    description:
      trends.length === 0
        ? `${capitalised(name)} of every shot in the order it was hit. Too few shots for a trend.`
        : `${capitalised(name)} of every shot in the order it was hit. ${trends.map((words) => `${words}.`).join(' ')}`,
    numbers: `${name}, shot by shot`,
  };
}

/** "Heron: carry fell by about 3 yards in ten shots, likely 1 to 5", "Heron: no clear trend in carry, give or take 4 yards in ten shots". */
export function trendWords(
  metric: MetricFindings,
  { id, slope, ci }: { readonly id: string; readonly slope: number; readonly ci: Interval },
  printing: Printing,
  { nameOf }: Telling,
): string {
  const { name } = metrics[metric.id];
  const [low, high] = [ci[0] * stretch, ci[1] * stretch];
  if (low <= 0 && high >= 0) {
    const most = withUnit(printSize(Math.max(-low, high), printing), printing.unit);
    return `${nameOf(id)}: no clear trend in ${name}, give or take ${most} in ten shots`;
  }
  const steep: Interval = slope > 0 ? [low, high] : [-high, -low];
  const about = withUnit(printDifference(slope * stretch, printing), printing.unit);
  // What matters in a difference is no mark for a trend.
  const range = rangeWords({ first: '', second: '', ci: steep }, { ...printing, matters: Infinity }, false);
  return `${nameOf(id)}: ${name} ${slope > 0 ? 'rose' : 'fell'} by about ${about} in ten shots, ${range}`;
}

/** A shot without a value. */
export const noReading = 'no reading';

/** Caption and heads of the table of shots. */
export function shotListWords({ id }: MetricFindings, allListed: boolean, { noun, system }: Telling) {
  return {
    caption: allListed ? 'Every shot in the order it was hit' : 'The shots drawn, in the order they were hit',
    head: [
      'Shot',
      capitalised(noun),
      capitalised(`${metrics[id].name}${inBrackets(shortUnit(unitFor(id, system)))}`),
      'Left out',
    ],
  };
}

/** A contender's trend over its own shots; unclear where its range holds none. */
export interface TrendTold {
  readonly id: string;
  readonly went: 'rose' | 'fell' | 'unclear';
}

/** "Carry fell with Heron during the test", "No clear trend in carry". */
export function orderFinding(metric: MetricId, trends: readonly TrendTold[], telling: Telling): string {
  const { name } = metrics[metric];
  if (trends.length === 0) return `Too few shots to see a trend in ${name}`;
  const parts = (['rose', 'fell'] as const).flatMap((way) => {
    const ids = trends.filter(({ went }) => went === way).map(({ id }) => id);
    return ids.length === 0 ? [] : [`${way} with ${namesOf(ids, telling)}`];
  });
  return parts.length === 0
    ? `No clear trend in ${name} with any ${telling.noun}`
    : capitalised(`${name} ${listed(parts)} during the test`);
}

/** Why it is not drawn. */
export const severalGolfers = 'This chart is for one golfer.';
export const orderNotKept = 'The rows of the file do not keep the order of the shots.';
