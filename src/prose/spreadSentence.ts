import type { MetricFindings } from '../findings/findings.ts';
import { saySpread } from './english/spread.ts';
import { spreadOf } from './spread.ts';
import type { Telling } from './telling.ts';

/** What the spreads of a metric bear: "Carry: no clear difference in consistency." */
export function spreadHeading(metric: MetricFindings, telling: Telling): string {
  return saySpread(spreadOf(metric, telling.findings), telling);
}
