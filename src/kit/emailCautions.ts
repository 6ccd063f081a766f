import type { DrawnFigure } from '../charts/figure.ts';
import type { MetricFindings } from '../findings/findings.ts';
import { answerOf } from '../prose/answers.ts';
import { cautionsFor, gravestBeside } from '../prose/cautions.ts';
import type { Caution } from '../prose/statement.ts';
import { answerOfFigure } from './figureAnswer.ts';
import { orderCaution } from './figureSentences.ts';
import type { Report } from './report.ts';

/** Cautions under which the answer itself would be another one. */
const decisive: readonly Caution['facts']['overlay'][] = ['depends-on-left-out', 'rests-on-one-shot'];

/** The cautions that a chart carries when it leaves its page: under it, and in its headline where one decides. */
export function cautionsInPicture(report: Report, figure: DrawnFigure): readonly Caution[] {
  const answer = answerOfFigure(report, figure);
  const order = answer === null ? orderCaution(report, figure) : null;
  const cautions = answer?.cautions ?? [];
  return onceEach([
    ...(order === null ? [] : [order]),
    ...(answer === null ? [] : [answer.beside].filter((caution) => caution !== null)),
    ...cautions.filter(({ facts }) => decisive.includes(facts.overlay)),
  ]);
}

/**
 * The cautions that stand beside the answer of a main measure in a mail: the gravest, those that decide, and whatever
 * its picture says; none that the answer has in its own words.
 *
 * @param shown the cautions in the mail's picture
 */
export function cautionsBesideAnswer(
  metric: MetricFindings,
  { findings }: Pick<Report, 'findings'>,
  shown: readonly Caution[],
): readonly Caution[] {
  const own = cautionsFor(metric, findings);
  const gravest = gravestBeside(own);
  const { calculatedBy } = answerOf(metric, findings);
  return onceEach([
    ...(gravest === null ? [] : [gravest]),
    ...own.filter(({ facts }) => decisive.includes(facts.overlay)),
    ...shown.filter(({ about }) => about.metric === metric.id),
  ])
    .filter((caution) => gravestBeside([caution]) !== null)
    .filter(({ facts }) => calculatedBy === null || facts.overlay !== 'modelled-reading');
}

function onceEach(cautions: readonly Caution[]): readonly Caution[] {
  return cautions.filter(
    (one, at) =>
      cautions.findIndex(
        (other) => other.facts.overlay === one.facts.overlay && other.about.metric === one.about.metric,
      ) === at,
  );
}
