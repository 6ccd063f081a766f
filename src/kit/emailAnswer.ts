import type { MetricFindings } from '../findings/findings.ts';
import { answerOf } from '../prose/answers.ts';
import { sayShort } from '../prose/english/answerWords.ts';
import { sayAnswer } from '../prose/english/answers.ts';
import { headOf, testedInBrief } from '../prose/english/answerHead.ts';
import { toldInBrief } from '../prose/english/answersInBrief.ts';
import { toldCounted } from '../prose/english/countedAnswers.ts';
import type { BriefForm } from '../prose/english/statementInBrief.ts';
import { findingOf } from '../prose/english/findingInRow.ts';
import { mailWords } from '../prose/english/kit/mailWords.ts';
import { pairAnswers } from '../prose/pairAnswer.ts';
import type { Telling } from '../prose/telling.ts';
import { capitalised, sentence } from '../prose/words.ts';
import { metrics } from '../trade/metrics.ts';

/** Longest answer of a mail, words: it is read at a glance. */
const mostAnswerWords = 40;

/** The answer of a main measure under a heading that says what was measured, what was varied and who hit. */
export interface EmailAnswer {
  readonly heading: string;
  readonly words: string;
}

const forms: readonly BriefForm[] = ['sized', 'unsized', 'bare'];

/** The answer as its page tells it; where that is too long as a list of reports tells it, then in brief. */
export function emailAnswer(metric: MetricFindings, telling: Telling): EmailAnswer {
  const { findings } = telling;
  const block = answerOf(metric, findings);
  const answers = pairAnswers(metric, findings.design);
  const [surest] = answers;
  const inSentences = `${capitalised(metrics[metric.id].name)} of ${testedInBrief(telling)}`;
  // What is told in brief leaves to its heading who calculated the readings.
  const inBrief = headOf(block, telling);
  const told: readonly (readonly [of: string, words: string])[] = [
    [inSentences, sayAnswer(block, telling).join(' ')],
    [inSentences, findingOf(metric, telling)],
    ...forms.map((form) => [inBrief, sentence(toldInBrief(block, telling, form))] as const),
    [inBrief, sentence(toldCounted(answers))],
  ];
  const [of, words] = told.find(([, some]) => wordsIn(some) <= mostAnswerWords) ?? [
    inBrief,
    sentence(toldCounted(answers)),
  ];
  return { heading: surest === undefined ? of : mailWords.answerHeading(of, sayShort(surest)), words };
}

const wordsIn = (text: string): number => text.split(' ').length;
