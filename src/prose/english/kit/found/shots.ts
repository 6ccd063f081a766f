import type { MetricFindings } from '../../../../findings/findings.ts';
import { averageLimits, printAverage } from '../../../printSteps.ts';
import { withUnit } from '../../../readerUnits.ts';
import type { AnswerBlock, PairAnswer } from '../../../statement.ts';
import { printingFor, type Telling } from '../../../telling.ts';
import { capitalised, counted } from '../../../words.ts';
import { headOf } from '../../answerHead.ts';
import { leadersToldAlone, toldInBrief } from '../../answersInBrief.ts';
import { toldApartOf } from '../../countedAnswers.ts';
import { inShortUnit } from '../../statementInBrief.ts';
import type { ChartFinding } from './chartFinding.ts';

/**
 * The averages side by side, and in the same breath the answer: "Average carry of balls, one golfer: 172 yd with Heron, 167
 * with Plover, 161 with Wren; Heron past Plover, and both past Wren."
 */
export function shotsFound(
  block: AnswerBlock,
  answers: readonly PairAnswer[],
  metric: MetricFindings,
  telling: Telling,
): ChartFinding {
  const averages = averagesInBrief(metric, telling);
  const head = headOf(block, telling);
  const shots = metric.byContender.reduce((sum, { n }) => sum + n, 0);
  const brief = `${headOf(block, telling, { form: 'short' })}, ${counted(shots, 'shot')}`;
  const leaders = leadersToldAlone(block, answers, telling);
  const bare = toldInBrief(block, telling, 'bare');
  const told = (answer: string): readonly string[] =>
    averages === '' ? [] : [`${averageHead(block, telling)}: ${averages}; ${answer}.`];
  return {
    forms: [
      `${brief}: ${toldApartOf(answers)}.`,
      ...(leaders === null ? [] : [`${brief}: ${leaders}.`]),
      `${brief}: ${bare}.`,
      `${head}, ${counted(shots, 'shot')}: ${bare}.`,
      ...told(bare),
      ...told(toldInBrief(block, telling, 'unsized')),
    ],
    further: rangesOf(metric, telling),
  };
}

/** "Average carry of balls, one golfer" */
const averageHead = (block: AnswerBlock, telling: Telling): string =>
  headOf(block, telling, { average: 'average ' });

/** "172 yd with Heron, 167 with Plover": a name that ends in a figure never stands before one. Empty where a thing has no reading. */
function averagesInBrief(metric: MetricFindings, telling: Telling): string {
  const printing = printingFor(metric.id, telling);
  const told = metric.byContender.flatMap(({ id, mean }) => (mean === null ? [] : [{ id, mean }]));
  if (told.length < metric.byContender.length) return '';
  return told
    .map(({ id, mean }, at) => {
      const printed = printAverage(mean, printing);
      return `${at === 0 ? inShortUnit(printed, printing) : printed} with ${telling.the(id)}`;
    })
    .join(', ');
}

/** "Likely ranges of these averages, each by itself: 170 to 174 yards with Heron, 165 to 169 with Plover." */
function rangesOf(metric: MetricFindings, telling: Telling): readonly string[] {
  const printing = printingFor(metric.id, telling);
  const told = metric.byContender.flatMap(({ id, ci }) => (ci === null ? [] : [{ id, ci }]));
  if (told.length < metric.byContender.length) return [];
  const ranges = told.map(({ id, ci }, at) => {
    const [low, high] = averageLimits(ci, printing);
    return `${low} to ${at === 0 ? withUnit(high, printing.unit) : high} with ${telling.the(id)}`;
  });
  return [capitalised(`likely averages, each by itself: ${ranges.join(', ')}.`)];
}
