import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import type { SiteContent } from './siteContent.ts';
import { isListed } from './isListed.ts';
import { writeSiteMap } from './writeSiteMap.ts';

/**
 * For the framework's own build: the sitemap, where the site has an address.
 *
 * @param content what the site is built of, asked for when it is built
 */
export function siteMap(content: () => SiteContent): AstroIntegration {
  let site: string | undefined;
  let base = '/';
  return {
    name: 'site-map',
    hooks: {
      'astro:config:done': ({ config }) => {
        site = config.site;
        base = config.base.endsWith('/') ? config.base : `${config.base}/`;
      },
      'astro:build:done': async ({ dir, pages }) => {
        if (site === undefined) return;
        const folder = fileURLToPath(dir);
        const page = (path: string): string => readFileSync(join(folder, path, 'index.html'), 'utf8');
        const paths = pages
          .map(({ pathname }) => `/${pathname}`)
          .filter((path) => path !== '/404/' && isListed(page(path)));
        await writeSiteMap(paths, content(), { folder, site, base });
      },
    },
  };
}
