import type { DrawnFigure } from '../charts/figure.ts';
import { charts } from '../charts/charts.ts';
import type { Findings, MetricFindings } from '../findings/findings.ts';
import { answerOf } from '../prose/answers.ts';
import { bearsOn, cautionsFor, gravestBeside } from '../prose/cautions.ts';
import { pairAnswers } from '../prose/pairAnswer.ts';
import type { AnswerBlock, Caution, PairAnswer } from '../prose/statement.ts';
import type { Report } from './report.ts';

/** The answer that a chart is about, with the cautions that bear on it. */
export interface FigureAnswer {
  readonly metric: MetricFindings;
  readonly block: AnswerBlock;
  /** Every pair that it is about, the surest first. */
  readonly answers: readonly PairAnswer[];
  /** The gravest first. */
  readonly cautions: readonly Caution[];
  /** The gravest that the answer does not have in its own words. */
  readonly beside: Caution | null;
}

/** The answer that a chart is about; null for one that is about no measure's answer. */
export function answerOfFigure(
  { findings }: Pick<Report, 'findings'>,
  { about, chart }: Pick<DrawnFigure, 'about' | 'chart'>,
): FigureAnswer | null {
  if (about.of === 'report') return null;
  const metric = findings.metrics.find(({ id }) => id === about.metric);
  if (metric === undefined) return null;
  const all = pairAnswers(metric, findings.design);
  const whole = answerOf(metric, findings);
  const answers =
    about.of === 'metric' ? all : all.filter(({ about: own }) => own.a === about.a && own.b === about.b);
  const statements =
    about.of === 'pair'
      ? answers.map((answer) => ({ kind: 'one', answer }) as const)
      : // Pairs for which a sentence has no room stand in the chart of all of them.
        whole.statements.filter(({ kind }) => kind !== 'more' || chart !== 'apart');
  const cautions = cautionsFor(metric, findings).filter((caution) => bearsOn(caution, about));
  return {
    metric,
    block: { ...whole, statements },
    answers,
    cautions,
    beside: gravestBeside(cautions),
  };
}

/** Ids of all that a chart compares: those of its pairs, else all of the report. */
export function comparedIn(
  { findings }: Pick<Report, 'findings'>,
  answer: FigureAnswer | null,
): readonly string[] {
  return answer === null
    ? findings.contenders.map(({ id }) => id)
    : [...new Set(answer.answers.flatMap(({ ahead, behind }) => [ahead, behind]))];
}

/** The measures that a chart shows. */
export function metricsIn(
  { metrics }: Pick<Findings, 'metrics'>,
  { about, chart }: Pick<DrawnFigure, 'about' | 'chart'>,
): readonly MetricFindings[] {
  const shown: readonly string[] = about.of === 'report' ? charts[chart].measures : [about.metric];
  return metrics.filter(({ id }) => shown.includes(id));
}
