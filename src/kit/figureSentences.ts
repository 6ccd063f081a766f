import type { DrawnFigure } from '../charts/figure.ts';
import { charts } from '../charts/charts.ts';
import { isReadingStated } from '../findings/fairness.ts';
import { cautionsOf } from '../prose/cautions.ts';
import { sayAnswerAlone } from '../prose/english/answers.ts';
import { headOf } from '../prose/english/answerHead.ts';
import {
  sayAnswerCounted,
  sayAnswerFirst,
  sayAnswerInBrief,
  sayLeadersAlone,
} from '../prose/english/answersInBrief.ts';
import { toldApartOf } from '../prose/english/countedAnswers.ts';
import { sayCaution } from '../prose/english/cautions.ts';
import { sayCautionInBrief, sayWhatDecides } from '../prose/english/kit/cautionsInBrief.ts';
import { modelWords, readingWords } from '../prose/english/kit/whoAndHow.ts';
import type { Caution } from '../prose/statement.ts';
import type { Telling } from '../prose/telling.ts';
import { metricsIn, type FigureAnswer } from './figureAnswer.ts';
import type { Form } from './fitParts.ts';
import type { Report } from './report.ts';
import { said, type Said } from './said.ts';

/** Weights of the forms of an answer: from which on each is tried. */
export interface AnswerWeights {
  readonly bare: number;
  readonly unsized: number;
  readonly sized: number;
  readonly whole: number | null;
}

/**
 * An answer in its forms: pairs counted; those ahead alone; those ahead alone; the first statement; all in brief, without and with why not or how surely and
 * with sizes; as its page tells it.
 */
export function answerForms(
  { block, answers }: FigureAnswer,
  telling: Telling,
  { bare, unsized, sized, whole }: AnswerWeights,
): readonly Form[] {
  const { about } = block;
  const form = (weight: number, text: string): Form => ({ weight, said: said('answer', text, about) });
  return [
    form(0, `${headOf(block, telling)}: ${toldApartOf(answers)}.`),
    form(bare / 200, sayAnswerCounted(block, answers, telling)),
    form(bare / 100, sayLeadersAlone(block, answers, telling, 'short') ?? ''),
    form(bare / 8, sayLeadersAlone(block, answers, telling, 'whole') ?? ''),
    form(bare / 6, sayAnswerInBrief(block, telling, 'bare', 'short')),
    form(bare / 4, sayAnswerFirst(block, answers, telling, 'bare') ?? ''),
    form(bare / 2, sayAnswerFirst(block, answers, telling, 'unsized') ?? ''),
    form(bare, sayAnswerInBrief(block, telling, 'bare')),
    form(unsized, sayAnswerInBrief(block, telling, 'unsized')),
    form(sized, sayAnswerInBrief(block, telling, 'sized')),
    // That none was judged is told by its page in words that stand only there.
    ...(whole === null || answers.every(({ status }) => status === 'not-judged')
      ? []
      : [
          {
            weight: whole,
            said: sayAnswerAlone(block, telling).flatMap((text) => said('answer', text, about)),
          },
        ]),
  ].filter((one) => one.said.length > 0);
}

/** A caution in its forms: what decides, in brief, and with the names, the measure and the size of what it could do. */
export function cautionForms(
  caution: Caution | null,
  telling: Telling,
  { brief, whole }: { readonly brief: number; readonly whole: number | null },
): readonly Form[] {
  if (caution === null) return [];
  const form = (weight: number, text: string): Form => ({
    weight,
    said: said('caution', text, caution.about),
  });
  const what = sayWhatDecides(caution);
  return [
    ...what.map((text, at) => form(brief + at / 20, text)),
    form(what.length === 0 ? brief : brief + 2, sayCautionInBrief(caution, telling)),
    ...(whole === null ? [] : [form(whole, sayCaution(caution, telling))]),
  ];
}

/** Whether the answer itself would be another one without what a caution is about. */
export function decides({ facts: { overlay } }: Caution): boolean {
  return overlay === 'depends-on-left-out' || overlay === 'rests-on-one-shot';
}

/** How the readings that the chart shows came about; of a model's chart, that it is one. */
export function readingOf({ source, findings }: Report, figure: DrawnFigure): readonly Said[] {
  // A chart of several measures says in its own words which of its marks are a model's.
  if (charts[figure.chart].modelled)
    return figure.about.of === 'report' ? [] : said('reading', modelWords, figure.about);
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
