import { buildKey } from '../findings/buildKey.ts';
import type { MetricFindings, PairFindings } from '../findings/findings.ts';
import { pooledGap, type PooledGap } from '../findings/pooledGap.ts';
import { turnedPair } from '../findings/turnedPair.ts';
import type { MetricId } from '../trade/metrics.ts';
import { primaryMetrics } from '../prose/answers.ts';
import type { Report } from './report.ts';

/** One report in which both of a pair were hit; the pair is turned so that its first id is `a`. */
export interface Meeting {
  readonly report: Report;
  readonly metric: MetricFindings;
  readonly pair: PairFindings;
  /** Whether a newer report of the group has the same shots: they count once, whoever is said to have hit them. */
  readonly repeats: boolean;
}

/** Reports that hit the same two builds for the same main metric, newest first, and what they say together. */
export interface MeetingsOfBuilds {
  readonly metric: MetricId;
  readonly meetings: readonly Meeting[];
  readonly pooled: PooledGap;
}

/** All that is known of two contenders that met. */
export interface PairRecord {
  readonly a: string;
  readonly b: string;
  /** Different builds, and different metrics, apart; most reports first. */
  readonly groups: readonly MeetingsOfBuilds[];
}

/** The reports in which they met, group by group; one that has several main measures stands there for each. */
export const reportsMeeting = ({ groups }: PairRecord): readonly Report[] =>
  groups.flatMap(({ meetings }) => meetings.map(({ report }) => report));

/** `alder-and-birch`, in the order of the alphabet; an "-and-" of a name itself is written so that no two pairs share an address. */
export const pairSlug = (x: string, y: string): string =>
  [x, y]
    .toSorted()
    .map((id) => id.replaceAll('-and-', '-and--'))
    .join('-and-');

/** A page that shows what several reports know needs so many. */
export const fewestReports = 2;

/** Every pair whose builds are recorded and that met in two reports or more, by its slug. `reports` stand newest first. */
export function pairRecords(reports: readonly Report[]): ReadonlyMap<string, PairRecord> {
  const groups = new Map<string, Map<string, Meeting[]>>();
  for (const report of reports.filter(({ source }) => source.front.status !== 'withdrawn')) {
    const { front } = report.source;
    const keys = new Map(front.contenders.map((one) => [one.id, buildKey(one, front)]));
    for (const metric of primaryMetrics(report.findings)) {
      for (const pair of metric.pairs.map(inOrder)) {
        const [first, second] = [keys.get(pair.a) ?? null, keys.get(pair.b) ?? null];
        if (first === null || second === null) continue;
        const slug = pairSlug(pair.a, pair.b);
        const byBuild = groups.get(slug) ?? new Map<string, Meeting[]>();
        groups.set(slug, byBuild);
        const key = `${metric.id} ${first} ${second}`;
        const before = byBuild.get(key) ?? [];
        const repeats = before.some((own) => counts(own) && haveSameShots(own.report, report));
        byBuild.set(key, [...before, { report, metric, pair, repeats }]);
      }
    }
  }
  const met = (byBuild: ReadonlyMap<string, readonly Meeting[]>): number =>
    new Set([...byBuild.values()].flatMap((meetings) => meetings.map(({ report }) => report))).size;
  return new Map(
    [...groups]
      .filter(([, byBuild]) => met(byBuild) >= fewestReports)
      .map(([slug, byBuild]) => [slug, recordOf([...byBuild.values()])]),
  );
}

function recordOf(groups: readonly (readonly Meeting[])[]): PairRecord {
  const pair = groups[0]?.[0]?.pair;
  const pooledOf = (meetings: readonly Meeting[]): PooledGap => {
    const [newest] = meetings;
    return newest === undefined
      ? { kind: 'none', why: 'too-few', parties: 0 }
      : pooledGap(meetings.flatMap(poolable), newest.metric);
  };
  return {
    a: pair?.a ?? '',
    b: pair?.b ?? '',
    groups: groups
      .map((meetings) => ({
        metric: meetings[0]?.metric.id ?? 'carry',
        meetings,
        pooled: pooledOf(meetings),
      }))
      .toSorted((x, y) => y.meetings.length - x.meetings.length),
  };
}

/** What may be combined: judged, to the credit of the contenders, not replaced by a newer report, nor its shots again. */
function poolable({ report, pair, repeats }: Meeting): Parameters<typeof pooledGap>[0] {
  const { front } = report.source;
  if (pair.estimate === null || pair.ci === null || pair.verdict === 'not-judged') return [];
  if (pair.credit !== 'contender' || front.status === 'superseded' || repeats) return [];
  return [{ date: front.date, estimate: pair.estimate, hitters: report.session.hitters }];
}

/** Whether two reports share a session file, byte for byte. */
function haveSameShots({ source: x }: Report, { source: y }: Report): boolean {
  const hashes = ({ front, files }: Report['source']): readonly string[] =>
    files.filter(({ name }) => front.session.includes(name)).map(({ sha256 }) => sha256);
  return hashes(x).some((hash) => hashes(y).includes(hash));
}

/** Whether a meeting counts in what its group says together. */
export const counts = (meeting: Meeting): boolean => poolable(meeting).length > 0;

function inOrder(pair: PairFindings): PairFindings {
  return pair.a < pair.b ? pair : turnedPair(pair);
}
