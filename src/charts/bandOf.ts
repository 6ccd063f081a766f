import type { MetricFindings } from '../findings/findings.ts';
import { comparisonOf } from '../prose/english/comparisons.ts';
import { mattersWords } from '../prose/english/ranges.ts';
import { toReader, unitFor, unitWord } from '../prose/readerUnits.ts';
import type { Telling } from '../prose/telling.ts';

/** What charts of a metric's differences share: what matters, in the reader's unit, with the words of band and axis. */
export interface Band {
  readonly matters: number;
  /** What the one ahead is: farther, faster. */
  readonly more: string;
  /** What the scale counts: "yards farther". */
  readonly axis: string;
  readonly legend: string;
}

export function bandOf(metric: MetricFindings, telling: Telling): Band {
  const unit = unitFor(metric.id, telling.system);
  const matters = toReader(metric.matters, metric.id, telling.system);
  const more = comparisonOf(metric.id).axis[metric.better === 'less' ? 'less' : 'more'];
  return {
    matters,
    more,
    axis: `${unitWord(unit)} ${more}`.trim(),
    legend: `Under ${mattersWords({ matters, unit })}: too small to matter`,
  };
}
