import { pathToFileURL } from 'node:url';
import type { Report } from '../../kit/report.ts';
import { finishReport } from '../../site/finishReport.ts';
import { withSite, type GivenSite } from '../../site/givenSite.ts';
import type { PageRoutes } from './pagesEntry.ts';
import { writePages, type PagesTarget, type WrittenPage } from './writePages.ts';

type Entry = typeof import('./pagesEntry.ts');

/** What renders, and where it writes. */
export interface Rendering {
  /** File of the compiled pages. */
  readonly entry: string;
  readonly target: PagesTarget;
  /** As the site's own address tells it; null where the shop does not say. */
  readonly origin: string | null;
}

/** Source files of pages that are made of one report each. */
export const isOfReport = (component: string): boolean => component.startsWith('src/pages/reports/');

/** Routes of compiled pages, see `pageRoutes` there. */
export async function routesOf(
  { entry }: Pick<Rendering, 'entry'>,
  isWanted: (component: string) => boolean,
): Promise<PageRoutes> {
  const { pageRoutes }: Entry = await import(pathToFileURL(entry).href);
  return pageRoutes(isWanted);
}

/** Writes all pages and files of one report, whatever else the content has. */
export async function renderReport(
  report: Report,
  { contentDir, site }: GivenSite,
  rendering: Rendering,
): Promise<readonly WrittenPage[]> {
  const { target, origin } = rendering;
  const pages = await withSite({ contentDir, site: { ...site, reports: [report] } }, async () => {
    const routes = await routesOf(rendering, isOfReport);
    return writePages(await routes.paths(), routes, target);
  });
  const { folder, base } = target;
  const added = finishReport(report.source.slug, { folder, base, origin });
  return [...pages, ...added.map((file) => ({ listed: null, file }))];
}
