import type { MetricFindings } from '../findings/findings.ts';
import { metrics } from '../trade/metrics.ts';
import type { Telling } from './telling.ts';
import { capitalised, listed } from './words.ts';

/** What the spreads of a metric bear: "Carry: these shots cannot call one steadier." */
export function spreadHeading(metric: MetricFindings, telling: Telling): string {
  const name = capitalised(metrics[metric.id].name);
  if (metric.spread === null) return `${name}: under twelve shots each cannot call one steadier.`;
  const found = metric.spread.pairs.filter(({ p }) => p < 0.05);
  if (found.length === 0) return `${name}: these shots cannot call one steadier.`;
  const parts = found.map(({ a, b, tighter }) => {
    const [steadier, other] = tighter === 'a' ? [a, b] : [b, a];
    return `${telling.nameOf(steadier)} steadier than ${telling.nameOf(other)}`;
  });
  return `${name}: ${listed(parts)}; seen, not planned.`;
}
