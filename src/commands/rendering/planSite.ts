import type { Report } from '../../kit/report.ts';
import { ledgerLine } from '../../prose/english/ledger.ts';
import { hashOf, pageKey } from '../../site/cacheKey.ts';
import { shownReports, type SiteContent } from '../../site/siteContent.ts';
import type { Surroundings } from '../../site/surroundings.ts';
import type { SitePart, SiteParts } from './siteRecord.ts';

/** A report with all that its pages say of others. */
export interface PlannedReport {
  readonly report: Report;
  readonly others: Surroundings;
  /** Name of its part of the site. */
  readonly name: string;
  readonly key: string | null;
}

/** What a site is to be made of. */
export interface SitePlan {
  readonly reports: readonly PlannedReport[];
  /** Changes whenever anything of the site does; null where that cannot be told. */
  readonly key: string | null;
}

/** @param pagesKey of the compiled pages */
export function planSite(site: SiteContent, pagesKey: string): SitePlan {
  const { shop, publisher, brand, ledger, others } = site;
  const reports = shownReports(site, { drafts: false }).map((report): PlannedReport => {
    const own = concerning(report, others);
    const key = keyOf(report, own, ledgerLine(ledger));
    return {
      report,
      others: own,
      name: `report ${report.source.slug}`,
      key: key === null ? null : hashOf([pagesKey, key]),
    };
  });
  const shared = [pagesKey, shop, publisher, brand, ledger, [...others.titles], [...others.contenders]];
  const keys = reports.map(({ name, key }) => [name, key]);
  return { reports, key: reports.some(({ key }) => key === null) ? null : hashOf([shared, keys]) };
}

const wholeName = 'site';

/** By this part of a record the next build knows that all others are there and as they were. */
export function wholePart({ key }: SitePlan, parts: SiteParts): readonly [string, SitePart] {
  return [wholeName, { key: key === null ? null : hashOf([key, parts.size]), written: [] }];
}

/** Whether the site of before is whole and just what is planned. */
export function isUnchanged({ key }: SitePlan, before: SiteParts): boolean {
  return key !== null && before.get(wholeName)?.key === hashOf([key, before.size - 1]);
}

/** Of what all reports say, the part that this one repeats. */
function concerning({ source: { front } }: Report, { titles, contenders }: Surroundings): Surroundings {
  const newer = front.supersededBy;
  const title = newer === null ? undefined : titles.get(newer);
  return {
    titles: new Map(newer === null || title === undefined ? [] : [[newer, title]]),
    contenders: new Set(front.contenders.map(({ id }) => id).filter((id) => contenders.has(id))),
  };
}

function keyOf(report: Report, { titles, contenders }: Surroundings, ledger: string): string | null {
  return pageKey([report], ledger, ...titles.values(), ...contenders).cacheKey ?? null;
}
