import type { Report } from '../kit/report.ts';
import { interestOfList } from '../prose/english/interestOfList.ts';
import { siteContent } from 'virtual:straightface/site';
import { pageKey, type PageKey } from './cacheKey.ts';
import { reportKinds, type ReportKind } from './reportKinds.ts';
import { listPages, type ListPage } from './reportLists.ts';
import { shownReports } from './siteContent.ts';

/** What a page of a list is made of; a type, since the framework takes no interface for props. */
export type ListProps = {
  readonly list: ListPage;
  readonly kinds: readonly ReportKind[];
  readonly all: readonly Report[];
  readonly publisher: string;
};

interface ListRoute extends PageKey {
  readonly props: ListProps;
}

/** Every page of the list of all reports, and of the list of each kind. */
export function listRoutes({ dev }: { readonly dev: boolean }): readonly ListRoute[] {
  const site = siteContent({ fresh: dev });
  const all = shownReports(site, { drafts: dev });
  const kinds = reportKinds(all);
  const links = kinds.map(({ id, title, reports }) => `${id} ${title} ${reports.length}`);
  // What it says of all reports besides: what the shop sells of it, and which of them replaced one of these.
  const interest = interestOfList(all.map(({ source }) => source.front));
  const titles = all.map(({ source }) => `${source.slug} ${source.front.title}`);
  return [null, ...kinds].flatMap((kind) =>
    listPages(kind === null ? all : kind.reports, kind).map((list) => ({
      props: { list, kinds, all, publisher: site.publisher },
      ...pageKey(list.reports, site.publisher, String(list.pages), interest, ...links, ...titles),
    })),
  );
}
