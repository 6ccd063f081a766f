import type { MetricFindings } from '../findings/findings.ts';
import { checksOf } from './checks.ts';
import { tellChecks, type ToldChecks } from './english/checks.ts';
import type { Telling } from './telling.ts';

export type { ToldChecks } from './english/checks.ts';

/** Every checked pair of a metric, the surest first. */
export function wouldChange(metric: MetricFindings, telling: Telling): readonly ToldChecks[] {
  return checksOf(metric, telling.findings).map((checks) => tellChecks(checks, telling));
}
