import type { Report } from '../kit/report.ts';
import { pageKey, type PagePath } from './cacheKey.ts';
import { givingReports } from './kitPaths.ts';

export type VersionPath = PagePath<'slug' | 'day', { readonly report: Report; readonly day: string }>;

/** Every version that is kept of a report that is shown. */
export function versionPaths(of: { readonly dev: boolean }): VersionPath[] {
  return givingReports(of).flatMap((report) =>
    report.source.versions.map((day) => ({
      params: { slug: report.source.slug, day },
      props: { report, day },
      ...pageKey([report]),
    })),
  );
}
