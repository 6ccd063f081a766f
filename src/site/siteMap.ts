import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sitemap from '@astrojs/sitemap';
import type { AstroIntegration } from 'astro';
import { lastChanges } from '../kit/lastChanges.ts';
import { reportKinds } from './reportKinds.ts';
import { listPages } from './reportLists.ts';
import { shownReports, type SiteContent } from './siteContent.ts';

/**
 * The sitemap, where the site has an address: every page that searches should find, with the day on which its reports
 * last changed. A page that says so of itself is not in it: frames are found through their reports, and older addresses
 * lead to those of now.
 *
 * @param content what the site is built of, asked for when it is built
 */
export function siteMap(content: () => SiteContent): AstroIntegration {
  let site: string | undefined;
  let root = '/';
  let folder: URL | undefined;
  let changed: (path: string) => string | null = () => null;
  const { name, hooks } = sitemap({
    filter: (address) => folder === undefined || !isUnlisted(folder, pathOf(address)),
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
        folder = options.dir;
        await hooks['astro:build:done']?.(options);
      },
    },
  };
}

/** Whether a built page asks searches to pass it over. */
function isUnlisted(folder: URL, path: string): boolean {
  const page = readFileSync(join(fileURLToPath(folder), path, 'index.html'), 'utf8');
  return /<meta name="robots" content="[^"]*\bnoindex\b/.test(page.slice(0, page.indexOf('</head>')));
}
