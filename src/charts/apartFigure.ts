import type { MetricFindings, PairFindings } from '../findings/findings.ts';
import { metrics } from '../trade/metrics.ts';
import { surestFirst } from '../prose/answer.ts';
import { comparativeOf } from '../prose/comparatives.ts';
import { printAt } from '../prose/numbers.ts';
import { gapNumbers, mattersText, pairSentence, printedLimits } from '../prose/pairSentence.ts';
import { shortUnit, toReader, unitFor, unitWord } from '../prose/readerUnits.ts';
import { toldGap, type Telling } from '../prose/telling.ts';
import { capitalised, countWord } from '../prose/words.ts';
import { apartChart } from './apart.ts';
import type { ApartPair } from './apartInput.ts';
import { contenderName } from './contenderName.ts';
import type { Figure, Table } from './figure.ts';
import type { FigurePlace } from './figurePlace.ts';

/** *How far apart?*: every pair of one metric with its gap, interval and answer. */
export function apartFigure(metric: MetricFindings, telling: Telling, { id, named }: FigurePlace): Figure {
  const { name } = metrics[metric.id];
  const unit = unitFor(metric.id, telling.system);
  const matters = toReader(metric.matters, metric.id, telling.system);
  const axis = `${unitWord(unit)} ${comparativeOf(metric.id).more}`.trim();
  return apartChart({
    id,
    question: named ? `How far apart? ${capitalised(name)}` : 'How far apart?',
    subject: `The ${metric.byContender.length > 2 ? `gaps in ${name} between every two of` : `gap in ${name} between`} the ${telling.nouns}`,
    finding: caption(metric, telling),
    description: description(metric, telling),
    table: gapTable(metric, telling),
    pairs: metric.pairs.map((pair) => apartPair(pair, metric, telling)),
    matters,
    axis,
    legend: `Under ${mattersText({ matters, unit })}: too small to matter`,
  });
}

function apartPair(pair: PairFindings, metric: MetricFindings, telling: Telling): ApartPair {
  const words = {
    a: contenderName(pair.a, telling),
    b: contenderName(pair.b, telling),
    sentence: pairSentence(pair, metric, telling),
  };
  const gap = toldGap(pair, metric, telling);
  if (gap === null || pair.estimate === null || pair.ci === null) {
    return { kind: 'not-judged', ...words, numbers: '' };
  }
  const limits = printedLimits(gap);
  // Limits are printed as told, towards the contender with more; the bar's ends are those of `a` minus `b`.
  const toldFromA = pair.estimate >= 0;
  return {
    kind: 'judged',
    ...words,
    numbers: gapNumbers(pair, metric, telling),
    estimate: toReader(pair.estimate, metric.id, telling.system),
    low: toReader(pair.ci[0], metric.id, telling.system),
    high: toReader(pair.ci[1], metric.id, telling.system),
    printed: {
      estimate: printAt(gap.gap, gap.step),
      low: toldFromA ? limits.lower : limits.upper,
      high: toldFromA ? limits.upper : limits.lower,
    },
  };
}

function caption(metric: MetricFindings, telling: Telling): string {
  const { name } = metrics[metric.id];
  const percent = `${Number((100 * (metric.pairs[0]?.level ?? 0.95)).toFixed(1))}\u00a0%`;
  const together = metric.pairs.length === 1 ? '' : `, the ${countWord(metric.pairs.length)} pairs together`;
  return (
    `Gaps in average ${name}. The ring leans towards the ${telling.noun} with more. ` +
    `Bar: every gap that would fit these shots (${percent}${together}), thick where it would matter.`
  );
}

function description(metric: MetricFindings, telling: Telling): string {
  const told = surestFirst(metric).map((pair) => {
    const answer = pairSentence(pair, metric, telling);
    return pair.estimate === null ? answer : `${answer} ${gapNumbers(pair, metric, telling)}`;
  });
  return [...new Set(told)].join(' ');
}

/** Every pair with its figures; nothing rounded away that the verdict hangs on. */
function gapTable(metric: MetricFindings, telling: Telling): Table {
  const unit = shortUnit(unitFor(metric.id, telling.system));
  const inUnit = unit === '' ? '' : ` (${unit})`;
  return {
    caption: `Gaps in average ${metrics[metric.id].name}${inUnit}, counted towards the one with more`,
    head: ['Pair', `Gap${inUnit}`, 'Would fit, from', 'to', 'p', 'Answer'],
    rows: metric.pairs.map((pair) => {
      const gap = toldGap(pair, metric, telling);
      const heading = `${telling.nameOf(pair.a)} and ${telling.nameOf(pair.b)}`;
      if (gap === null || pair.p === null)
        return [heading, '–', '–', '–', '–', pairSentence(pair, metric, telling)];
      const limits = printedLimits(gap);
      const lower = gap.lower < 0 && limits.lower !== '0' ? `−${limits.lower}` : limits.lower;
      return [
        heading,
        printAt(gap.gap, gap.step),
        lower,
        limits.upper,
        printedP(pair.p),
        pairSentence(pair, metric, telling),
      ];
    }),
  };
}

/** A p value as it is printed: three decimals, and never a plain 0. */
function printedP(p: number): string {
  return p < 0.001 ? 'under 0.001' : p.toFixed(3);
}
