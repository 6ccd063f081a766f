import type { MetricFindings, PairFindings } from '../../../../findings/findings.ts';
import { chanceOf } from '../../../reach.ts';
import { printDifference, printSize } from '../../../printSteps.ts';
import type { AnswerBlock, PairAnswer } from '../../../statement.ts';
import { printingFor, type Telling } from '../../../telling.ts';
import { countWord } from '../../../words.ts';
import { headOf } from '../../answerHead.ts';
import { answerWords } from '../../answerWords.ts';
import { toldInBrief } from '../../answersInBrief.ts';
import { toldApartOf } from '../../countedAnswers.ts';
import { inShortUnit, pastWord } from '../../statementInBrief.ts';
import { sayChance } from '../../reach.ts';
import { afterTested, type ChartFinding } from './chartFinding.ts';

/** Statuses under which the one ahead is said to be ahead. */
const ahead: readonly PairAnswer['status'][] = ['clear', 'size-uncertain', 'small', 'cause-unclear'];

/** The answer about a pair, and the chart that is about it. */
export interface ChartedAnswer {
  readonly block: AnswerBlock;
  readonly answer: PairAnswer;
  /** The chart's own heading. */
  readonly heading: string;
}

/**
 * The difference seen beside what chance alone makes, with the answer: "Carry of balls, one golfer: Heron 12 yd past Wren,
 * by chance typically 2; clear difference."
 */
export function luckFound(
  { block, answer, heading }: ChartedAnswer,
  metric: MetricFindings,
  telling: Telling,
): ChartFinding {
  const printing = printingFor(metric.id, telling);
  const chance = chanceOf(metric);
  const whole = afterTested(telling, heading);
  if (answer.difference === null || metric.luck === null || chance === null)
    return { forms: [whole], further: [] };
  const printed = printDifference(answer.difference.estimate, printing);
  const isLevel = Number(printed) === 0;
  const seen = inShortUnit(printed, printing);
  const status = `${answerWords[answer.status].after}${answer.firstLook && answer.status === 'clear' ? ' on a first look' : ''}`;
  const [one, other] = [telling.the(answer.ahead), telling.the(answer.behind)];
  const past = pastWord(metric.id, answer.by);
  // A name that ends in a figure never stands before one.
  const leads = /\d$/.test(one) ? `${one} ${past} ${other} by ${seen}` : `${one} ${seen} ${past} ${other}`;
  const between = isLevel ? `${one} and ${other} level` : `${seen} between ${one} and ${other}`;
  const apart = ahead.includes(answer.status) ? leads : between;
  const byChance = printSize(metric.luck.average, printing);
  return {
    forms: [
      `${headOf(block, telling, { form: 'short' })}: ${isLevel ? 'level' : `${seen} apart`}, by chance ${byChance}, ${status}.`,
      ...(answer.status === 'clear'
        ? [`${headOf(block, telling, { form: 'short' })}: ${apart}, by chance ${byChance}.`]
        : []),
      `${headOf(block, telling, { form: 'short' })}: ${apart}, by chance ${byChance}, ${status}.`,
      `${headOf(block, telling)}: ${apart}, by chance typically ${byChance}; ${status}.`,
      whole,
    ],
    further: [sayChance(chance, telling)],
  };
}

/** For how many golfers the one ahead was ahead by its averages: "Shafts, eight golfers. On average Sorrel ...". */
export function golfersFound(
  { block, answer, heading }: ChartedAnswer,
  { byHitter }: PairFindings,
  telling: Telling,
): ChartFinding {
  const flip = (answer.ahead === answer.about.a ? 1 : -1) * (answer.by === 'less' ? -1 : 1);
  const own = byHitter.flatMap(({ estimate }) => (estimate === null ? [] : [flip * estimate]));
  const count = own.filter((difference) => difference > 0).length;
  const whom =
    count === own.length
      ? count === 2
        ? 'both'
        : `all ${countWord(count)}`
      : `${countWord(count)} of ${countWord(own.length)}`;
  const past = `${telling.the(answer.ahead)} ${pastWord(answer.about.metric, answer.by)} ${telling.the(answer.behind)}`;
  const status = ['clear', 'size-uncertain'].includes(answer.status)
    ? ''
    : `; over all ${answerWords[answer.status].after}`;
  return {
    forms: [
      `${headOf(block, telling, { form: 'short' })}: on average ${past} for ${whom}${['clear', 'size-uncertain'].includes(answer.status) ? '' : `, ${answerWords[answer.status].after}`}.`,
      `${headOf(block, telling)}: on average ${past} for ${whom}${status}.`,
      afterTested(telling, heading),
    ],
    further: [],
  };
}

/** What is compared with what it would be with every shot counted. */
interface WithLeftOut {
  readonly answers: readonly PairAnswer[];
  readonly pairs: readonly PairFindings[];
  /** How many shots were left out. */
  readonly leftOut: number;
}

/** Whether the answer is another one with every shot counted. */
export function leftOutFound(
  block: AnswerBlock,
  { answers, pairs, leftOut }: WithLeftOut,
  telling: Telling,
): ChartFinding {
  const changed = pairs.filter(({ overlays }) => overlays.includes('depends-on-left-out'));
  const shots = leftOut === 1 ? 'the left-out shot' : `the ${countWord(leftOut)} left-out shots`;
  const bare = toldInBrief(block, telling, 'bare');
  const short = headOf(block, telling, { form: 'short' });
  const many = toldApartOf(answers);
  const whom =
    pairs.length === 1
      ? ''
      : ` for ${changed.map(({ a, b }) => `${telling.the(a)} and ${telling.the(b)}`).join(', ')}`;
  return {
    forms:
      changed.length === 0
        ? [
            `${short}: ${many}; the same with left-out shots.`,
            `${short}: ${bare}; the same with ${shots}.`,
            `${headOf(block, telling)}: ${bare}; the same with ${shots} counted.`,
          ]
        : [
            `${short}: ${many}; not so with left-out shots.`,
            `${short}: ${bare}; not so with ${shots}${whom}.`,
            `${headOf(block, telling)}: ${bare}; not so with ${shots} counted${whom}.`,
          ],
    further: [],
  };
}

/** How the measure of a picture is called, then its heading: "Carry of lengths, one golfer. By the model ...". */
export const headingFound = (block: AnswerBlock, heading: string, telling: Telling): ChartFinding => ({
  forms: [`${headOf(block, telling)}. ${heading}.`],
  further: [],
});
