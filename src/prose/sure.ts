import type { Findings, MetricFindings } from '../findings/findings.ts';
import { pairAnswers } from './pairAnswer.ts';
import type { PairAnswer } from './statement.ts';

/** How often the one ahead had more, one shot with each: of all pairings of counted shots, ties half. */
export interface SingleShots {
  readonly kind: 'single-shots';
  /** Surest first; those ahead of several stand together. */
  readonly told: readonly { readonly answer: PairAnswer; readonly more: number; readonly of: number }[];
}

/** More pairs than these are not told one by one. */
const mostTold = 3;

/** The single-shot line of a metric; null where no pair can be told so. */
export function singleShotsOf(
  metric: MetricFindings,
  { design }: Pick<Findings, 'design'>,
): SingleShots | null {
  const told = pairAnswers(metric, design).flatMap((answer) => {
    const { a, b } = answer.about;
    const pair = metric.pairs.find((one) => one.a === a && one.b === b);
    return pair?.singleShot == null ? [] : [{ answer, ...pair.singleShot }];
  });
  const [first] = told;
  if (first === undefined) return null;
  // Among many only those of the surest leader: a line of every pair would be a table.
  return {
    kind: 'single-shots',
    told: told.length > mostTold ? told.filter(({ answer }) => answer.ahead === first.answer.ahead) : told,
  };
}
