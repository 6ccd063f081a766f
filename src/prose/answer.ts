import { toCanonical } from '../trade/units.ts';
import type { Findings, MetricFindings, PairFindings } from '../findings/findings.ts';
import { isGap, type VerdictId } from '../findings/verdict.ts';
import { groupSentences } from './groupSentences.ts';
import { answerClause, eitherWay, gapNumbers, printedLimits } from './pairSentence.ts';
import { withUnit } from './readerUnits.ts';
import { toldGap, type Telling } from './telling.ts';
import { counted, countWord, listed, sentence } from './words.ts';

/** More pairs than these, of more than three contenders, stand in the chart and its table. */
const mostPairs = 3;
/** More amounts than these stand in the chart and its table. */
const mostAmounts = 3;
/** Of more than three contenders, whose names take the room. */
const mostAmountsOfMany = 2;

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

/**
 * The answer of one primary metric, the first sentence saying for whom it holds: a sentence for each pair of two or
 * three, else who is ahead and who behind.
 */
export function answerSentences(metric: MetricFindings, telling: Telling): readonly string[] {
  const group = groupSentences(metric, telling);
  if (group !== null) {
    const [first = '', ...others] = group;
    return [`${forWhomShort(telling.findings)},${calculatedBy(metric)} ${first}`, ...others];
  }
  const pairs = surestFirst(metric);
  const alike = openAlike(pairs.slice(0, mostPairs), metric, telling);
  const told = pairs.slice(0, mostPairs).flatMap((pair, index) => {
    const clause = index > 0 ? answerClause(pair, metric, telling) : firstClause(pair, metric, telling);
    if (alike.indexOf(pair) > 0) return alike.indexOf(pair) === 1 ? sameGoesFor(alike, metric, telling) : [];
    return index > 0 || pair.verdict === 'not-judged'
      ? asSentence(clause)
      : asSentence(`${forWhomShort(telling.findings)}${opening(metric, clause)} ${clause}`);
  });
  const rest = pairs.length - mostPairs;
  return [
    // A contender that was not judged says so in each of its pairs.
    ...new Set(told),
    ...(rest > 0 ? [sentence(`${counted(rest, 'more pair')} stand below`)] : []),
  ];
}

/** The gaps whose cause is open for the same reason as that of the surest one, which says it for all. */
function openAlike(
  pairs: readonly PairFindings[],
  metric: MetricFindings,
  telling: Telling,
): readonly PairFindings[] {
  const reason = (pair: PairFindings): string => answerClause(pair, metric, telling).split(';')[1] ?? '';
  const open = pairs.filter(({ credit, verdict }) => credit === 'open' && isGap(verdict));
  const [first] = open;
  return first === undefined ? [] : open.filter((pair) => reason(pair) === reason(first));
}

/** "The same goes for Used over Worn and Fresh over Used." */
function sameGoesFor(
  [, ...others]: readonly PairFindings[],
  metric: MetricFindings,
  telling: Telling,
): readonly string[] {
  const names = others.flatMap((pair) => {
    const gap = toldGap(pair, metric, telling);
    if (gap === null) return [];
    return [`${gap.ahead} ${metric.better === 'more' ? 'over' : `${gap.more} than`} ${gap.behind}`];
  });
  return [`The same goes for ${listed(names)}.`];
}

/** From this gap on a calculated distance may head a page without saying so in the same breath. */
const surelyMoreM = toCanonical(5, 'yd');

/**
 * Who worked the readings out, where the headline has to say so: our flight model always, a monitor's own calculation of
 * a distance where a gap is under 5 yards.
 */
export function calculatedBy(metric: MetricFindings): string {
  if (metric.readBy === 'flight-model') return ' by our own flight model,';
  const small = metric.pairs.some(
    ({ verdict, estimate }) => isGap(verdict) && Math.abs(estimate ?? 0) < surelyMoreM,
  );
  const distance = metric.id === 'carry' || metric.id === 'total';
  return metric.class === 'modelled' && distance && small ? " by the monitor's own calculation," : '';
}

function opening(metric: MetricFindings, clause: string): string {
  const by = calculatedBy(metric);
  return by === '' ? comma(clause) : `,${by}`;
}

/** The clause that opens the answer: "these shots cannot tell whether Birch or Cedar carried farther". */
function firstClause(pair: PairFindings, metric: MetricFindings, telling: Telling): string {
  const gap = toldGap(pair, metric, telling);
  const clause = answerClause(pair, metric, telling);
  if (gap === null || pair.verdict !== 'too-close' || pair.credit === 'open') return clause;
  const [a, b] = [telling.nameOf(pair.a), telling.nameOf(pair.b)];
  return pair.overlays.includes('visits-alike')
    ? `these shots cannot tell ${a} and ${b} apart; shots of one turn are alike`
    : `these shots cannot tell whether ${a} or ${b} ${gap.verb} ${gap.more}`;
}

/** A clause as a sentence; a name it begins with keeps its letters. */
function asSentence(clause: string): string {
  return clause.startsWith('these ') ? sentence(clause) : `${clause}.`;
}

/** "For this golfer Alder carried ...", but "For this golfer, Birch or Cedar: ...". */
function comma(clause: string): string {
  return clause.includes(':') ? ',' : '';
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
 * fit for the first pairs, or of many contenders for any two, since how large a gap could hide is then the news.
 */
export function howMuch(metric: MetricFindings, telling: Telling): readonly string[] {
  const surest = surestFirst(metric);
  const gaps = surest.filter(({ verdict }) => isGap(verdict));
  const many = metric.byContender.length > 3;
  const any = many && gaps.length === 0 ? anyTwo(metric, telling) : null;
  if (any !== null) return [any];
  const most = many ? mostAmountsOfMany : mostAmounts;
  return (gaps.length > 0 ? gaps : surest).slice(0, most).flatMap((pair, index) => {
    const gap = toldGap(pair, metric, telling);
    if (gap === null) return [];
    const fit = index === 0 ? 'would fit these shots.' : 'would fit.';
    if (gap.lower <= 0) {
      const { lower, upper } = printedLimits(gap);
      return [`From ${eitherWay(gap, upper, lower)} ${fit}`];
    }
    const numbers = gapNumbers(pair, metric, telling).replace(/would fit\.$/, fit);
    const over = metric.better === 'more' ? 'over' : `${gap.more} than`;
    return [`${gap.ahead} ${over} ${gap.behind}, ${numbers.charAt(0).toLowerCase()}${numbers.slice(1)}`];
  });
}

/**
 * "Any two could be up to 6 yards apart; more would not fit these shots.": all intervals hold together. Null where a
 * pair was not judged, or was counted by turns, which make its interval over shots too narrow.
 */
function anyTwo(metric: MetricFindings, telling: Telling): string | null {
  if (metric.pairs.some(({ overlays }) => overlays.includes('visits-alike'))) return null;
  const told = metric.pairs.map((pair) => toldGap(pair, metric, telling));
  const widest = told.reduce(
    (wide, gap) => (gap !== null && gap.upper > (wide?.upper ?? 0) ? gap : wide),
    null,
  );
  if (widest === null || told.includes(null)) return null;
  const most = withUnit(printedLimits(widest).upper, widest.unit);
  return `Any two could be up to ${most} apart; more would not fit these shots.`;
}
