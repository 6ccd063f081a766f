import type { Report } from '../kit/report.ts';
import { pageKey, type PageKey } from './cacheKey.ts';
import { givingReports } from './kitPaths.ts';

export interface VersionPath extends PageKey {
  readonly params: { readonly slug: string; readonly day: string };
  readonly props: { readonly report: Report; readonly day: string };
}

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
