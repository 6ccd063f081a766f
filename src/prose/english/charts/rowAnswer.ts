import type { MetricFindings, PairFindings } from '../../../findings/findings.ts';
import { pairAnswer } from '../../pairAnswer.ts';
import type { Telling } from '../../telling.ts';
import { sayPair } from '../pairInWords.ts';

/** The answer about one pair in a sentence, as charts of it say it. */
export function rowAnswer(pair: PairFindings, metric: MetricFindings, telling: Telling): string {
  return sayPair(pairAnswer(pair, metric, telling.findings.design), telling);
}
