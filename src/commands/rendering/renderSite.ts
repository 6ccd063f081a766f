import { cpSync } from 'node:fs';
import { hashOf } from '../../site/cacheKey.ts';
import { withSite, type GivenSite } from '../../site/givenSite.ts';
import { filesBelow } from '../../site/siteMark.ts';
import { writeSiteMap } from '../../site/writeSiteMap.ts';
import { wholePart, type PlannedReport, type SitePlan } from './planSite.ts';
import { isOfReport, routesOf, type Rendering } from './renderReport.ts';
import type { SitePart, SiteParts } from './siteRecord.ts';
import { takeOver } from './takeOver.ts';
import { writePages, type WrittenPage } from './writePages.ts';

/** A site that is built in a folder aside. */
interface SiteRendering {
  readonly given: GivenSite;
  readonly plan: SitePlan;
  /** Of the compiled pages. */
  readonly pagesKey: string;
  /** What lies beside every site's pages. */
  readonly staticFolder: string;
  readonly rendering: Rendering;
  /** What stands unchanged in the folder of the site, see `readRecord`. */
  readonly before: SiteParts;
  readonly outDir: string;
  /** Renders reports, as many at a time as it can; gives what was written for each, by slug. */
  readonly renderReports: (
    reports: readonly PlannedReport[],
  ) => Promise<ReadonlyMap<string, readonly WrittenPage[]>>;
}

/**
 * Writes a whole site into a folder: of the reports and pages whose key is as it was the files of the site of before, all
 * others anew.
 */
export async function renderSite(site: SiteRendering): Promise<SiteParts> {
  const { given, plan, rendering, before, outDir } = site;
  const { folder } = rendering.target;
  cpSync(site.staticFolder, folder, { recursive: true });
  const fixed = filesBelow(folder).map((file) => ({ listed: null, file }));
  const kept = new Map<string, SitePart>();
  const anew = plan.reports.filter(({ name, key }) => !keep(name, key, before, kept));
  const [rendered, shared] = await Promise.all([
    site.renderReports(anew),
    withSite(given, () => renderShared(site, kept)),
  ]);
  takeOver(
    [...kept.values()].flatMap(({ written }) => written.map(({ file }) => file)),
    outDir,
    folder,
  );
  const pages = new Map<string, SitePart>([
    ...kept,
    ...anew.map(({ report, name, key }): [string, SitePart] => [
      name,
      { key, written: rendered.get(report.source.slug) ?? [] },
    ]),
    ...shared,
  ]);
  const beside = [...fixed, ...(await siteMapFiles(pages, site))];
  const parts = new Map([...pages, ['beside', { key: null, written: beside }] as const]);
  return new Map([...parts, wholePart(plan, parts)]);
}

async function siteMapFiles(
  parts: SiteParts,
  { given, rendering: { origin, target } }: SiteRendering,
): Promise<readonly WrittenPage[]> {
  if (origin === null) return [];
  const listed = [...parts.values()].flatMap(({ written }) => written.flatMap((page) => page.listed ?? []));
  const files = await writeSiteMap(listed, given.site, { ...target, site: origin });
  return files.map((file) => ({ listed: null, file }));
}

/** Whether a part stands as it is to be; it is then noted. */
function keep(name: string, key: string | null, before: SiteParts, kept: Map<string, SitePart>): boolean {
  const known = before.get(name);
  if (known === undefined || key === null || known.key !== key) return false;
  kept.set(name, known);
  return true;
}

/** The pages that show several reports, or none: those without a key are always rendered. */
async function renderShared(
  { pagesKey, rendering, before }: SiteRendering,
  kept: Map<string, SitePart>,
): Promise<SiteParts> {
  const routes = await routesOf(rendering, (component) => !isOfReport(component));
  const parts = new Map<string, SitePart>();
  for (const path of await routes.paths()) {
    const name = `page ${path.pathname}`;
    const key = path.cacheKey === undefined ? null : hashOf([pagesKey, path.cacheKey]);
    if (!keep(name, key, before, kept))
      parts.set(name, { key, written: await writePages([path], routes, rendering.target) });
  }
  return parts;
}
