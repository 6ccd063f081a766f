import type { DrawnFigure } from '../charts/figure.ts';
import { dateInWords } from '../prose/date.ts';
import { sayCaution } from '../prose/english/cautions.ts';
import { golfersShotsAndOrder } from '../prose/english/kit/whoAndHow.ts';
import { changesWords, stampWords, standingInBrief } from '../prose/english/kit/standing.ts';
import type { Caution } from '../prose/statement.ts';
import { absoluteAddress } from './absoluteAddress.ts';
import { answerOfFigure, type FigureAnswer } from './figureAnswer.ts';
import { figureFound, foundForms, furtherParts, type FigureFound } from './figureFound.ts';
import { figureInterest, interestForms, type FigureInterest } from './figureInterest.ts';
import {
  answerForms,
  cautionForms,
  decides,
  orderCaution,
  readingOf,
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
type CaptionSentences = Readonly<Record<CaptionLength, readonly Said[]>>;

/** Captions of one chart of a report. */
export function captions(report: Report, figure: DrawnFigure): Captions {
  const { short, middle, long } = captionSentences(report, figure);
  return { short: textOf(short), middle: textOf(middle), long: textOf(long) };
}

/**
 * What the captions of a chart say: what it found, or the answer that it is about, with measure and golfers; the caution
 * and the interest that bear on it; what marks the report; from 280 characters on the address.
 */
export function captionSentences(report: Report, figure: DrawnFigure): CaptionSentences {
  const answer = answerOfFigure(report, figure);
  const facts: Facts = {
    report,
    figure,
    answer,
    found: figureFound(report, figure),
    interest: figureInterest(report, figure, answer),
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
  readonly found: FigureFound | null;
  readonly interest: FigureInterest;
}

/** Cautions without which a short caption would mislead; others give way to an interest. */
const weighsOnAnswer: readonly Caution['facts']['overlay'][] = [
  'uneven-readings',
  'matters-unusual',
  'visits-alike',
  'mixed-with-swing',
];

function shortParts(facts: Facts): readonly Part[] {
  const { report, figure, answer, found, interest } = facts;
  const { telling, source } = report;
  const caution = cautionOf(facts);
  const weight = caution !== null && decides(caution) ? 0.5 : caution !== null && weighs(caution) ? 2 : 3.2;
  return [
    found !== null
      ? foundForms(found, figure, 1)
      : answer === null
        ? []
        : answerForms(answer, telling, { bare: 1, unsized: 4, sized: 5, whole: null }),
    cautionForms(isToldWithAnswer(facts) ? null : caution, telling, { brief: weight, whole: null }),
    interestForms(interest, 3),
    always(said('stamp', standingInBrief(source.front))),
  ];
}

/** Whether the chart tells no answer itself, so that a caution about it would hang in the air without one. */
const isToldWithAnswer = ({ answer, found }: Facts): boolean =>
  answer !== null && found?.tellsAnswer === false;

const weighs = ({ facts: { overlay } }: Caution): boolean => weighsOnAnswer.includes(overlay);

function middleParts(facts: Facts): readonly Part[] {
  const { report, answer, interest } = facts;
  const { telling } = report;
  const caution = cautionOf(facts);
  return [
    ...toldParts(facts, caution, { bare: 1, unsized: 1.5, sized: 4, whole: 6 }),
    cautionForms(isToldWithAnswer(facts) ? null : caution, telling, { brief: 2, whole: 8 }),
    [...interestForms(interest, 3), { weight: 5, said: interest.inFewWords }],
    whoPart(report, answer, 7),
    withRoom(9, readingOf(report, facts.figure)),
    ...marks(report),
    always(creditOf(report, 'address')),
  ];
}

function longParts(facts: Facts): readonly Part[] {
  const { report, answer, interest } = facts;
  const { telling } = report;
  const caution = cautionOf(facts);
  const others = isToldWithAnswer(facts) ? [] : (answer?.cautions.filter((one) => one !== caution) ?? []);
  return [
    ...toldParts(facts, caution, { bare: 1, unsized: 1.5, sized: 2.5, whole: 4 }),
    cautionForms(isToldWithAnswer(facts) ? null : caution, telling, { brief: 2, whole: 5 }),
    ...others.map((one) => withRoom(9, said('caution', sayCaution(one, telling), one.about))),
    [
      ...interestForms(interest, 2.8),
      { weight: 3, said: interest.inFewWords },
      { weight: 6, said: interest.whole },
    ],
    whoPart(report, answer, 7),
    withRoom(8, readingOf(report, facts.figure)),
    ...marks(report),
    always(creditOf(report, 'credit')),
  ];
}

/** The caution under which the chart's answer would be another one, else the gravest that it does not say itself; of averages side by side, that of their order. */
function cautionOf({ report, figure, answer }: Pick<Facts, 'report' | 'figure' | 'answer'>): Caution | null {
  return answer === null ? orderCaution(report, figure) : (answer.cautions.find(decides) ?? answer.beside);
}

/** What the chart found and, where that is not all of it, the answer that it is about. */
function toldParts(
  { report, figure, answer, found }: Facts,
  caution: Caution | null,
  weights: AnswerWeights,
): readonly Part[] {
  const { telling } = report;
  const whole = answer === null ? [] : answerForms(answer, telling, weights);
  if (found === null) return [whole];
  const beside = whole.filter(({ weight }) => weight >= (found.tellsAnswer ? weights.sized : weights.bare));
  // What weighs on an answer is told with it or not at all.
  const weighing = found.tellsAnswer
    ? []
    : (cautionForms(caution, telling, { brief: 0, whole: null }).at(-1)?.said ?? []);
  return [
    foundForms(found, figure, 1),
    beside.map(({ weight, said: words }) => ({ weight: weight + 1.2, said: [...words, ...weighing] })),
    ...furtherParts(found, figure, 6.5),
  ];
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
