import sitemap from '@astrojs/sitemap';
import type { AstroIntegration } from 'astro';
import { lastChanges } from '../kit/lastChanges.ts';
import { reportKinds } from './reportKinds.ts';
import { listPages } from './reportLists.ts';
import { shownReports, type SiteContent } from './siteContent.ts';

/**
 * The sitemap, where the site has an address: every page that searches should find, with the day on which its reports
 * last changed. Frames and error pages are found through others, and older addresses lead to those of now.
 *
 * @param content what the site is built of, asked for when it is built
 */
export function siteMap(content: () => SiteContent): AstroIntegration {
  let site: string | undefined;
  let root = '/';
  let isOlder: (path: string) => boolean = () => false;
  let changed: (path: string) => string | null = () => null;
  const { name, hooks } = sitemap({
    filter: (address) => !/\/embed\//.test(pathOf(address)) && !isOlder(pathOf(address)),
    serialize: (item) => {
      const day = changed(pathOf(item.url));
      return day === null ? item : { ...item, lastmod: day };
    },
    namespaces: { news: false, xhtml: false, image: false, video: false },
  });
  /** A path from the site's own root, such as `/reports/<slug>/`. */
  function pathOf(address: string): string {
    return `/${decodeURI(new URL(address).pathname).slice(root.length)}`;
  }
  return {
    name,
    hooks: {
      ...hooks,
      'astro:config:done': async (options) => {
        site = options.config.site;
        const base = decodeURI(options.config.base);
        root = base.endsWith('/') ? base : `${base}/`;
        await hooks['astro:config:done']?.(options);
      },
      'astro:build:done': async (options) => {
        if (site === undefined) return;
        const shown = shownReports(content(), { drafts: false });
        const kinds = reportKinds(shown).flatMap((kind) => listPages(kind.reports, kind));
        changed = lastChanges(shown, [...listPages(shown), ...kinds]);
        const aliases = new Set(shown.flatMap(({ source }) => source.front.aliases));
        isOlder = (path) => aliases.has(/^\/reports\/([^/]+)\//.exec(path)?.[1] ?? '');
        await hooks['astro:build:done']?.(options);
      },
    },
  };
}
