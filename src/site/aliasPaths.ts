import { figuresToOffer } from '../kit/kitOf.ts';
import type { Report } from '../kit/report.ts';
import { siteContent } from 'virtual:straightface/site';
import { pageKey, type PageKey } from './cacheKey.ts';
import { shownReports } from './siteContent.ts';

/** A page at an older address of a report, and where it stands by now. */
export interface AliasPath extends PageKey {
  readonly params: { readonly alias: string; readonly rest: string | undefined };
  readonly props: { readonly report: Report; readonly to: string };
}

/** Pages of a report that others link to, print or frame, from its own address on. */
function pagesOf(report: Report): readonly string[] {
  const standing = report.source.front.status === 'withdrawn' ? [] : ['details/', 'sheet/'];
  return ['', 'kit/', ...standing, ...figuresToOffer(report).map(({ id }) => `embed/${id}/`)];
}

/** Every older address of every report that is shown. */
export function aliasPaths({ dev }: { readonly dev: boolean }): AliasPath[] {
  return shownReports(siteContent({ fresh: dev }), { drafts: dev }).flatMap((report) =>
    report.source.front.aliases.flatMap((alias) =>
      pagesOf(report).map((page) => ({
        params: { alias, rest: page === '' ? undefined : page.slice(0, -1) },
        props: { report, to: `/reports/${report.source.slug}/${page}` },
        ...pageKey([report]),
      })),
    ),
  );
}
