import type { MetricFindings, OverlayId, PairFindings } from '../findings/findings.ts';
import { fewestHittersAsUnit, fewestShotsJudged } from '../findings/thresholds.ts';
import { isGap } from '../findings/verdict.ts';
import { printAt, printLimit, printStated } from './numbers.ts';
import { withUnit } from './readerUnits.ts';
import { toldGap, type Telling, type ToldGap } from './telling.ts';
import { counted, countWord, listed, placeInRow } from './words.ts';

/** Under this many shots a clear gap is called a first look. */
export const firstLookShots = 8;

/** The answer about one pair as the row of a chart or table says it: one short sentence. */
export function pairSentence(pair: PairFindings, metric: MetricFindings, telling: Telling): string {
  const gap = toldGap(pair, metric, telling);
  const { either, both } = namesOf(pair, telling);
  if (gap === null || pair.verdict === 'not-judged') return notJudged(pair, metric, telling);
  if (pair.credit === 'open') {
    if (isGap(pair.verdict)) return openGap(pair, gap, telling);
    const seen = pair.verdict === 'level' ? `${both}: no gap seen` : `${either}: cannot tell`;
    return `${seen}; ${couldHide(pair, telling)}.`;
  }
  if (pair.overlays.includes('leans')) {
    return isGap(pair.verdict)
      ? `Leans to ${gap.ahead} over ${gap.behind}, not settled.`
      : `${both}: leans to no gap, not settled.`;
  }
  switch (pair.verdict) {
    case 'clear':
      return `${isFirstLook(pair, metric) ? 'First look: ' : ''}${gap.ahead} clearly ${gap.more} than ${gap.behind}.`;
    case 'size-unsure':
    case 'maybe-small':
      return `${gap.ahead} ${gap.more} than ${gap.behind}, size unsure.`;
    case 'small':
    case 'level':
      return `${both}: no gap that matters.`;
    case 'too-close':
      return pair.overlays.includes('visits-alike')
        ? `${either}: cannot tell; shots of one turn are alike.`
        : `${either}: cannot tell.`;
  }
}

/** The same answer as a whole sentence of running text, without its opening "For this golfer". */
export function answerClause(pair: PairFindings, metric: MetricFindings, telling: Telling): string {
  const gap = toldGap(pair, metric, telling);
  const { either, both } = namesOf(pair, telling);
  if (gap === null || pair.verdict === 'not-judged') return withoutStop(notJudged(pair, metric, telling));
  if (pair.credit === 'open') return withoutStop(pairSentence(pair, metric, telling));
  if (pair.overlays.includes('leans')) {
    return isGap(pair.verdict)
      ? `these shots lean to ${gap.ahead} over ${gap.behind}, but that is not settled`
      : `these shots lean to no gap between ${both}, but that is not settled`;
  }
  switch (pair.verdict) {
    case 'clear':
      return `${gap.ahead} ${gap.verb} clearly ${gap.more} than ${gap.behind}${isFirstLook(pair, metric) ? ', as a first look' : ''}`;
    case 'size-unsure':
      return `${gap.ahead} ${gap.verb} ${gap.more} than ${gap.behind}, though how much is unsure`;
    case 'maybe-small':
      return `${gap.ahead} ${gap.verb} ${gap.more} than ${gap.behind}, though perhaps too little to matter`;
    case 'small':
      return `${both} showed no gap that matters: there is one, but only about ${withUnit(printAt(gap.gap, gap.step), gap.unit)}`;
    case 'level':
      return `${both} showed no gap that matters: any gap is under ${mattersText(gap)}`;
    case 'too-close':
      return `${either}: ${cannotTell(pair, gap, telling)}`;
  }
}

/** Which of a pair is ahead cannot be told: said of the metric where the report answers for more than one. */
function cannotTell(pair: PairFindings, gap: ToldGap, { findings }: Telling): string {
  const several = findings.metrics.filter(({ role }) => role === 'primary').length > 1;
  const which = several ? ` which ${gap.verb} ${gap.more}` : '';
  const alike = pair.overlays.includes('visits-alike') ? '; shots of one turn are alike' : '';
  return `these shots cannot tell${which}${alike}`;
}

/** Estimate and interval in words: "About 9 yards; 2 to 16 would fit.", "4 yards farther with Birch to 9 with Cedar would fit." */
export function gapNumbers(pair: PairFindings, metric: MetricFindings, telling: Telling): string {
  const gap = toldGap(pair, metric, telling);
  if (gap === null) return 'No figure.';
  const { lower, upper } = printedLimits(gap);
  if (gap.lower > 0) {
    const about = `about ${withUnit(printAt(gap.gap, gap.step), gap.unit)}; ${lower} to ${upper} would fit.`;
    // Counted by turns nothing is sure, though shot by shot it looks so.
    return pair.overlays.includes('visits-alike') ? `Shot by shot, ${about}` : `A${about.slice(1)}`;
  }
  return `${eitherWay(gap, upper, lower)} would fit.`;
}

