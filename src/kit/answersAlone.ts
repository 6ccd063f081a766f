import { answerOf, primaryMetrics } from '../prose/answers.ts';
import { cautionsFor, gravestBeside } from '../prose/cautions.ts';
import { sayAnswerAlone } from '../prose/english/answers.ts';
import { sayCautionInBrief } from '../prose/english/kit/cautionsInBrief.ts';
import type { Report } from './report.ts';

/** The answers of a report where they stand without it, one main measure after another, each with its gravest caution. */
export function answersAlone({ findings, telling }: Pick<Report, 'findings' | 'telling'>): readonly string[] {
  return primaryMetrics(findings).map((metric) => {
    const caution = gravestBeside(cautionsFor(metric, findings));
    return [
      ...sayAnswerAlone(answerOf(metric, findings), telling),
      ...(caution === null ? [] : [sayCautionInBrief(caution, telling)]),
    ].join(' ');
  });
}
