import type { MetricFindings } from '../findings/findings.ts';
import { printAt, stepFor } from './numbers.ts';
import { mattersText } from './pairSentence.ts';
import { toReader, unitFor, withUnit } from './readerUnits.ts';
import type { Telling } from './telling.ts';
import { counted, countWord } from './words.ts';

/** "Three equal balls would differ by about 3 yards by luck, now and then by 6." Null where luck cannot be told. */
export function luckSentence(metric: MetricFindings, telling: Telling): string | null {
  if (metric.luck === null) return null;
  const judged = metric.byContender.filter(({ n }) => n >= 5).length;
  const unit = unitFor(metric.id, telling.system);
  const average = toReader(metric.luck.average, metric.id, telling.system);
  const upTo = toReader(metric.luck.upTo, metric.id, telling.system);
  const step = stepFor(unit, average);
  const equal = `${countWord(judged)} equal ${telling.nouns}`.replace(/^./, (first) => first.toUpperCase());
  return `${equal} would differ by about ${withUnit(printAt(average, step), unit)} by luck, now and then by ${printAt(upTo, step)}.`;
}

/** What the test could see: least gap, shots it would take, whether *level* was in reach. Empty where it cannot be said. */
export function reachSentences(metric: MetricFindings, telling: Telling): readonly string[] {
  if (metric.detectable === null || metric.shotsNeeded === null) return [];
  const unit = unitFor(metric.id, telling.system);
  const least = toReader(metric.detectable, metric.id, telling.system);
  const matters = toReader(metric.matters, metric.id, telling.system);
  const [few, many] = metric.shotsNeeded;
  const hit = Math.min(...metric.byContender.filter(({ n }) => n > 0).map(({ n }) => n));
  const each = few === many ? `about ${many}` : many >= mostShots ? `${few} or more` : `${few} to ${many}`;
  const enough = least <= matters;
  return [
    `A test like this finds a gap of ${withUnit(printAt(least, stepFor(unit, least)), unit)} four times in five.`,
    ...(enough
      ? []
      : [
          `For ${mattersText({ matters, unit })} it would take ${each} shots with each ${telling.noun}; we hit ${hit}.`,
        ]),
    ...levelSentence(metric, telling),
    ...(metric.pairs.some(({ overlays }) => overlays.includes('found-too-big'))
      ? ['Tests this short, when they find a gap, usually find it too big.']
      : []),
  ];
}

/** The count beyond which a range of shots is no longer worth printing. */
const mostShots = 1000;

function levelSentence(metric: MetricFindings, telling: Telling): readonly string[] {
  const unsettled = metric.pairs.some(({ verdict }) => verdict === 'too-close');
  if (!unsettled || metric.shotsToShowLevel === null) return [];
  const shots = counted(metric.shotsToShowLevel, 'shot');
  return [
    `It was too short to be able to show that no gap matters: for that, about ${shots} with each ${telling.noun} would be needed.`,
  ];
}
