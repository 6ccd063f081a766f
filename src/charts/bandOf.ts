import type { MetricFindings } from '../findings/findings.ts';
import { bandWords, endWord } from '../prose/english/charts/gaps.ts';
import { comparisonOf } from '../prose/english/comparisons.ts';
import { mattersWords } from '../prose/english/ranges.ts';
import { toReader, unitFor, unitWord } from '../prose/readerUnits.ts';
import type { Telling } from '../prose/telling.ts';

/** What charts of a metric's differences share: what matters, in the reader's unit, with the words of band and scale. */
interface Band {
  readonly matters: number;
  /** What the one ahead is in a table: farther, faster, less. */
  readonly more: string;
  /** The same after its name at the end of a scale: farther, spun less. */
  readonly ahead: string;
  /** After the last number of the scale: "yards"; empty for a ratio. */
  readonly unit: string;
  /** Over the band: "too small to matter, under 4 yards". */
  readonly bandWords: string;
}

export function bandOf(metric: MetricFindings, telling: Telling): Band {
  const unit = unitFor(metric.id, telling.system);
  const matters = toReader(metric.matters, metric.id, telling.system);
  const by = metric.better === 'less' ? 'less' : 'more';
  return {
    matters,
    more: comparisonOf(metric.id).axis[by],
    ahead: endWord(metric.id, by),
    unit: unitWord(unit),
    bandWords: bandWords(mattersWords({ matters, unit })),
  };
}
