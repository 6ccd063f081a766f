import type { Findings, MetricFindings } from '../findings/findings.ts';
import { pairAnswers } from './pairAnswer.ts';
import type { PairAnswer } from './statement.ts';

/** How often the one ahead had more, one shot with each: of all pairings of counted shots, ties half. */
export interface SingleShots {
  readonly kind: 'single-shots';
  /** Surest first; those ahead of several stand together. */
  readonly told: readonly { readonly answer: PairAnswer; readonly more: number; readonly of: number }[];
}

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
  return told.length === 0 ? null : { kind: 'single-shots', told };
}
