import type { Findings, MetricFindings, PairFindings } from '../findings/findings.ts';
import { isGap, type VerdictId } from '../findings/verdict.ts';
import { answerClause, gapNumbers } from './pairSentence.ts';
import { toldGap, type Telling } from './telling.ts';
import { capitalised, countWord, sentence } from './words.ts';

/** More amounts than these stand in the chart and its table. */
const mostAmounts = 3;

/** From the surest finding to what could not be judged. */
const sureness: readonly VerdictId[] = [
  'clear',
  'size-unsure',
  'maybe-small',
  'small',
  'level',
  'too-close',
  'not-judged',
];

/** The primary metrics, in the order the plan names them. */
export function primaryMetrics(findings: Findings): readonly MetricFindings[] {
  return findings.metrics.filter(({ role }) => role === 'primary');
}

/** A metric's pairs, the surest finding first. */
export function surestFirst(metric: MetricFindings): readonly PairFindings[] {
  return [...metric.pairs].sort((x, y) => sureness.indexOf(x.verdict) - sureness.indexOf(y.verdict));
}

/** The answer of one primary metric: a sentence for each pair, the first saying for whom it holds. */
export function answerSentences(metric: MetricFindings, telling: Telling): readonly string[] {
  return surestFirst(metric).map((pair, index) => {
    const clause = answerClause(pair, metric, telling);
    if (index > 0 || pair.verdict === 'not-judged') return sentence(clause);
    const whom = forWhomShort(telling.findings);
    if (pair.verdict === 'too-close' && pair.credit === 'contender') {
      return sentence(
        `${whom} these shots cannot tell ${telling.nameOf(pair.a)} and ${telling.nameOf(pair.b)} apart`,
      );
    }
    return sentence(`${whom} ${clause}`);
  });
}

/** The first sentence of the answer of the first primary metric: what lists, feeds and page descriptions print. */
export function answerInShort(telling: Telling): string {
  const [metric] = primaryMetrics(telling.findings);
  if (metric === undefined) return 'Nothing was judged.';
  return answerSentences(metric, telling)[0] ?? 'Nothing was judged.';
}

/** "For this golfer", "For these three golfers", "For golfers like these". */
export function forWhomShort({ design }: Findings): string {
  if (design.hitters === 1) return 'For this golfer';
  return design.unit === 'hitter'
    ? 'For golfers like these'
    : `For these ${countWord(design.hitters)} golfers`;
}

/**
 * How much, gap by gap: "Alder over Cedar, about 12 yards; 7 to 18 would fit these shots." Without any gap, what would
 * fit for the first pairs, since how large a gap could hide is then the news.
 */
export function howMuch(metric: MetricFindings, telling: Telling): readonly string[] {
  const surest = surestFirst(metric);
  const gaps = surest.filter(({ verdict }) => isGap(verdict));
  return (gaps.length > 0 ? gaps : surest).slice(0, mostAmounts).flatMap((pair, index) => {
    const gap = toldGap(pair, metric, telling);
    if (gap === null) return [];
    const fit = index === 0 ? 'would fit these shots.' : 'would fit.';
    const numbers = gapNumbers(pair, metric, telling).replace(/would fit\.$/, fit);
    const about = numbers.startsWith('About ')
      ? `${gap.ahead} over ${gap.behind}, a${numbers.slice(1)}`
      : numbers;
    return [capitalised(about)];
  });
}
