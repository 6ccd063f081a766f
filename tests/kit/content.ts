import { resolve } from 'node:path';
import type { DrawnFigure } from '../../src/charts/figure.ts';
import type { Report } from '../../src/kit/report.ts';
import { kitOf } from '../../src/kit/kitOf.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { oddReports } from './oddReports.ts';

/** The reports of `content/` that are shown. */
export const reports: readonly Report[] = loadSite(resolve('content')).reports.filter(
  ({ source }) => source.front.status === 'published',
);

/** Reports that try what those do not: corrected, replaced, calculated, not judged, many and long names, metres. */
export const oddOnes: readonly Report[] = loadSite(oddReports()).reports;

/** Every chart they give away, with a name for the test. */
export const offered: readonly (readonly [name: string, report: Report, figure: DrawnFigure])[] = [
  ...reports,
  ...oddOnes,
].flatMap((report) =>
  kitOf(report).offered.map(({ figure }) => [`${report.source.slug}/${figure.id}`, report, figure] as const),
);
