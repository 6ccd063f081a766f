import type { DrawnFigure } from '../charts/figure.ts';
import type { MetricFindings, PairFindings } from '../findings/findings.ts';
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
import { answerOfFigure, type FigureAnswer } from './figureAnswer.ts';
import type { Form } from './fitParts.ts';
import { onceEachFigure } from './onceEachFigure.ts';
import type { Report } from './report.ts';
import { said } from './said.ts';

/** What a chart itself found, in sentences that stand without it; of *How far apart?* that is the answer it is about. */
export interface FigureFound extends ChartFinding {
  /** Whether the answer that the chart is about stands in it. */
  readonly tellsAnswer: boolean;
}

/** What a chart found; null where that is nothing but the answer that it is about. */
export const figureFound = onceEachFigure(makeFigureFound);

function makeFigureFound(report: Report, figure: DrawnFigure): FigureFound | null {
  const { telling, findings } = report;
  const answer = answerOfFigure(report, figure);
  const heading = afterTested(telling, figure.finding);
  const without = (found: ChartFinding): FigureFound => ({ ...found, tellsAnswer: false });
  const withIt = (found: ChartFinding): FigureFound => ({ ...found, tellsAnswer: true });
  const plain = without({ forms: [heading], further: figure.found });
  switch (figure.chart) {
    case 'apart':
      return answer === null ? plain : null;
    case 'shots':
      return answer === null
        ? plain
        : withIt(shotsFound(answer.block, answer.answers, answer.metric, telling));
    case 'order':
      return answer === null ? plain : without(orderFound(answer.block, answer.metric, telling));
    case 'landing':
      return findings.landing === null ? plain : without(landingFound(findings.landing, telling));
    case 'delivery':
      return findings.swing === null ? plain : without(deliveryFound(findings.swing, telling));
    case 'luck':
    case 'hitters':
      return answer === null ? plain : withIt(ofPair(answer, figure, report));
    case 'yards':
      return answer === null ? plain : withIt(ofYards(answer, figure, report));
    case 'with-and-without':
      return answer === null ? plain : withIt(ofLeftOut(answer, report));
    case 'spread':
      return without(
        spreadFound(
          findings.metrics.filter(isOfPlace).map((metric) => spreadOf(metric, findings)),
          telling,
        ),
      );
    case 'launch-and-spin':
    case 'meetings':
      return plain;
  }
}

/** The measures whose scatter a chart shows. */
const isOfPlace = ({ id }: MetricFindings): boolean => id === 'carry' || id === 'side';

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

function ofPair(
  { block, answers, metric }: FigureAnswer,
  figure: DrawnFigure,
  { telling }: Report,
): ChartFinding {
  const [answer] = answers;
  const pair = pairOf(metric, figure);
  if (answer === undefined || pair === undefined) return headingFound(block, figure.finding, telling);
  return figure.chart === 'luck'
    ? luckFound(block, answer, metric, figure.finding, telling)
    : golfersFound(block, answer, pair, figure.finding, telling);
}

function pairOf(metric: MetricFindings, { about }: DrawnFigure): PairFindings | undefined {
  return about.of === 'pair' ? metric.pairs.find(({ a, b }) => a === about.a && b === about.b) : undefined;
}

/** What a flight model makes of the difference that the chart is about. */
function ofYards(
  { block, answers: [answer] }: FigureAnswer,
  figure: DrawnFigure,
  { telling, findings: { yards } }: Report,
): ChartFinding {
  const account = yards.find(({ a, b }) => a === answer?.about.a && b === answer.about.b)?.attribution;
  if (account?.state !== 'attributed' || answer === undefined)
    return headingFound(block, figure.finding, telling);
  const flip = account.gap.value >= 0 ? 1 : -1;
  const { a, b } = answer.about;
  return yardsFound(
    block,
    answer,
    {
      gap: flip * account.gap.value,
      parts: [...account.parts, null].map((part) =>
        yardsPart(part?.id ?? null, part ?? account.unexplained, flip),
      ),
      ...(flip === 1 ? { ahead: a, behind: b } : { ahead: b, behind: a }),
    },
    figure.finding,
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
    answers,
    metric.pairs.filter(({ withLeftOut }) => withLeftOut !== null),
    leftOut,
    telling,
  );
}
