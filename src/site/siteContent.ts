import type { Shop } from '../intake/authored/shop.ts';
import type { Report } from '../kit/report.ts';
import { acrossReports } from './acrossReports.ts';
import { openContent, type Cached, type LoadedReport, type OpenContent } from './openContent.ts';
import { withoutSeen } from './seenWarnings.ts';
import { isShown } from './shown.ts';
import { surroundingsOf, type Surroundings } from './surroundings.ts';

/** A report that cannot be shown yet, with what stands in the way. */
export type BlockedReport = Omit<LoadedReport, 'report'>;

/** Everything the site is made from. */
export interface SiteContent extends Pick<OpenContent, 'brand' | 'ledger' | 'problems' | 'waiting'> {
  readonly shop: Shop | null;
  /** Name of who publishes, or that it is not recorded. */
  readonly publisher: string;
  /** Newest first; drafts included, which only `dev` shows. */
  readonly reports: readonly Report[];
  /** What pages of one report say of others. */
  readonly others: Surroundings;
  readonly blocked: readonly BlockedReport[];
}

/**
 * Reads and analyses a content folder; `only` keeps to some reports.
 *
 * @param cached where reports are taken from that were worked out before
 * @param today ISO 8601; null where no clock is asked
 */
export function loadSite(
  root: string,
  only: readonly string[] = [],
  cached: Cached | null = null,
  today: string | null = null,
): SiteContent {
  const content = openContent(root, only, cached);
  const made = content.slugs.map(content.load);
  const reports = made.flatMap(({ report }) => (report === null ? [] : [report]));
  const sources = reports.map(({ source }) => source);
  return {
    ...sharedBy(content),
    reports: [...reports].sort(newestFirst),
    others: surroundingsOf(reports, reports.filter(isShown)),
    blocked: made.flatMap(({ slug, unfinished, report, problems }) =>
      report === null ? [{ slug, unfinished, problems }] : [],
    ),
    problems: withoutSeen(
      [
        ...content.problems,
        ...made.flatMap(({ problems }) => problems),
        ...acrossReports(sources, {
          folders: content.folders,
          ledger: only.length === 0 ? content.ledger : null,
          today,
        }),
      ],
      sources,
    ),
    waiting: content.waiting,
  };
}

/** The site as the pages of one report need it. */
export function siteOfOne(content: OpenContent, report: Report, others: Surroundings): SiteContent {
  return { ...sharedBy(content), reports: [report], others, blocked: [], problems: [], waiting: [] };
}

function sharedBy({
  shared: { shop },
  brand,
  ledger,
}: OpenContent): Pick<SiteContent, 'shop' | 'publisher' | 'brand' | 'ledger'> {
  return { shop, publisher: shop?.name ?? 'Publisher not recorded', brand, ledger };
}

function newestFirst({ source: x }: Report, { source: y }: Report): number {
  if (x.front.date !== y.front.date) return x.front.date < y.front.date ? 1 : -1;
  return x.slug < y.slug ? -1 : 1;
}

/** Title of the report that has replaced this one; null where none has, or it is not here. */
export function replacementTitle({ others }: SiteContent, { source: { front } }: Report): string | null {
  return front.supersededBy === null ? null : (others.titles.get(front.supersededBy) ?? null);
}

/** The reports that pages are made of; drafts among them only where they are asked for. */
export function shownReports(
  { reports }: SiteContent,
  { drafts }: { readonly drafts: boolean },
): readonly Report[] {
  return reports.filter((report) => drafts || isShown(report));
}
