import type { MetricFindings } from '../findings/findings.ts';
import { answerOf, primaryMetrics } from '../prose/answers.ts';
import {
  chanceFigure,
  golfersFigure,
  mattersFigure,
  pairingsFigure,
  reachFigure,
  shotsFigure,
  type MailFigure,
} from '../prose/english/kit/mailWords.ts';
import { chanceOf } from '../prose/reach.ts';
import type { Caution, PairAnswer } from '../prose/statement.ts';
import { singleShotsOf, type SingleShots } from '../prose/sure.ts';
import type { Telling } from '../prose/telling.ts';
import type { Report } from './report.ts';
import { countsIn } from './whoAndHow.ts';

/**
 * Three numbers of the first main measure that neither its answer nor its picture says: how sure the test is, how many
 * shots were hit, and what matters.
 *
 * @param told the cautions that the mail says
 */
export function emailFigures(report: Report, told: readonly Caution[]): readonly MailFigure[] {
  const { findings, telling } = report;
  const [metric] = primaryMetrics(findings);
  if (metric === undefined) return [];
  return [
    surenessFigure(metric, telling, told),
    shotsFigure(countsIn(report, metric), telling),
    mattersFigure(metric.id, telling),
  ];
}

/**
 * How often one shot of each went as the average did; where that cannot be told, or would stand for more than the answer
 * says, what the test would have found, what chance alone does, or how many hit.
 */
function surenessFigure(metric: MetricFindings, telling: Telling, told: readonly Caution[]): MailFigure {
  const pairings = pairingsOf(metric, telling);
  if (pairings !== null) return pairingsFigure(pairings, telling);
  // The caution has the number in its own words.
  const reachTold = told.some(
    ({ facts, about }) => facts.overlay === 'few-shots' && about.metric === metric.id,
  );
  if (metric.detectable !== null && !reachTold) return reachFigure(metric.id, metric.detectable, telling);
  const chance = chanceOf(metric);
  return chance === null ? golfersFigure(telling) : chanceFigure(chance, telling);
}

/** Those of the pair that the answer begins with: of another one they would name somebody ahead whom it does not. */
function pairingsOf(metric: MetricFindings, { findings }: Telling): SingleShots['told'][number] | null {
  const [statement] = answerOf(metric, findings).statements;
  const pair: PairAnswer | undefined =
    statement?.kind === 'one'
      ? statement.answer
      : statement?.kind === 'ahead-of' && statement.shared === 'ahead'
        ? statement.answers[0]
        : undefined;
  if (pair === undefined || pair.status === 'not-confirmed' || pair.spellsAlike) return null;
  const { a, b } = pair.about;
  const told = singleShotsOf(metric, findings)?.told ?? [];
  return told.find(({ answer: { about } }) => about.a === a && about.b === b) ?? null;
}
