import type { MetricFindings, PairFindings } from '../findings/findings.ts';
import { isGap } from '../findings/verdict.ts';
import { formatNumber, printAt, printLimit } from './numbers.ts';
import { withUnit } from './readerUnits.ts';
import { toldGap, type Telling, type ToldGap } from './telling.ts';
import { counted, countWord, listed, placeInRow } from './words.ts';

/** Under this many shots a clear gap is called a first look. */
const firstLookShots = 8;

/** The answer about one pair as the row of a chart or table says it: one short sentence. */
export function pairSentence(pair: PairFindings, metric: MetricFindings, telling: Telling): string {
  const gap = toldGap(pair, metric, telling);
  const either = `${telling.nameOf(pair.a)} or ${telling.nameOf(pair.b)}`;
  const both = `${telling.nameOf(pair.a)} and ${telling.nameOf(pair.b)}`;
  if (gap === null || pair.verdict === 'not-judged') return notJudged(pair, metric, telling);
  if (pair.credit === 'open') {
    return isGap(pair.verdict)
      ? openGap(pair, gap, telling)
      : `${either}: cannot tell; ${orderCouldHide(telling)}.`;
  }
  if (pair.overlays.includes('leans')) return leans(pair, gap, both);
  switch (pair.verdict) {
    case 'clear':
      return `${firstLook(pair, metric)}${gap.ahead} clearly ${gap.more} than ${gap.behind}.`;
    case 'size-unsure':
    case 'maybe-small':
      return `${gap.ahead} ${gap.more} than ${gap.behind}, size unsure.`;
    case 'small':
    case 'level':
      return `${both}: no gap that matters.`;
    case 'too-close':
      return `${either}: cannot tell.`;
  }
}

/** The same answer as a whole sentence of running text, without its opening "For this golfer". */
export function answerClause(pair: PairFindings, metric: MetricFindings, telling: Telling): string {
  const gap = toldGap(pair, metric, telling);
  const either = `${telling.nameOf(pair.a)} or ${telling.nameOf(pair.b)}`;
  const both = `${telling.nameOf(pair.a)} and ${telling.nameOf(pair.b)}`;
  if (gap === null || pair.credit === 'open' || pair.overlays.includes('leans'))
    return withoutStop(pairSentence(pair, metric, telling));
  switch (pair.verdict) {
    case 'clear':
      return `${gap.ahead} ${gap.verb} clearly ${gap.more} than ${gap.behind}`;
    case 'size-unsure':
      return `${gap.ahead} ${gap.verb} ${gap.more} than ${gap.behind}, though how much is unsure`;
    case 'maybe-small':
      return `${gap.ahead} ${gap.verb} ${gap.more} than ${gap.behind}, though perhaps too little to matter`;
    case 'small':
      return `${both} showed no gap that matters: a real one, about ${withUnit(printAt(gap.gap, gap.step), gap.unit)}`;
    case 'level':
      return `${both} showed no gap that matters: any gap is under ${mattersText(gap)}`;
    case 'too-close':
      return `${either}: these shots cannot tell`;
    case 'not-judged':
      return withoutStop(notJudged(pair, metric, telling));
  }
}

/** Estimate and interval in words: "About 9 yards; 2 to 16 would fit." */
export function gapNumbers(pair: PairFindings, metric: MetricFindings, telling: Telling): string {
  const gap = toldGap(pair, metric, telling);
  if (gap === null) return 'No figure.';
  const { lower, upper } = printedLimits(gap);
  if (gap.lower > 0) {
    return `About ${withUnit(printAt(gap.gap, gap.step), gap.unit)}; ${lower} to ${upper} would fit.`;
  }
  return `${gap.ahead} ${upper} ${gap.more} to ${gap.behind} ${lower} ${gap.more} would fit.`;
}

