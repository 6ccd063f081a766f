import type { DrawnFigure } from '../charts/figure.ts';
import { dateInWords } from '../prose/date.ts';
import { sayCaution } from '../prose/english/cautions.ts';
import { golfersShotsAndOrder } from '../prose/english/kit/whoAndHow.ts';
import { changesWords, stampWords, standingInBrief } from '../prose/english/kit/standing.ts';
import type { Caution } from '../prose/statement.ts';
import { absoluteAddress } from './absoluteAddress.ts';
import { answerOfFigure, comparedIn, type FigureAnswer } from './figureAnswer.ts';
import { figureInterest, type FigureInterest } from './figureInterest.ts';
import {
  answerForms,
  cautionForms,
  foundForms,
  orderCaution,
  readingOf,
  shownBy,
  subjectOf,
  type AnswerWeights,
} from './figureSentences.ts';
import { always, fitParts, withRoom, within, type Part } from './fitParts.ts';
import { publisherOf } from './interestInShort.ts';
import type { Report } from './report.ts';
import { said, textOf, type Said } from './said.ts';
import { countsIn } from './whoAndHow.ts';

/** Longest caption of each length, characters. */
export const captionLimits = { short: 120, middle: 280, long: 600 } as const;

export type CaptionLength = keyof typeof captionLimits;

/** Captions in three lengths; each is true when it is printed alone. */
export type Captions = Readonly<Record<CaptionLength, string>>;

/** The sentences of the captions, with what each renders. */
export type CaptionSentences = Readonly<Record<CaptionLength, readonly Said[]>>;

/** Captions of one chart of a report. */
export function captions(report: Report, figure: DrawnFigure): Captions {
  const { short, middle, long } = captionSentences(report, figure);
  return { short: textOf(short), middle: textOf(middle), long: textOf(long) };
}

/**
 * What the captions of a chart say: its own answer, or what it shows, with who hit and what was varied; the caution and
 * the interest that bear on it; what marks the report; from 280 characters on the address.
 */
export function captionSentences(report: Report, figure: DrawnFigure): CaptionSentences {
  const answer = answerOfFigure(report, figure);
  const facts: Facts = {
    report,
    figure,
    answer,
    interest: figureInterest(report, comparedIn(report, answer), answer?.answers[0] ?? null),
  };
  return {
    short: fitParts(shortParts(facts), within(captionLimits.short)),
    middle: fitParts(middleParts(facts), within(captionLimits.middle)),
    long: fitParts(longParts(facts), within(captionLimits.long)),
  };
}

interface Facts {
  readonly report: Report;
  readonly figure: DrawnFigure;
  readonly answer: FigureAnswer | null;
  readonly interest: FigureInterest;
}

/** Cautions without which a short caption would mislead; others give way to an interest. */
const weighsOnAnswer: readonly Caution['facts']['overlay'][] = [
  'depends-on-left-out',
  'uneven-readings',
  'matters-unusual',
  'visits-alike',
  'mixed-with-swing',
  'rests-on-one-shot',
];

function shortParts({ report, figure, answer, interest }: Facts): readonly Part[] {
  const { telling, source } = report;
  const caution = cautionOf({ report, figure, answer });
  const decides = caution !== null && weighsOnAnswer.includes(caution.facts.overlay);
  return [
    answer === null
      ? foundForms(figure, telling)
      : answerForms(answer, telling, { bare: 1, unsized: 4, sized: 5, whole: null }),
    cautionForms(caution, telling, { brief: decides ? 2 : 3.2, whole: null }),
    withRoom(3, interest.one),
    always(said('stamp', standingInBrief(source.front))),
  ];
}

function middleParts({ report, figure, answer, interest }: Facts): readonly Part[] {
  const { telling } = report;
  return [
    ...toldParts(figure, answer, telling, { bare: 1, unsized: 1.5, sized: 4, whole: 6 }),
    cautionForms(cautionOf({ report, figure, answer }), telling, { brief: 2, whole: 8 }),
    [
      { weight: 3, said: interest.one },
      { weight: 5, said: interest.inFewWords },
    ],
    whoPart(report, answer, 7),
    withRoom(9, readingOf(report, figure)),
    ...marks(report),
    always(creditOf(report, 'address')),
  ];
}

function longParts({ report, figure, answer, interest }: Facts): readonly Part[] {
  const { telling } = report;
  const caution = cautionOf({ report, figure, answer });
  const others = answer?.cautions.filter((one) => one !== caution) ?? [];
  return [
    ...toldParts(figure, answer, telling, { bare: 1, unsized: 1.5, sized: 2.5, whole: 4 }),
    cautionForms(caution, telling, { brief: 2, whole: 5 }),
    ...others.map((one) => withRoom(9, said('caution', sayCaution(one, telling), one.about))),
    [
      { weight: 2.8, said: interest.one },
      { weight: 3, said: interest.inFewWords },
      { weight: 6, said: interest.whole },
    ],
    whoPart(report, answer, 7),
    withRoom(8, readingOf(report, figure)),
    ...marks(report),
    always(creditOf(report, 'credit')),
  ];
}

/** The gravest caution that the chart's answer does not say itself; of averages side by side, that of their order. */
function cautionOf({ report, figure, answer }: Omit<Facts, 'interest'>): Caution | null {
  return answer === null ? orderCaution(report, figure) : answer.beside;
}

/** The answer that the chart is about, and what it shows of its own; of a chart without an answer what it is of and shows. */
function toldParts(
  figure: DrawnFigure,
  answer: FigureAnswer | null,
  telling: Report['telling'],
  weights: AnswerWeights,
): readonly Part[] {
  if (answer === null) return [foundForms(figure, telling)];
  // The chart of all pairs is of nothing but its answer.
  const subject = figure.chart === 'apart' ? [] : subjectOf(figure);
  return [answerForms(answer, telling, weights), withRoom(3.5, shownBy(figure)), withRoom(5.5, subject)];
}

function whoPart(report: Report, answer: FigureAnswer | null, weight: number): Part {
  const words = golfersShotsAndOrder(
    report.telling,
    countsIn(report, answer?.metric ?? null),
    dateInWords(report.source.front.date, report.source.locale),
  );
  return withRoom(weight, said('who', words));
}

/** What marks the report, each by itself. */
function marks({ source }: Report): readonly Part[] {
  return [always(said('stamp', stampWords(source.front))), always(said('stamp', changesWords(source)))];
}

/** Whom to credit and where the report stands; where there is no address, who publishes it. */
function creditOf(report: Report, form: 'address' | 'credit'): readonly Said[] {
  const { shop, slug } = report.source;
  const address = absoluteAddress(shop)?.(`/reports/${slug}/`) ?? null;
  const credit = shop?.reuse.credit ?? publisherOf(report);
  if (address === null) return said('credit', `${credit}.`);
  return said('credit', form === 'address' ? address : `${credit}, ${address}`);
}
