import type { MetricFindings, PairFindings } from '../findings/findings.ts';
import { gapNumbers, pairSentence } from './pairSentence.ts';
import type { Telling } from './telling.ts';
import { countWord, sentence } from './words.ts';

/**
 * What a pair says with and without the shots that were left out, the answer as judged last; null where none was
 * left out or the pair cannot be judged.
 */
export function withAndWithout(pair: PairFindings, metric: MetricFindings, telling: Telling): string | null {
  const { withLeftOut } = pair;
  if (withLeftOut === null) return null;
  const out = telling.findings.contenders
    .filter(({ id }) => id === pair.a || id === pair.b)
    .reduce((sum, { excluded }) => sum + excluded, 0);
  const whole: PairFindings = {
    ...pair,
    ...withLeftOut,
    // The order is what it was; how the gap holds was worked out without those shots.
    overlays: pair.overlays.filter((id) => id !== 'leans' && id !== 'visits-alike'),
  };
  const counted = `With all shots counted: ${said(whole, metric, telling)}`;
  // In three or more contenders, a shot left out of one narrows or widens the intervals of the others' gaps too.
  const shots = out === 0 ? 'those' : countWord(out);
  if (withLeftOut.verdict === pair.verdict) {
    if (out === 0) return null;
    return `${counted} With ${shots} left out the answer is the same. ${sentence(gapNumbers(pair, metric, telling))}`;
  }
  return `${counted} With ${shots} left out: ${said(pair, metric, telling)} The answer depends on what was left out.`;
}

function said(pair: PairFindings, metric: MetricFindings, telling: Telling): string {
  return `${pairSentence(pair, metric, telling)} ${sentence(gapNumbers(pair, metric, telling))}`;
}
