import { z } from 'zod';
import { metricIds, type MetricId } from '../../trade/metrics.ts';
import { entriesOf, keyed, type Keyed } from './collections.ts';
import { metricName } from './metricName.ts';
import { telling, type Takes } from './takes.ts';
import type { Schema } from './trouble.ts';

/** An answer for each metric that is named, by any of its names; `value` reads it as that metric asks. */
export function byMetric<V>(
  value: (metric: MetricId) => Schema<V>,
  expected: string,
  takes: Takes,
): Schema<Keyed<MetricId, V>> {
  const named = Object.fromEntries(metricIds.map((metric) => [metric, value(metric).exactOptional()]));
  // Under another of its names an editor holds it to what holds for all: a number may stand without its unit.
  const structure = telling(z.object(named).catchall(value('smash').exactOptional()), {
    inEditor: { propertyNames: { $ref: '#/$defs/metric' } },
  });
  return entriesOf({
    structure,
    takes,
    expected,
    key: metricName,
    value: (metric) => (metric === null ? null : value(metric)),
  }).transform((entries) => keyed(entries));
}
