import { primaryMetrics } from '../prose/answers.ts';
import {
  mattersFigure,
  pairingsFigure,
  reachFigure,
  shotsFigure,
  type MailFigure,
} from '../prose/english/kit/mailWords.ts';
import { singleShotsOf } from '../prose/sure.ts';
import type { Report } from './report.ts';
import { countsIn } from './whoAndHow.ts';

/**
 * Three numbers of the first main measure that neither its answer nor its picture says: how often a single shot went the
 * same way, or where that cannot be told what so long a test finds; how many shots were hit; what matters. Only two
 * where too few shots were hit to say the first.
 */
export function emailFigures(report: Report): readonly MailFigure[] {
  const { findings, telling } = report;
  const [metric] = primaryMetrics(findings);
  if (metric === undefined) return [];
  const [pairings] = singleShotsOf(metric, findings)?.told ?? [];
  const { id, detectable } = metric;
  const first =
    pairings !== undefined
      ? [pairingsFigure(pairings, telling)]
      : detectable === null
        ? []
        : [reachFigure(id, detectable, telling)];
  return [...first, shotsFigure(countsIn(report, metric), telling), mattersFigure(id, telling)];
}
