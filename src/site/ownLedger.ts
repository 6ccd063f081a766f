import type { Source } from '../intake/authored/source.ts';
import type { Ledger, ReportRecord } from '../intake/ledger.ts';

type Named = Pick<Source, 'slug'> & { readonly front: Pick<Source['front'], 'aliases'> };

/** The ledger in which what stands under an older name of a report stands under its present one. */
export function underPresentNames(sources: readonly Named[], ledger: Ledger): Ledger {
  const names = new Map(sources.flatMap(({ slug, front }) => front.aliases.map((alias) => [alias, slug])));
  const renamed = <Entry extends { readonly slug: string }>(entries: readonly Entry[]): readonly Entry[] =>
    entries.map((entry) => ({ ...entry, slug: names.get(entry.slug) ?? entry.slug }));
  if (names.size === 0) return ledger;
  const reports = Map.groupBy(renamed(ledger.reports), ({ slug }) => slug);
  return {
    ...ledger,
    plans: renamed(ledger.plans),
    dropped: renamed(ledger.dropped),
    reports: [...reports].map(([slug, own]) => ({
      slug,
      records: own.flatMap(({ records }) => records).toSorted(byDay),
    })),
  };
}

const byDay = (x: ReportRecord, y: ReportRecord): number => (x.date < y.date ? -1 : x.date > y.date ? 1 : 0);

/** What was put on record of a report, under whichever name it had; the oldest first. */
export function recordsOf(source: Named, ledger: Ledger | null): readonly ReportRecord[] {
  if (ledger === null) return [];
  const { reports } = underPresentNames([source], ledger);
  return reports.find(({ slug }) => slug === source.slug)?.records ?? [];
}
