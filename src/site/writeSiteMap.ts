import { createWriteStream } from 'node:fs';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { SitemapAndIndexStream, SitemapStream } from 'sitemap';
import { lastChanges } from '../kit/lastChanges.ts';
import { reportKinds } from './reportKinds.ts';
import { listPages } from './reportLists.ts';
import { shownReports, type SiteContent } from './siteContent.ts';

interface SiteMapTarget {
  readonly folder: string;
  /** `https://` and host. */
  readonly site: string;
  /** Path on the host, with a slash at both ends. */
  readonly base: string;
}

/** Entries of one file, as the protocol of sitemaps allows (sitemaps.org, 50,000). */
const limit = 50_000;

/**
 * Writes the sitemap: every page that searches should find, with the day on which its reports last changed.
 *
 * @param paths of the pages from the site's root, such as `/reports/<slug>/`
 * @returns names of the files
 */
export async function writeSiteMap(
  paths: readonly string[],
  content: SiteContent,
  { folder, site, base }: SiteMapTarget,
): Promise<readonly string[]> {
  const shown = shownReports(content, { drafts: false });
  const kinds = reportKinds(shown).flatMap((kind) => listPages(kind.reports, kind));
  const changed = lastChanges(shown, [...listPages(shown), ...kinds]);
  const addressOf = (path: string): string => new URL(`${base}${path.slice(1)}`, site).href;
  const entries = paths
    .map((path) => ({ url: addressOf(path), lastmod: changed(path) ?? undefined }))
    .toSorted((x, y) => x.url.localeCompare(y.url, 'en', { numeric: true }));
  const files = ['sitemap-index.xml'];
  const index = new SitemapAndIndexStream({
    limit,
    getSitemapStream: (number) => {
      const name = `sitemap-${number}.xml`;
      files.push(name);
      const stream = new SitemapStream({
        hostname: addressOf('/'),
        xmlns: { news: false, xhtml: false, image: false, video: false },
      });
      const days = entries
        .slice(number * limit, (number + 1) * limit)
        .flatMap(({ lastmod }) => (lastmod === undefined ? [] : [lastmod]));
      const lastmod = days.toSorted().at(-1);
      const written = stream.pipe(createWriteStream(join(folder, name)));
      return [{ url: addressOf(`/${name}`), ...(lastmod === undefined ? {} : { lastmod }) }, stream, written];
    },
  });
  await pipeline(Readable.from(entries), index, createWriteStream(join(folder, 'sitemap-index.xml')));
  return files;
}
