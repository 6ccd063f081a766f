import type { SwingFindings, SwingPair } from '../findings/findings.ts';
import type { MetricId } from '../trade/metrics.ts';
import { saySwingAnswer, saySwingNumbers, saySwingSummary, saySwingUnmeasured } from './english/swing.ts';
import { swingRow, swingSummary, swingUnmeasured } from './swing.ts';
import type { Telling } from './telling.ts';

/** The row of a measure and pair: "Club speed, Alder and Birch: cannot tell." */
export function swingSentence(id: MetricId, pair: SwingPair, telling: Telling): string {
  return saySwingAnswer(swingRow(id, pair, { metric: telling.findings.swing?.metric ?? 'carry' }), telling);
}

/** "Within 0.8 mph of each other, worth up to 2 yards either way." */
export function swingNumbers(id: MetricId, pair: SwingPair, swing: SwingFindings, telling: Telling): string {
  return saySwingNumbers(swingRow(id, pair, swing), telling);
}

/** What all measures together say about the swing. */
export function swingInShort(swing: SwingFindings, telling: Telling): string {
  return saySwingSummary(swingSummary(swing), telling);
}

/** The measures that nobody measured. */
export function swingUnread(swing: SwingFindings): string {
  return saySwingUnmeasured(swingUnmeasured(swing));
}
