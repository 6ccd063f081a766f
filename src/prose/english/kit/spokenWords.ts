import { metrics, type MetricId } from '../../../trade/metrics.ts';
import type { Front } from '../../../intake/authored/front.ts';
import type { AnswerBlock, PairAnswer } from '../../statement.ts';
import type { Telling } from '../../telling.ts';
import { capitalised, counted, countRange, sentence } from '../../words.ts';
import { toldInBrief } from '../answersInBrief.ts';
import { toldApartOf } from '../countedAnswers.ts';
import type { BriefForm } from '../statementInBrief.ts';

/** "One golfer hit 12 shots with each of three balls.": how a script opens. */
export function openingAloud({ findings, nouns }: Telling, counts: readonly number[]): string {
  const [least, most] = [Math.min(...counts), Math.max(...counts)];
  const shots = least === most ? counted(most, 'shot') : `${countRange(least, most)} shots`;
  const golfers = counted(findings.design.hitters, 'golfer');
  // Of several, "eight golfers hit forty shots" would be forty of each of them.
  const inAll = findings.design.hitters > 1 ? ' in all' : '';
  return `${capitalised(golfers)} hit ${shots}${inAll} with each of ${counted(counts.length, nouns, nouns)}.`;
}

/** The same without the shots: "One golfer hit three balls." */
export const openingInABreath = ({ findings, nouns }: Telling, compared: number): string =>
  `${capitalised(counted(findings.design.hitters, 'golfer'))} hit ${counted(compared, nouns, nouns)}.`;

/** An answer in a breath, after its measure: "On carry: Heron past Plover, and both past Wren." */
export const answerInABreath = (block: AnswerBlock, telling: Telling, form: BriefForm): string =>
  sentence(`on ${metrics[block.about.metric].name}: ${toldInBrief(block, telling, form)}`);

/** The same of many with long names: "On carry: five of 10 pairs told apart." */
export const pairsInABreath = (metric: MetricId, answers: readonly PairAnswer[]): string =>
  sentence(`on ${metrics[metric].name}: ${toldApartOf(answers)}`);

/** What marks a report, as it is said: "These shots are made up. The report has been corrected since." */
export function standingAloud({
  inventedData,
  status,
  corrections,
}: Pick<Front, 'inventedData' | 'status' | 'corrections'>): string {
  return [
    inventedData ? 'These shots are made up.' : '',
    status === 'superseded' ? 'A newer report replaces this one.' : '',
    corrections.length > 0 ? 'The report has been corrected.' : '',
    status === 'draft' ? 'The report is a draft.' : '',
  ]
    .filter((words) => words !== '')
    .join(' ');
}

/** Where there is more, at the end. */
export const moreAloud = (publisher: string): string => `Every shot stands in the report of ${publisher}.`;
