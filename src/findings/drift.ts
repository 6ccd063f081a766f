import type { Session } from '../intake/session.ts';
import { linearTrend } from '../stats/linearTrend.ts';
import { StatisticsError } from '../stats/statisticsError.ts';
import type { MetricId } from '../trade/metrics.ts';
import { sequenceOf } from './hitOrder.ts';
import { shotsOfHitter } from './shotsOfHitter.ts';
import { confidence } from './thresholds.ts';

/** A straight drift of a metric over one hitter's shots, SI per shot, contenders' own levels taken out. */
export interface Drift {
  readonly hitter: string;
  /** Contender of each of the hitter's shots, in hit order. */
  readonly sequence: readonly string[];
  readonly slope: number;
  readonly ci: readonly [number, number];
}

/** Contender of each shot, a hitter each, in hit order. */
export function sequencesOf(session: Session, hitters: readonly string[]): readonly (readonly string[])[] {
  return hitters.map((hitter) => sequenceOf(session, hitter));
}

/** The drift of a metric for each of the hitters whose shots allow one to be fitted. */
export function driftsOf(
  session: Session,
  metric: MetricId,
  hitters: readonly string[] = session.hitters,
): readonly Drift[] {
  return hitters.flatMap((hitter) => {
    const shots = shotsOfHitter(session, hitter);
    const sequence = sequenceOf(session, hitter);
    // A left-out shot still takes its turn, but its reading does not count.
    const values = shots.map(({ values: readings, excluded }) =>
      excluded === null ? (readings[metric] ?? null) : null,
    );
    const fitted = trendOf(sequence, values);
    return fitted === null ? [] : [{ hitter, sequence, ...fitted }];
  });
}

function trendOf(
  sequence: readonly string[],
  values: readonly (number | null)[],
): Pick<Drift, 'slope' | 'ci'> | null {
  const contenders = [...new Set(sequence)];
  try {
    const { slope } = linearTrend(
      sequence.map((contender) => contenders.indexOf(contender)),
      values,
      confidence,
    );
    return { slope: slope.estimate, ci: slope.ci };
  } catch (error) {
    // Too few readings, or one contender after another: then the drift cannot be told from the contenders.
    if (error instanceof StatisticsError) return null;
    throw error;
  }
}
