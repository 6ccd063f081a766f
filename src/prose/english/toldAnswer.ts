import type { MetricFindings } from '../../findings/findings.ts';
import { metrics } from '../../trade/metrics.ts';
import { answerOf, primaryMetrics } from '../answers.ts';
import { cautionsFor } from '../cautions.ts';
import { pairAnswers } from '../pairAnswer.ts';
import { isBesideAnswer, reachOf } from '../reach.ts';
import { singleShotsOf } from '../sure.ts';
import type { Telling } from '../telling.ts';
import { capitalised } from '../words.ts';
import { sayShort } from './answerWords.ts';
import { sayAnswer, sayAnswerAlone } from './answers.ts';
import { sayCaution } from './cautions.ts';
import { sayReach } from './reach.ts';
import { saySingleShots } from './sure.ts';

/** The answer of one main measure with all that stands beside it, in sentences. */
export interface ToldAnswer {
  readonly metric: MetricFindings['id'];
  /** "Carry", as a title. */
  readonly title: string;
  readonly status: string;
  readonly answer: readonly string[];
  /** The answer where it stands without its page. */
  readonly alone: readonly string[];
  readonly singleShots: string | null;
  /** What the test could see, and what it was too short for. */
  readonly reach: readonly string[];
  /** What more there is to know of a test of this length. */
  readonly furtherReach: readonly string[];
  /** The gravest first. */
  readonly cautions: readonly string[];
}

/** The answers of a report's main measures; each has its own title, cautions and numbers. */
export function toldAnswers(telling: Telling): readonly ToldAnswer[] {
  return primaryMetrics(telling.findings).map((metric) => toldAnswer(metric, telling));
}

function toldAnswer(metric: MetricFindings, telling: Telling): ToldAnswer {
  const { findings } = telling;
  const block = answerOf(metric, findings);
  const [surest] = pairAnswers(metric, findings.design);
  const shots = singleShotsOf(metric, findings);
  const reach = reachOf(metric);
  return {
    metric: metric.id,
    title: capitalised(metrics[metric.id].name),
    status: surest === undefined ? '' : sayShort(surest),
    answer: sayAnswer(block, telling),
    alone: sayAnswerAlone(block, telling),
    singleShots: shots === null ? null : saySingleShots(shots, telling),
    reach: reach.filter(isBesideAnswer).map((statement) => sayReach(statement, telling)),
    furtherReach: reach
      .filter((statement) => !isBesideAnswer(statement))
      .map((statement) => sayReach(statement, telling)),
    cautions: cautionsFor(metric, findings).map((caution) => sayCaution(caution, telling)),
  };
}

/** The whole answer of the first main measure, for lists and descriptions: never its first sentence alone. */
export function answerInList(telling: Telling): string {
  const [first] = toldAnswers(telling);
  return first === undefined ? 'Nothing was judged.' : first.alone.join(' ');
}
