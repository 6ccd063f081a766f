import { metricIds, metrics, type MetricId } from '../../trade/metrics.ts';
import { answer, inWords, meaning } from './answers.ts';
import { nearest } from './nearest.ts';

const plain = (typed: string): string =>
  typed
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ')
    .trim();

const spellings: ReadonlyMap<string, MetricId> = new Map([
  ...headingsOfOneMetric(),
  ...metricIds.flatMap((id): [string, MetricId][] => [
    [plain(metrics[id].name), id],
    [plain(id), id],
  ]),
]);

/** All of them, in small letters, with a blank between words. */
export const metricSpellings: readonly string[] = [...spellings.keys()];

function headingWords(): [string, MetricId][] {
  return metricIds.flatMap((id) => metrics[id].headings.map((word): [string, MetricId] => [plain(word), id]));
}

/** Heading words that stand for one metric only: "spin" will do, "speed" will not. */
function headingsOfOneMetric(): [string, MetricId][] {
  const pairs = headingWords();
  return pairs.filter(([word, id]) => pairs.every(([other, owner]) => other !== word || owner === id));
}

/** The metrics of which one may be meant: "distance" is carry or total. */
function metricsMeant(typed: string): readonly MetricId[] {
  const several = headingWords().flatMap(([word, id]) => (word === plain(typed) ? [id] : []));
  if (several.length > 1) return several;
  const near = nearestMetric(typed);
  return near === null ? [] : [near];
}

/** A metric by its id or by the trade's own words, in any casing: `ball_speed`, `ball speed`, `Ball Speed`. */
export function metricNamed(typed: string): MetricId | null {
  return spellings.get(plain(typed)) ?? null;
}

/** The metric that a mistyped name most likely stands for. */
export function nearestMetric(typed: string): MetricId | null {
  const near = nearest(typed, [...spellings.keys()]);
  return near === null ? null : metricNamed(near);
}

/** The name of a metric. */
export const metricName = answer(
  meaning(metricNamed),
  {
    kind: 'unknown-metric',
    expected: 'a metric, such as carry, ball_speed or spin_rate',
    cure: (typed) => {
      const meant = typeof typed === 'string' ? metricsMeant(typed) : [];
      return meant.length === 0
        ? `Write one of ${metricIds.join(', ')}.`
        : `Did you mean ${inWords(meant.map((metric) => `"${metric}"`))}?`;
    },
  },
  'a [metric](#metrics)',
  { type: undefined, minLength: undefined, $ref: '#/$defs/metric' },
);
