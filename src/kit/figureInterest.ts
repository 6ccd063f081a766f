import type { DrawnFigure } from '../charts/figure.ts';
import { primaryMetrics } from '../prose/answers.ts';
import { interestTold } from '../prose/english/interest.ts';
import { interestInFewWords } from '../prose/english/interestInFewWords.ts';
import {
  interestOpening,
  sayInterestBriefly,
  type BriefTelling,
} from '../prose/english/kit/interestInCaption.ts';
import { bearingOn, interestsOf, shortNames, type InterestStatement } from '../prose/interestStatements.ts';
import { pairAnswers } from '../prose/pairAnswer.ts';
import type { Form } from './fitParts.ts';
import { comparedIn, type FigureAnswer } from './figureAnswer.ts';
import { weighs } from './interestInShort.ts';
import type { Report } from './report.ts';
import { said, type Said } from './said.ts';

/** What weighs most where there is room for one: money, gifts, things, a first look, sentences of the shop's own, sales. */
const gravity: readonly InterestStatement['kind'][] = [
  'payment',
  'gifts',
  'supply',
  'own-words',
  'seen',
  'sells',
];

/** The interest that bears on what a picture or caption compares; nothing of it is told less exactly than on the page. */
export interface FigureInterest {
  /** The interest that weighs most on whoever is ahead, shortest form first. */
  readonly one: readonly (readonly Said[])[];
  /** Whether that is money, a gift or a thing from outside the shop, without which no caption leaves. */
  readonly isFromOutside: boolean;
  readonly inFewWords: readonly Said[];
  /** Sentence by sentence as the page prints it, after who speaks; all of it where the picture is the report's first. */
  readonly whole: readonly Said[];
}

/** Answers in which somebody is ahead, surely or not. */
const withSomebodyAhead = ['clear', 'size-uncertain', 'small', 'cause-unclear', 'not-confirmed'];

/** The interest that bears on what a chart compares; `answer` is the one that it is about. */
export function figureInterest(
  report: Report,
  figure: Pick<DrawnFigure, 'id'>,
  answer: FigureAnswer | null,
): FigureInterest {
  const { front, shop } = report.source;
  const { telling } = report;
  const all = interestsOf(front);
  const bearing = bearingOn(all.filter(weighs), comparedIn(report, answer));
  const [main] = primaryMetrics(report.findings);
  const answers = answer?.answers ?? (main === undefined ? [] : pairAnswers(main, report.findings.design));
  const ahead = answers.flatMap((one) =>
    withSomebodyAhead.includes(one.status) && !one.alike ? [one.ahead] : [],
  );
  const [gravest] = bearing.toSorted(
    (x, y) => nearness(x, ahead, front.contenders.length) - nearness(y, ahead, front.contenders.length),
  );
  const brief = {
    speaker: { shop: 'The shop' },
    nameOf: shortNames(front.contenders),
    nouns: [telling.noun, telling.nouns] as const,
  };
  const tell = (text: string): readonly Said[] => said('interest', text);
  return {
    one: oneIn(gravest, bearing, brief).map(tell),
    isFromOutside: gravest !== undefined && weighsOn(gravest, ahead),
    inFewWords: interestInFewWords(bearing, brief).flatMap(tell),
    whole: spokenBy(
      shop?.name ?? 'The publisher',
      sentencesOn(all, isFirst(report, figure) ? all : bearing, front),
    ).flatMap(tell),
  };
}

/** What is sold is one sentence of all that is. */
function oneIn(
  gravest: InterestStatement | undefined,
  bearing: readonly InterestStatement[],
  telling: BriefTelling,
): readonly string[] {
  if (gravest === undefined) return [];
  return gravest.kind === 'sells'
    ? [
        interestInFewWords(
          bearing.filter(({ kind }) => kind === 'sells'),
          telling,
        ).join(' '),
      ]
    : sayInterestBriefly(gravest, telling);
}

/** Money, gifts and things from outside before all else; what is of one that is ahead before what is of all; then by kind. */
function nearness(statement: InterestStatement, ahead: readonly string[], all: number): number {
  const { contenders, kind } = statement;
  const own = contenders.length < all;
  const place = own && contenders.some((id) => ahead.includes(id)) ? 0 : own ? 1 : 2;
  // Who lent a thing has more to gain by it than a customer who brought it.
  const customers = kind === 'supply' && statement.supply.kind === 'customer' ? 0.5 : 0;
  const outside = isOutside(statement);
  return (outside ? 0 : 100) + 10 * (outside ? place : 0) + gravity.indexOf(kind) + customers;
}

function isOutside({ kind, outside }: InterestStatement): boolean {
  return outside && (kind === 'payment' || kind === 'gifts' || kind === 'supply');
}

/** Whether it is money or a gift, or a thing from outside that came out ahead. */
function weighsOn(statement: InterestStatement, ahead: readonly string[]): boolean {
  const { kind, contenders } = statement;
  if (!isOutside(statement)) return false;
  return kind !== 'supply' || contenders.some((id) => ahead.includes(id));
}

/** The sentences of the page that tell any of the statements that are wanted. */
function sentencesOn(
  all: readonly InterestStatement[],
  wanted: readonly InterestStatement[],
  { contenders }: Report['source']['front'],
): readonly string[] {
  return interestTold(all, { speaker: 'we', nameOf: shortNames(contenders) })
    .filter(({ of }) => of.some((one) => wanted.includes(one)))
    .map(({ text }) => text);
}

/** Whether it is the picture that leads its report. */
function isFirst({ figures }: Report, { id }: Pick<DrawnFigure, 'id'>): boolean {
  return figures.find(({ kind }) => kind === 'drawn')?.id === id;
}

function spokenBy(shop: string, [first, ...rest]: readonly string[]): readonly string[] {
  return first === undefined ? [] : [`${interestOpening(shop)} ${first}`, ...rest];
}

/** The forms of the gravest interest in a caption: from outside always there, else from this weight on. */
export function interestForms({ one, isFromOutside }: FigureInterest, weight: number): readonly Form[] {
  return one.map((text, at) => ({
    weight: isFromOutside ? (at < 3 ? at / 100 : weight) : weight + at / 10,
    said: text,
  }));
}
