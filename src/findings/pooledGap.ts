import { meanInterval, nextValueInterval } from '../stats/meanInterval.ts';
import { aheadBy, statusOf } from './answerStatus.ts';
import type { Interval, MetricFindings, StatusId, VerdictId } from './findings.ts';
import { confidence, fewestForNewGolfer, fewestReportsPooled } from './thresholds.ts';
import { verdictOf } from './verdict.ts';

/** How a pooled gap is judged. */
type Judged = Pick<MetricFindings, 'matters' | 'better'>;

/** The judged gap of one report with credit to the contenders, `a` minus `b`, SI. */
interface ReportGap {
  /** Day of the session, `2026-04-11`. */
  readonly date: string;
  readonly estimate: number;
  /** Ids of who hit; the same id in two reports is the same golfer. */
  readonly hitters: readonly string[];
}

/** A gap of several reports with what it comes to. */
interface PooledAnswer {
  readonly estimate: number;
  readonly ci: Interval;
  readonly verdict: VerdictId;
  readonly status: StatusId;
  /** Which of the pair is ahead the way that is wanted, sure or not; null at 0. */
  readonly ahead: 'a' | 'b' | null;
}

/** What several reports of one pair say together, SI. */
export type PooledGap =
  | (PooledAnswer & {
      readonly kind: 'golfers';
      /** How many count alike: golfers, or golfers that share a report, who count as one. */
      readonly parties: number;
      /** How many different golfers hit; as many as parties where each hit alone. */
      readonly golfers: number;
      readonly reports: number;
      /** Where another golfer's own gap would lie; from six golfers, each on their own: averages of several spread less. */
      readonly newGolfer: Interval | null;
      /** The same without the report that came first: the others may have been hit because it looked good. */
      readonly withoutFirst: PooledAnswer | null;
    })
  | (PooledAnswer & {
      /** One golfer, or the same golfers, in several reports. */
      readonly kind: 'one-party';
      readonly golfers: number;
      readonly reports: number;
      readonly days: number;
    })
  | { readonly kind: 'none'; readonly why: 'too-few' | 'no-spread'; readonly parties: number };

/**
 * Reports put together: the unweighted mean of their gaps with t(k - 1), each counting alike, from three reports by
 * distinct golfers; several reports of one golfer are averaged first. Unweighted because with reports of unequal size
 * weighted pooling (Hartung & Knapp 2001) finds gaps that are not there far too often.
 *
 * @param gaps those of one pair of builds in one primary metric, with credit to the contenders
 * @param metric what matters, SI, and which way is wanted
 */
export function pooledGap(gaps: readonly ReportGap[], metric: Judged): PooledGap {
  const groups = byGolfer(gaps);
  const parties = groups.length;
  const golfers = new Set(gaps.flatMap(({ hitters }) => hitters)).size;
  const reports = gaps.length;
  if (parties === 1 && reports >= fewestReportsPooled) {
    const own = answerOf(
      gaps.map(({ estimate }) => estimate),
      metric,
    );
    const days = new Set(gaps.map(({ date }) => date)).size;
    return own === null
      ? { kind: 'none', why: 'no-spread', parties }
      : { kind: 'one-party', golfers, reports, days, ...own };
  }
  if (parties < fewestReportsPooled) return { kind: 'none', why: 'too-few', parties };
  const means = groups.map(meanOf);
  const own = answerOf(means, metric);
  if (own === null) return { kind: 'none', why: 'no-spread', parties };
  return {
    kind: 'golfers',
    parties,
    golfers,
    reports,
    ...own,
    newGolfer:
      parties >= fewestForNewGolfer && golfers === parties ? nextValueInterval(means, confidence) : null,
    withoutFirst: withoutFirst(gaps, metric),
  };
}

function withoutFirst(gaps: readonly ReportGap[], metric: Judged): PooledAnswer | null {
  const [first] = gaps.toSorted((x, y) => (x.date < y.date ? -1 : x.date > y.date ? 1 : 0));
  const groups = byGolfer(gaps.filter((gap) => gap !== first));
  return groups.length < fewestReportsPooled ? null : answerOf(groups.map(meanOf), metric);
}

/** Null when all values are equal: then nothing says how far they may be off. */
function answerOf(values: readonly number[], { matters, better }: Judged): PooledAnswer | null {
  if (values.every((value) => value === values[0])) return null;
  const { estimate, ci } = meanInterval(values, confidence);
  const verdict = verdictOf(estimate, ci, matters);
  const status = statusOf({ verdict, credit: 'contender', leans: false });
  return { estimate, ci, verdict, status, ahead: aheadBy(estimate, better) };
}

function meanOf(gaps: readonly ReportGap[]): number {
  return gaps.reduce((sum, { estimate }) => sum + estimate, 0) / gaps.length;
}

/** Reports that share a golfer, directly or through a third, belong together. */
function byGolfer(gaps: readonly ReportGap[]): readonly (readonly ReportGap[])[] {
  let groups: ReportGap[][] = [];
  for (const gap of gaps) {
    const shares = (group: readonly ReportGap[]): boolean =>
      group.some(({ hitters }) => hitters.some((hitter) => gap.hitters.includes(hitter)));
    const joined = groups.filter(shares);
    groups = [...groups.filter((group) => !shares(group)), [...joined.flat(), gap]];
  }
  return groups;
}
