import type { DrawnFigure } from '../charts/figure.ts';
import { figureTraits } from '../charts/figureTraits.ts';
import { isReadingStated } from '../findings/fairness.ts';
import { cautionsOf } from '../prose/cautions.ts';
import { sayAnswerAlone } from '../prose/english/answers.ts';
import {
  sayAnswerCounted,
  sayAnswerFirst,
  sayAnswerInBrief,
  testedInBrief,
} from '../prose/english/answersInBrief.ts';
import { sayCaution } from '../prose/english/cautions.ts';
import { sayCautionInBrief } from '../prose/english/kit/cautionsInBrief.ts';
import { modelWords, readingWords } from '../prose/english/kit/whoAndHow.ts';
import type { Caution } from '../prose/statement.ts';
import type { Telling } from '../prose/telling.ts';
import { capitalised } from '../prose/words.ts';
import { metricsIn, type FigureAnswer } from './figureAnswer.ts';
import type { Form } from './fitParts.ts';
import type { Report } from './report.ts';
import { said, type Said } from './said.ts';

/** Weights of the forms of an answer: from which on each is tried. */
export interface AnswerWeights {
  readonly first: number;
  readonly unsized: number;
  readonly sized: number;
  readonly whole: number | null;
}

/** An answer in its forms: pairs counted, the first statement, all in brief, with sizes, and as its page tells it. */
export function answerForms(
  { block, answers }: FigureAnswer,
  telling: Telling,
  weights: AnswerWeights,
): readonly Form[] {
  const { about } = block;
  const whole = sayAnswerAlone(block, telling).flatMap((text) => said('answer', text, about));
  return [
    { weight: 0, said: said('answer', sayAnswerCounted(block, answers, telling), about) },
    { weight: weights.first, said: said('answer', sayAnswerFirst(block, answers, telling) ?? '', about) },
    { weight: weights.unsized, said: said('answer', sayAnswerInBrief(block, telling, 'unsized'), about) },
    { weight: weights.sized, said: said('answer', sayAnswerInBrief(block, telling, 'sized'), about) },
    ...(weights.whole === null ? [] : [{ weight: weights.whole, said: whole }]),
  ].filter((form) => form.said.length > 0);
}

/** A caution in brief, and with the names, the measure and the size of what it could do. */
export function cautionForms(
  caution: Caution | null,
  telling: Telling,
  weights: { readonly brief: number; readonly whole: number | null },
): readonly Form[] {
  if (caution === null) return [];
  const { about } = caution;
  return [
    { weight: weights.brief, said: said('caution', sayCautionInBrief(caution, telling), about) },
    ...(weights.whole === null
      ? []
      : [{ weight: weights.whole, said: said('caution', sayCaution(caution, telling), about) }]),
  ];
}

/** What a chart itself shows where that is not the answer, in sentences: found, or to be seen in it. */
export function shownBy(figure: DrawnFigure): readonly Said[] {
  const { shows, found, about } = figure;
  if (about.of === 'report') return found.flatMap((text) => said('chart', text, about));
  return shows === undefined ? [] : said('chart', shows, about);
}

/** "Three balls, one golfer: carry of every shot with Heron, Plover and Wren." */
export function subjectSentence({ subject, about }: DrawnFigure, telling: Telling): readonly Said[] {
  return said('chart', `${capitalised(testedInBrief(telling))}. ${subject}.`, about);
}

/** How the readings that the chart shows came about; of a model's chart, that it is one. */
export function readingOf({ source, findings }: Report, figure: DrawnFigure): readonly Said[] {
  if (figureTraits[figure.chart].modelled) return said('reading', modelWords, figure.about);
  const shown = metricsIn(findings, figure);
  return said(
    'reading',
    readingWords(shown, (id) => isReadingStated(source.front, id)),
    figure.about,
  );
}

const orders: readonly Caution['facts']['overlay'][] = [
  'one-after-another',
  'order-unknown',
  'order-drift',
  'order-lever',
  'order-few-visits',
];

/**
 * What keeps averages side by side from being an answer: the gravest caution of order about a main measure that is shown
 * by a chart of several.
 */
export function orderCaution({ findings }: Report, figure: DrawnFigure): Caution | null {
  if (figure.about.of !== 'report') return null;
  const shown = metricsIn(findings, figure).map(({ id }) => id);
  return (
    cautionsOf(findings).find(
      ({ facts, about }) => orders.includes(facts.overlay) && shown.includes(about.metric),
    ) ?? null
  );
}
