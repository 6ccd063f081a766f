import type { MetricFindings } from '../findings/findings.ts';
import { fewestShotsJudged, mostShots } from '../findings/thresholds.ts';
import { metrics } from '../trade/metrics.ts';
import { formatNumber, printAt, printLimit, stepFor } from './numbers.ts';
import { mattersText } from './pairSentence.ts';
import { toReader, unitFor, withUnit } from './readerUnits.ts';
import type { Telling } from './telling.ts';
import { capitalised, countWord } from './words.ts';

/**
 * "Three equal balls would differ by about 3 yards by luck, now and then by 6.", of which metric where the report
 * answers for several. Null where luck cannot be told.
 */
export function luckSentence(metric: MetricFindings, telling: Telling): string | null {
  if (metric.luck === null) return null;
  const judged = metric.byContender.filter(({ n }) => n >= fewestShotsJudged).length;
  const unit = unitFor(metric.id, telling.system);
  const average = toReader(metric.luck.average, metric.id, telling.system);
  const upTo = toReader(metric.luck.upTo, metric.id, telling.system);
  const step = stepFor(unit, average);
  const equal = telling.noun.startsWith('set of ') ? telling.noun.replace('set', 'sets') : telling.nouns;
  const several = telling.findings.metrics.filter(({ role }) => role === 'primary').length > 1;
  return capitalised(
    `${several ? `in ${metrics[metric.id].name}, ` : ''}${countWord(judged)} equal ${equal} would differ by about ` +
      `${withUnit(printAt(average, step), unit)} by luck, now and then by ${printAt(upTo, step)}.`,
  );
}

/** Averages that do not count because they stand on far fewer shots than the others. */
function cellsSentence({ cellsLeftOut }: MetricFindings, { noun }: Telling): readonly string[] {
  if (cellsLeftOut === 0) return [];
  return cellsLeftOut === 1
    ? [`One golfer hit too few shots with one ${noun} for them to count.`]
    : [`In ${countWord(cellsLeftOut)} cases a golfer hit too few shots with one ${noun} for them to count.`];
}

/** What the test could see: least gap, shots it would take, whether *level* was in reach. Empty where it cannot be said. */
export function reachSentences(metric: MetricFindings, telling: Telling): readonly string[] {
  if (metric.detectable === null || metric.shotsNeeded === null) return cellsSentence(metric, telling);
  const unit = unitFor(metric.id, telling.system);
  const least = toReader(metric.detectable, metric.id, telling.system);
  const matters = toReader(metric.matters, metric.id, telling.system);
  const [few, many] = metric.shotsNeeded;
  const hit = metric.byContender.filter(({ n }) => n > 0).map(({ n }) => n);
  const enough = least <= matters;
  // A least gap a little over what matters must not read as that very gap.
  const found = withUnit(printLimit(least, stepFor(unit, least), unit, [matters]), unit);
  return [
    `A test like this finds a gap of ${found} four times in five.`,
    ...(enough
      ? []
      : [
          `For ${mattersText({ matters, unit })} it would take ${shotsRange(few, many)} shots with each ${telling.noun}; we hit ${shotsHit(hit)}.`,
        ]),
    ...levelSentence(metric, telling),
    ...(metric.pairs.some(({ overlays }) => overlays.includes('found-too-big'))
      ? ['Tests this short, when they find a gap, usually find it too big.']
      : []),
  ];
}

function shotsHit(counts: readonly number[]): string {
  const [least, most] = [Math.min(...counts), Math.max(...counts)];
  return least === most ? String(least) : `${least} to ${most}`;
}

function shotsRange(few: number, many: number): string {
  const print = (shots: number): string => formatNumber(shots, 0);
  if (many >= mostShots) return `${print(few)} or more`;
  return few === many ? `about ${print(many)}` : `${print(few)} to ${print(many)}`;
}

function levelSentence(metric: MetricFindings, telling: Telling): readonly string[] {
  const unsettled = metric.pairs.some(({ verdict }) => verdict === 'too-close');
  if (!unsettled || metric.shotsToShowLevel === null) return [];
  const needed = metric.shotsToShowLevel;
  return [
    `It was too short to show that no gap matters: that takes ${shotsRange(needed, needed)} shots with each ${telling.noun}.`,
  ];
}