/**
 * A range that reaches from one contender to the other: "10 yards farther with Birch to 3 with Cedar". Names often end in
 * a number, which must not run into the size. It stands beside the metric's own name: "faster" will do for "faster off
 * the face".
 */
export function eitherWay(gap: ToldGap, towardsAhead: string, towardsBehind: string): string {
  const more = gap.more.replace(/ (?:in|off|at) .*$/, '');
  return `${withUnit(towardsAhead, gap.unit)} ${more} with ${gap.ahead} to ${towardsBehind} with ${gap.behind}`;
}

/** Limits of a told gap as printed, signs dropped: which side they lie on is said in words. */
export function printedLimits(gap: ToldGap): { readonly lower: string; readonly upper: string } {
  const thresholds = [0, gap.matters, -gap.matters];
  const print = (value: number): string => printLimit(value, gap.step, gap.unit, thresholds).replace('−', '');
  return { lower: print(gap.lower), upper: print(gap.upper) };
}

/** The smallest gap that matters, with its unit. */
export function mattersText({ matters, unit }: Pick<ToldGap, 'matters' | 'unit'>): string {
  return withUnit(printStated(matters), unit);
}

function namesOf(
  { a, b }: PairFindings,
  { nameOf }: Telling,
): { readonly either: string; readonly both: string } {
  return { either: `${nameOf(a)} or ${nameOf(b)}`, both: `${nameOf(a)} and ${nameOf(b)}` };
}

function isFirstLook(pair: PairFindings, metric: MetricFindings): boolean {
  const counts = metric.byContender.filter(({ id }) => id === pair.a || id === pair.b).map(({ n }) => n);
  return Math.min(...counts) < firstLookShots;
}

function notJudged(pair: PairFindings, metric: MetricFindings, telling: Telling): string {
  const own = metric.byContender.filter(({ id }) => id === pair.a || id === pair.b);
  const names = (of: typeof own): string => listed(of.map(({ id }) => telling.nameOf(id)));
  const silent = own.filter(({ n }) => n === 0);
  if (silent.length > 0) return `${names(silent)}: not judged, no reading.`;
  const { hitters, unit } = telling.findings.design;
  const { both } = namesOf(pair, telling);
  if (unit === 'hitter') {
    return pair.byHitter.length < fewestHittersAsUnit
      ? `${both}: not judged, fewer than ${countWord(fewestHittersAsUnit)} golfers hit both.`
      : `${both}: not judged, the golfers' averages cannot be compared.`;
  }
  const short = own.filter(({ n }) => n < fewestShotsJudged);
  if (short.length > 0) {
    const fewest = Math.min(...short.map(({ n }) => n));
    return `${names(short)}: not judged, ${countWord(fewest)} ${fewest === 1 ? 'shot is' : 'shots are'} too few.`;
  }
  return hitters > 1 && own.some(({ sd }) => sd !== 0)
    ? `${both}: not judged, a golfer hit fewer than ${countWord(fewestShotsJudged)} shots with one of them.`
    : `${both}: not judged, every reading is the same.`;
}

/** A gap whose cause is open, with what keeps it open in the same sentence. */
function openGap(pair: PairFindings, gap: ToldGap, telling: Telling): string {
  const { sequence } = telling.findings.design;
  const turn = (id: string): string => {
    const at = sequence?.indexOf(id) ?? -1;
    return at < 0 || sequence === null ? '' : `, hit ${placeInRow(at, sequence.length)}`;
  };
  const verb = gap.verb === 'carried' ? 'went' : gap.verb;
  const aheadTurn = turn(gap.aheadId);
  return (
    `${gap.ahead}${aheadTurn}${aheadTurn === '' ? '' : ','} ${verb} ${gap.more} than ` +
    `${gap.behind}${turn(gap.behindId)}; ${aheadTurn === '' ? `${openCause(pair, telling)}, so ` : ''}the cause is open.`
  );
}

function couldHide(pair: PairFindings, telling: Telling): string {
  const it = pair.verdict === 'level' ? 'one' : 'a gap';
  return `${openCause(pair, telling)}, and that could hide ${it}`;
}

/** What keeps the cause of a pair's gap open, in words. */
export function openCause({ overlays }: PairFindings, { findings }: Telling): string {
  const is = (overlay: OverlayId): boolean => overlays.includes(overlay);
  if (is('order-unknown')) return 'the order of the shots is not known';
  if (is('order-drift')) return 'results drifted during the test';
  if (is('order-lever')) return 'one was mostly hit later';
  if (is('order-few-visits')) {
    return findings.design.order === 'stated-mini-blocks'
      ? 'they were hit a few shots at a time'
      : 'each had too few turns';
  }
  return 'they were hit one after another';
}

function withoutStop(text: string): string {
  return text.replace(/\.$/, '');
}

/** "12 shots with each head", or the spread of counts where they differ. */
export function shotsEach(counts: readonly number[], noun: string): string {
  const [least, most] = [Math.min(...counts), Math.max(...counts)];
  const each = `with each ${noun}`;
  return least === most ? `${counted(least, 'shot')} ${each}` : `${least} to ${most} shots ${each}`;
}
