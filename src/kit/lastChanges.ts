import { contenderRecords, reportsHitting } from './contenderRecords.ts';
import { pairRecords, reportsMeeting } from './pairRecords.ts';
import type { Report } from './report.ts';

/** A page that lists reports. */
interface Listing {
  readonly path: string;
  readonly reports: readonly Report[];
}

/**
 * The day on which each page of the site last changed, by its path such as `/reports/<slug>/`: of its own report with
 * all that stands below it, or the latest of the reports that it shows. Pages that show none have no day.
 *
 * @param reports the reports that are shown, newest first
 * @param listings the pages that list some of them
 */
export function lastChanges(
  reports: readonly Report[],
  listings: readonly Listing[] = [],
): (path: string) => string | null {
  const standing = reports.filter(({ source }) => source.front.status !== 'withdrawn');
  const days = new Map<string, string | null>([
    ['/', latestOf(reports, reports)] as const,
    ...listings.map(({ path, reports: own }) => [path, latestOf(own, reports)] as const),
    ...[...contenderRecords(standing)].map(
      ([id, record]) => [`/contenders/${id}/`, latestOf(reportsHitting(record), reports)] as const,
    ),
    ...[...pairRecords(standing)].map(
      ([pair, record]) => [`/pairs/${pair}/`, latestOf(reportsMeeting(record), reports)] as const,
    ),
    ...reports.map((report) => [`/reports/${report.source.slug}/`, changeOf(report, reports)] as const),
  ]);
  return (path) => days.get(/^\/reports\/[^/]+\//.exec(path)?.[0] ?? path) ?? null;
}

function latestOf(some: readonly Report[], reports: readonly Report[]): string | null {
  return latest(some.map((report) => changeOf(report, reports)));
}

/** Day of publication, else of the session, or of what has happened to the report since. */
function changeOf({ source: { front } }: Report, reports: readonly Report[]): string | null {
  const newer =
    front.status === 'superseded'
      ? reports.find(({ source }) => source.slug === front.supersededBy)
      : undefined;
  return latest([
    front.published ?? front.date,
    ...front.corrections.map(({ date }) => date),
    ...(front.withdrawn === null ? [] : [front.withdrawn.date]),
    ...(newer === undefined ? [] : [newer.source.front.published ?? newer.source.front.date]),
  ]);
}

/** Of days such as `2026-04-11`; null of none. */
function latest(days: readonly (string | null)[]): string | null {
  return (
    days
      .filter((day) => day !== null)
      .toSorted()
      .at(-1) ?? null
  );
}
