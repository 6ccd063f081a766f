import { moments } from '../../stats/moments.ts';
import { bonettSdInterval } from '../../stats/sdInterval.ts';
import { StatisticsError } from '../../stats/statisticsError.ts';
import type { ClubKind } from '../../trade/clubKind.ts';
import type { MetricId } from '../../trade/metrics.ts';
import { foldedName } from '../contenderNames.ts';
import type { Session } from '../session.ts';

/** A session of the shop's own, with what says whether it is like the one planned. */
export interface PastSession {
  readonly slug: string;
  readonly kind: ClubKind | null;
  /** Role of each hitter, by id. */
  readonly roles: Readonly<Record<string, string>>;
  readonly session: Session;
}

/** The spread that a shop's own sessions show; SI. */
export interface LearnedSpread {
  /** Standard deviation within one hitter and one contender, pooled. */
  readonly sd: number;
  /** 95 % interval of it (Bonett 2006), null where it cannot be had. */
  readonly range: readonly [low: number, high: number] | null;
  readonly shots: number;
  readonly reports: readonly string[];
  /** Whether all these shots are by hitters of the role asked for. */
  readonly sameRole: boolean;
}

/** Fewer degrees of freedom tell little more than a typical value does; our judgement. */
const fewestDegrees = 10;

/**
 * The pooled standard deviation of past shots with the same kind of club, by hitters of the same role where there are
 * enough of them, else by any. Null where there are too few. Shots left out of a report are left out here.
 */
export function learnedSpread(
  past: readonly PastSession[],
  {
    metric,
    kind,
    role,
  }: { readonly metric: MetricId; readonly kind: ClubKind | null; readonly role: string | null },
): LearnedSpread | null {
  const alike = past.filter((session) => kind === null || session.kind === kind);
  const ofRole =
    role === null
      ? null
      : pooled(alike, metric, ({ roles }, hitter) => foldedName(roles[hitter] ?? '') === foldedName(role));
  if (ofRole !== null) return { ...ofRole, sameRole: true };
  const ofAny = pooled(alike, metric, () => true);
  return ofAny === null ? null : { ...ofAny, sameRole: false };
}

function pooled(
  past: readonly PastSession[],
  metric: MetricId,
  counts: (session: PastSession, hitter: string) => boolean,
): Omit<LearnedSpread, 'sameRole'> | null {
  const cells = past.flatMap((own) => {
    const values = own.session.shots.flatMap(({ hitter, contender, excluded, values: all }) => {
      const value = all[metric];
      return excluded === null && typeof value === 'number' && counts(own, hitter)
        ? [{ cell: `${hitter} ${contender}`, value }]
        : [];
    });
    return [...Map.groupBy(values, ({ cell }) => cell).values()].map((shots) => ({
      slug: own.slug,
      values: shots.map(({ value }) => value),
    }));
  });
  const told = cells.filter(({ values }) => values.length >= 2);
  const degrees = told.reduce((sum, { values }) => sum + values.length - 1, 0);
  if (degrees < fewestDegrees) return null;
  const squares = told.reduce((sum, { values }) => sum + (values.length - 1) * moments(values).variance, 0);
  const sd = Math.sqrt(squares / degrees);
  if (!(sd > 0)) return null;
  return {
    sd,
    range: rangeOf(told.map(({ values }) => values)),
    shots: told.reduce((sum, { values }) => sum + values.length, 0),
    reports: [...new Set(told.map(({ slug }) => slug))],
  };
}

function rangeOf(cells: readonly (readonly number[])[]): readonly [number, number] | null {
  const distances = cells.flatMap((values) => {
    const { mean } = moments(values);
    return values.map((value) => value - mean);
  });
  try {
    return bonettSdInterval(distances, 0.95);
  } catch (error) {
    if (error instanceof StatisticsError) return null;
    throw error;
  }
}
