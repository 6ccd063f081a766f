import { printStated } from './numbers.ts';
import { unitFor, type UnitSystem } from './readerUnits.ts';
import { metrics, type MetricId } from '../trade/metrics.ts';
import { fromCanonical } from '../trade/units.ts';

/** The trade's smallest gap in a metric that matters, in the units of the shop, as it is typed: `5 yd`. */
export function usualGap(metric: MetricId, system: UnitSystem): string {
  const unit = unitFor(metric, system);
  const value = printStated(fromCanonical(metrics[metric].matters, unit));
  return unit === '1' ? value : `${value} ${unit}`;
}
