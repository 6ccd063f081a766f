import type { PairFindings } from '../../../findings/findings.ts';
import { metrics, type MetricId } from '../../../trade/metrics.ts';
import type { PairAnswer } from '../../statement.ts';
import type { Telling } from '../../telling.ts';
import { capitalised, countWord } from '../../words.ts';
import { comparisonOf } from '../comparisons.ts';
import { causeOf } from '../names.ts';

/** Metrics of which a thing has plainly more or less, so that the word needs its verb. */
const plainlyMore: ReadonlySet<MetricId> = new Set([
  'spin_rate',
  'back_spin',
  'side_spin',
  'dynamic_loft',
  'spin_loft',
]);

/** What the one that is ahead is, after its name at the end of a scale: "farther", "spun less". */
export function endWord(metric: MetricId, by: 'more' | 'less'): string {
  const { verb, axis, [by]: whole } = comparisonOf(metric);
  return plainlyMore.has(metric) ? `${verb} ${whole}` : axis[by];
}

/** The ends of a scale of pairs, each with the one that lies right first: by name where all are the same pair. */
export function gapEnds(pairs: readonly (readonly [first: string, second: string])[], ahead: string) {
  const [only, ...others] = new Map(pairs.map((pair) => [JSON.stringify(pair), pair])).values();
  return only === undefined || others.length > 0
    ? { left: `named second ${ahead}`, right: `named first ${ahead}` }
    : ownEnds(...only, ahead);
}

/** The ends of a scale of one pair. */
export const ownEnds = (a: string, b: string, ahead: string) => ({
  left: `${b} ${ahead}`,
  right: `${a} ${ahead}`,
});

/** Over the band: "too small to matter, under 4 yards". */
export const bandWords = (matters: string): string => `too small to matter, under ${matters}`;

/** A pair at the head of its row; `over` where one of them is ahead by its answer. */
export const pairName = (a: string, b: string, status: PairAnswer['status']): string =>
  ahead.includes(status) ? `${a} over ${b}` : `${a} and ${b}`;

const ahead: readonly PairAnswer['status'][] = ['clear', 'size-uncertain', 'small', 'cause-unclear'];

/** What the signs are called: ring, bar, thick where something matters, not filled where a cause is open. */
export function keyWords(
  pairs: readonly Pick<PairFindings, 'openBecause' | 'status'>[],
  matters: number,
  telling: Telling,
) {
  const open = pairs.filter(({ openBecause, status }) => openBecause !== null && status !== 'not-judged');
  const seen = open.some(({ status }) => status === 'cause-unclear');
  return {
    ring: 'best estimate',
    bar: 'likely range',
    thick: matters > 0 ? 'large enough to matter' : null,
    open:
      open.length === 0
        ? null
        : seen
          ? `not filled: we cannot say that it was ${causeOf(telling)}`
          : 'not filled: the order of the shots could hide a difference',
    filled: open.length < pairs.filter(({ status }) => status !== 'not-judged').length,
  };
}

/** Under the scale: "Difference in average carry. Likely ranges: 95% confidence, all three pairs together." */
export function gapFoot(metric: MetricId, level: number, pairs: number): string {
  const percent = `${Number((100 * level).toFixed(1))}%`;
  const together =
    pairs < 2 ? '' : `, ${pairs === 2 ? 'both pairs' : `all ${countWord(pairs)} pairs`} together`;
  const ranges = pairs === 1 ? 'Likely range' : 'Likely ranges';
  return `${capitalised(`difference in average ${metrics[metric].name}`)}. ${ranges}: ${percent} confidence${together}.`;
}

/** The same of rows that are a golfer each. */
export function golferFoot(metric: MetricId, level: number): string {
  return `Difference in average ${metrics[metric].name}, one row a golfer. Likely ranges: ${Number((100 * level).toFixed(1))}% confidence, each by itself.`;
}