/** Limits of a told gap as printed, signs dropped: which side they lie on is said in words. */
export function printedLimits(gap: ToldGap): { readonly lower: string; readonly upper: string } {
  const thresholds = [0, gap.matters, -gap.matters];
  const print = (value: number): string => printLimit(value, gap.step, gap.unit, thresholds).replace('−', '');
  return { lower: print(gap.lower), upper: print(gap.upper) };
}

/** The smallest gap that matters, with its unit. */
export function mattersText(gap: Pick<ToldGap, 'matters' | 'unit'>): string {
  const decimals =
    [0, 1, 2, 3].find((d) => Math.abs(gap.matters - Number(gap.matters.toFixed(d))) < 0.0005) ?? 1;
  return withUnit(formatNumber(gap.matters, gap.unit === 'm' ? Math.min(decimals, 1) : decimals), gap.unit);
}

/** Most other ways of working it out disagree. */
function leans(pair: PairFindings, gap: ToldGap, both: string): string {
  return isGap(pair.verdict)
    ? `Leans to ${gap.ahead} over ${gap.behind}, not settled.`
    : `${both}: leans to no gap, not settled.`;
}

function firstLook(pair: PairFindings, metric: MetricFindings): string {
  return fewestShots(pair, metric) < firstLookShots ? 'First look: ' : '';
}

function fewestShots(pair: PairFindings, metric: MetricFindings): number {
  const counts = metric.byContender.filter(({ id }) => id === pair.a || id === pair.b).map(({ n }) => n);
  return Math.min(...counts);
}

function notJudged(pair: PairFindings, metric: MetricFindings, telling: Telling): string {
  const short = metric.byContender.filter(({ id, n }) => (id === pair.a || id === pair.b) && n < 5);
  const [first] = short;
  if (first === undefined) {
    return `${telling.nameOf(pair.a)} or ${telling.nameOf(pair.b)}: not judged, every reading is the same.`;
  }
  if (first.n === 0) return `${listed(short.map(({ id }) => telling.nameOf(id)))}: not judged, no reading.`;
  const count = countWord(Math.min(...short.map(({ n }) => n)));
  const shots = count === 'one' ? 'shot is' : 'shots are';
  return `${listed(short.map(({ id }) => telling.nameOf(id)))}: not judged, ${count} ${shots} too few.`;
}

function openGap(pair: PairFindings, gap: ToldGap, telling: Telling): string {
  const { sequence } = telling.findings.design;
  const nameTurn = (name: string): string => {
    const at = sequence?.findIndex((id) => telling.nameOf(id) === name) ?? -1;
    return at < 0 || sequence === null ? name : `${name}, hit ${placeInRow(at, sequence.length)},`;
  };
  const verb = gap.verb === 'carried' ? 'went' : gap.verb;
  const told = `${nameTurn(gap.ahead)} ${verb} ${gap.more} than ${nameTurn(gap.behind)}`.replace(/,$/, '');
  return `${told}; ${openCause(pair)}.`;
}

function openCause(pair: PairFindings): string {
  if (pair.overlays.includes('order-unknown'))
    return 'the order of the shots is not known, so the cause is open';
  if (pair.overlays.includes('order-drift')) return 'results drifted during the test, so the cause is open';
  if (pair.overlays.includes('order-lever'))
    return 'one was hit later than the other on the whole, so the cause is open';
  if (pair.overlays.includes('order-few-visits')) return 'they were hit in few turns, so the cause is open';
  return 'the cause is open';
}

function orderCouldHide(telling: Telling): string {
  return telling.findings.design.order === 'unknown'
    ? 'the order of the shots is not known and could hide a gap'
    : 'the order they were hit in could hide a gap';
}

function withoutStop(text: string): string {
  return text.replace(/\.$/, '');
}

/** "12 shots with each head", or the spread of counts where they differ. */
export function shotsEach(counts: readonly number[], noun: string): string {
  const [least, most] = [Math.min(...counts), Math.max(...counts)];
  return least === most
    ? `${counted(least, 'shot')} with each ${noun}`
    : `${least} to ${most} shots with each ${noun}`;
}
