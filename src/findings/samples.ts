import type { Session, Shot } from '../intake/session.ts';
import type { MetricId } from '../trade/metrics.ts';

/** Readings of one contender in one metric, in the order they were hit. */
export interface Sample {
  readonly contender: string;
  readonly values: readonly number[];
}

interface Choice {
  /** One hitter's readings only. */
  readonly hitter?: string;
}

/**
 * The samples of a metric, a contender each, in the order contenders are listed; left-out shots and those without a
 * reading drop out.
 */
export function samplesOf(session: Session, metric: MetricId, choice: Choice = {}): readonly Sample[] {
  return samplesBy(session, (shot) => shot.values[metric] ?? null, choice);
}

/** The samples of anything that can be read off a shot. */
function samplesBy(
  session: Session,
  reading: (shot: Shot) => number | null,
  { hitter }: Choice = {},
): readonly Sample[] {
  const byContender = new Map<string, number[]>(session.contenders.map((contender) => [contender, []]));
  for (const shot of session.shots) {
    if (hitter !== undefined && shot.hitter !== hitter) continue;
    if (shot.excluded !== null) continue;
    const value = reading(shot);
    if (value !== null) byContender.get(shot.contender)?.push(value);
  }
  return [...byContender].map(([contender, values]) => ({ contender, values }));
}
