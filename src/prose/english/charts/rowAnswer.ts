import type { MetricFindings, PairFindings } from '../../../findings/findings.ts';
import { pairSentence } from '../../pairSentence.ts';
import type { Telling } from '../../telling.ts';

/** The answer about one pair as the row of a chart or table says it. */
export function rowAnswer(pair: PairFindings, metric: MetricFindings, telling: Telling): string {
  return pairSentence(pair, metric, telling);
}
