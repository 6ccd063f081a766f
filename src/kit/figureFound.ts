import type { DrawnFigure } from '../charts/figure.ts';
import type { ChartKind } from '../charts/charts.ts';
import type { PairFindings } from '../findings/findings.ts';
import { spreadOf } from '../prose/spread.ts';
import { yardsPart } from '../prose/yardsSplit.ts';
import { afterTested, type ChartFinding } from '../prose/english/kit/found/chartFinding.ts';
import { deliveryFound } from '../prose/english/kit/found/delivery.ts';
import { landingFound } from '../prose/english/kit/found/landing.ts';
import { orderFound } from '../prose/english/kit/found/order.ts';
import {
  golfersFound,
  headingFound,
  leftOutFound,
  luckFound,
} from '../prose/english/kit/found/pairCharts.ts';
import { shotsFound } from '../prose/english/kit/found/shots.ts';
import { spreadFound } from '../prose/english/kit/found/spread.ts';
import { yardsFound } from '../prose/english/kit/found/yards.ts';
import { answerOfFigure, metricsIn, type FigureAnswer } from './figureAnswer.ts';
import type { Form } from './fitParts.ts';
import { onceEachFigure } from './onceEachFigure.ts';
import type { Report } from './report.ts';
import { said } from './said.ts';

/** What a chart itself found, in sentences that stand without it; of *How far apart?* that is the answer it is about. */
export interface FigureFound extends ChartFinding {
  /** Whether the answer that the chart is about stands in it. */
  readonly tellsAnswer: boolean;
}

/** What a chart found; null where that is no more than the answer it is about. */
export const figureFound = onceEachFigure(makeFigureFound);

/** What a chart found by itself; null where that is no more than its heading and its caption say. */
type Finder = (report: Report, figure: DrawnFigure) => ChartFinding | null;

/** What a chart found of the answer that it is about. */
type AnswerFinder = (answer: FigureAnswer, report: Report, figure: DrawnFigure) => ChartFinding;

/** Charts whose finding holds the answer that they are about. */
const withAnswer: Readonly<Partial<Record<ChartKind, AnswerFinder>>> = {
  shots: ({ block, answers, metric }, { telling }) => shotsFound(block, answers, metric, telling),
  luck: (answer, { telling }, figure) => {
    const [first] = answer.answers;
    return first === undefined || pairOf(answer, figure) === undefined
      ? headingFound(answer.block, figure.finding, telling)
      : luckFound({ block: answer.block, answer: first, heading: figure.finding }, answer.metric, telling);
  },
  hitters: (answer, { telling }, figure) => {
    const [first] = answer.answers;
    const pair = pairOf(answer, figure);
    return first === undefined || pair === undefined
      ? headingFound(answer.block, figure.finding, telling)
      : golfersFound({ block: answer.block, answer: first, heading: figure.finding }, pair, telling);
  },
  yards: ofYards,
  'with-and-without': ofLeftOut,
};

/** Charts that found something beside the answer. */
const besideAnswer: Readonly<Partial<Record<ChartKind, Finder>>> = {
  order: (report, figure) => {
    const answer = answerOfFigure(report, figure);
    return answer === null ? null : orderFound(answer.block, answer.metric, report.telling);
  },
  landing: ({ findings, telling }) =>
    findings.landing === null ? null : landingFound(findings.landing, telling),
  delivery: ({ findings, telling }) =>
    findings.swing === null ? null : deliveryFound(findings.swing, telling),
  spread: (report, figure) => {
    const shown = metricsIn(report.findings, figure);
    return spreadFound(
      shown.map((metric) => spreadOf(metric, report.findings)),
      report.telling,
    );
  },
};

function makeFigureFound(report: Report, figure: DrawnFigure): FigureFound | null {
  const { chart } = figure;
  const answer = answerOfFigure(report, figure);
  // The lead chart is the answer in a picture.
  if (chart === 'apart' && answer !== null) return null;
  const told = answer === null ? undefined : withAnswer[chart]?.(answer, report, figure);
  if (told !== undefined) return { ...told, tellsAnswer: true };
  const found = besideAnswer[chart]?.(report, figure) ?? {
    forms: [afterTested(report.telling, figure.finding)],
    further: figure.found,
  };
  return { ...found, tellsAnswer: false };
}

/** Forms of what was found, the shortest always there, the others from this weight on. */
export function foundForms({ forms }: ChartFinding, { about }: DrawnFigure, weight: number): readonly Form[] {
  return forms.map((text, at) => ({
    // The second names whom the first only counts.
    weight: at === 0 ? 0 : at === 1 ? weight / 200 : weight + at / 10,
    said: said('chart', text, about),
  }));
}

/** What more there is to say of it, each by itself. */
export function furtherParts(
  { further }: ChartFinding,
  { about }: DrawnFigure,
  weight: number,
): readonly (readonly Form[])[] {
  return further.map((text, at) => [{ weight: weight + at / 10, said: said('chart', text, about) }]);
}

function pairOf({ metric }: FigureAnswer, { about }: DrawnFigure): PairFindings | undefined {
  return about.of === 'pair' ? metric.pairs.find(({ a, b }) => a === about.a && b === about.b) : undefined;
}

/** What a flight model makes of the difference that the chart is about. */
function ofYards(
  { block, answers: [answer] }: FigureAnswer,
  { telling, findings: { yards } }: Report,
  figure: DrawnFigure,
): ChartFinding {
  const account = yards.find(({ a, b }) => a === answer?.about.a && b === answer.about.b)?.attribution;
  if (account?.state !== 'attributed' || answer === undefined)
    return headingFound(block, figure.finding, telling);
  const flip = account.gap.value >= 0 ? 1 : -1;
  const { a, b } = answer.about;
  return yardsFound(
    { block, answer, heading: figure.finding },
    {
      gap: flip * account.gap.value,
      parts: [...account.parts, null].map((part) =>
        yardsPart(part?.id ?? null, part ?? account.unexplained, flip),
      ),
      ...(flip === 1 ? { ahead: a, behind: b } : { ahead: b, behind: a }),
    },
    telling,
  );
}

function ofLeftOut(
  { block, answers, metric }: FigureAnswer,
  { telling, findings: { contenders } }: Report,
): ChartFinding {
  const leftOut = contenders.reduce((sum, { excluded }) => sum + excluded, 0);
  return leftOutFound(
    block,
    { answers, pairs: metric.pairs.filter(({ withLeftOut }) => withLeftOut !== null), leftOut },
    telling,
  );
}
