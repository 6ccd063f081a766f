import { hash } from 'node:crypto';
import { cpSync, existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Report } from '../../kit/report.ts';
import { ledgerLine } from '../../prose/english/ledger.ts';
import { pageKey } from '../../site/cacheKey.ts';
import { withSite, type GivenSite } from '../../site/givenSite.ts';
import { shownReports } from '../../site/siteContent.ts';
import { filesBelow } from '../../site/siteMark.ts';
import type { Surroundings } from '../../site/surroundings.ts';
import { writeSiteMap } from '../../site/writeSiteMap.ts';
import type { CompiledPages } from './compiledPages.ts';
import { isOfReport, routesOf, type Rendering } from './renderReport.ts';
import type { SitePart, SiteParts } from './siteRecord.ts';
import { takeOver } from './takeOver.ts';
import { writePages, type WrittenPage } from './writePages.ts';

/** A site that is built in a folder aside. */
export interface SiteRendering {
  readonly given: GivenSite;
  readonly pages: CompiledPages;
  readonly rendering: Rendering;
  /** What stands unchanged in the folder of the site, see `readRecord`. */
  readonly before: SiteParts;
  readonly outDir: string;
  /** Renders reports, as many at a time as it can. */
  readonly renderReports: (
    reports: readonly { readonly report: Report; readonly others: Surroundings }[],
  ) => Promise<ReadonlyMap<string, readonly WrittenPage[]>>;
}

export interface RenderedSite {
  readonly parts: SiteParts;
  /** Whether the site of before has the very same files, and the folder aside is not whole. */
  readonly isAsBefore: boolean;
}

/**
 * Writes a whole site into a folder: of the reports and pages whose key is as it was the files of the site of before, all
 * others anew.
 */
export async function renderSite(site: SiteRendering): Promise<RenderedSite> {
  const { given, pages, rendering, before, outDir } = site;
  const { folder } = rendering.target;
  cpSync(pages.staticFolder, folder, { recursive: true });
  const fixed: SitePart = {
    key: pages.key,
    written: filesBelow(folder).map((file) => ({ listed: null, file })),
  };
  const kept = new Map<string, SitePart>();
  const reports = shownReports(given.site, { drafts: false }).map((report) => {
    const others = concerning(report, given.site.others);
    return { report, others, name: `report ${report.source.slug}`, key: keyOf(report, others, site) };
  });
  const anew = reports.filter(({ name, key }) => !keep(name, key, before, kept));
  const [rendered, shared] = await Promise.all([
    site.renderReports(anew),
    withSite(given, () => renderShared(site, kept)),
  ]);
  const parts = new Map<string, SitePart>([
    ['static', fixed],
    ...kept,
    ...anew.map(({ report, name, key }): [string, SitePart] => [
      name,
      { key, written: rendered.get(report.source.slug) ?? [] },
    ]),
    ...shared,
  ]);
  const isAsBefore =
    before.size > 0 && anew.length === 0 && hasSameFiles(parts, site, [fixed, ...shared.values()]);
  if (isAsBefore) return { parts: new Map([...before]), isAsBefore };
  takeOver(
    [...kept.values()].flatMap(({ written }) => written.map(({ file }) => file)),
    outDir,
    folder,
  );
  const listed = [...parts.values()].flatMap(({ written }) => written.flatMap((page) => page.listed ?? []));
  return { parts: new Map([...parts, ...(await siteMapPart(listed, site))]), isAsBefore };
}

const siteMapName = 'sitemap';

async function siteMapPart(
  listed: readonly string[],
  { given, rendering: { origin, target } }: SiteRendering,
): Promise<readonly (readonly [string, SitePart])[]> {
  if (origin === null) return [];
  const files = await writeSiteMap(listed, given.site, { ...target, site: origin });
  return [[siteMapName, { key: null, written: files.map((file) => ({ listed: null, file })) }]];
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
  { pages, rendering, before }: SiteRendering,
  kept: Map<string, SitePart>,
): Promise<SiteParts> {
  const routes = await routesOf(rendering, (component) => !isOfReport(component));
  const parts = new Map<string, SitePart>();
  for (const path of await routes.paths()) {
    const name = `page ${path.pathname}`;
    const key = path.cacheKey === undefined ? null : hashOf([pages.key, path.cacheKey]);
    if (keep(name, key, before, kept)) continue;
    parts.set(name, { key, written: await writePages([path], routes, rendering.target) });
  }
  return parts;
}

/** Of what all reports say, the part that one of them repeats. */
function concerning({ source: { front } }: Report, { titles, contenders }: Surroundings): Surroundings {
  const newer = front.supersededBy;
  const title = newer === null ? undefined : titles.get(newer);
  return {
    titles: new Map(newer === null || title === undefined ? [] : [[newer, title]]),
    contenders: new Set(front.contenders.map(({ id }) => id).filter((id) => contenders.has(id))),
  };
}

function keyOf(
  report: Report,
  { titles, contenders }: Surroundings,
  { given, pages }: SiteRendering,
): string | null {
  const own = pageKey([report], ledgerLine(given.site.ledger), ...titles.values(), ...contenders).cacheKey;
  return own === undefined ? null : hashOf([pages.key, own]);
}

const hashOf = (value: unknown): string => hash('sha256', JSON.stringify(value), 'hex');

/** Whether the site of before has the same parts, and of what was rendered anew the same bytes. */
function hasSameFiles(
  parts: SiteParts,
  { before, outDir, rendering }: SiteRendering,
  rendered: readonly SitePart[],
): boolean {
  const names = [...before.keys()].filter((name) => name !== siteMapName);
  if (names.length !== parts.size || !names.every((name) => parts.has(name))) return false;
  // The sitemap tells days of reports, whose keys are the same.
  if (before.has(siteMapName) !== (rendering.origin !== null)) return false;
  return rendered.every(({ written }) =>
    written.every(({ file }) => {
      const old = join(outDir, file);
      return existsSync(old) && readFileSync(old).equals(readFileSync(join(rendering.target.folder, file)));
    }),
  );
}
