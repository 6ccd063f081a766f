import type { Session } from '../intake/session.ts';
import type { MetricId } from '../trade/metrics.ts';

/** Readings of one contender in one metric: counted shots that have one, in the order they were hit. */
export interface Sample {
  readonly contender: string;
  readonly values: readonly number[];
}

/** The samples of a metric, a contender each, in the order contenders are listed. */
export function samplesOf(session: Session, metric: MetricId): readonly Sample[] {
  return session.contenders.map((contender) => ({
    contender,
    values: session.shots.flatMap((shot) => {
      const value = shot.values[metric];
      return shot.contender === contender && shot.excluded === null && typeof value === 'number' ? [value] : [];
    }),
  }));
}
