import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';

/** Addresses in what other machines read: feeds, sitemap, data packages. */
/** Markup within a feed is written in letters. */
const inText = /https?:\/\/(?:(?!&(?:quot|lt|gt);)[^\s"'<>\\])+/g;
const inPages = /\s(?:href|src|content)="([^"]+)"/g;

/**
 * Links of a built site that lead nowhere: every address in its pages, feeds and sitemap that stands on its own host,
 * as a browser reads it. Folders answer with their index.html.
 *
 * @param address where the site stands, with a slash at its end
 */
export function brokenLinks(folder: string, address: string): readonly string[] {
  const site = new URL(address);
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)));
  const broken = new Set<string>();
  let followed = 0;
  for (const file of files.filter((name) => /\.(?:html|xml|txt|json)$/.test(name))) {
    const text = readFileSync(join(folder, file), 'utf8');
    const here = new URL(encodeURI(file.replace(/index\.html$/, '')), site);
    const links = file.endsWith('.html')
      ? [...text.matchAll(inPages)]
          .map(([, link = '']) => link.replaceAll('&amp;', '&').replaceAll('&#39;', "'"))
          .filter((link) => /^(?:\/|\.|https?:|#)/.test(link))
      : [...text.matchAll(inText)].map(([link]) =>
          link
            .replaceAll('&amp;amp;', '&amp;')
            .replaceAll('&amp;', '&')
            .replace(/[.,)]+$/, ''),
        );
    for (const link of links) {
      const target = new URL(link, here);
      if (target.origin !== site.origin) {
        if (link.startsWith('/')) broken.add(`${file}: ${link}`);
        continue;
      }
      followed += 1;
      // Hosts add the last slash.
      const inSite = `${target.pathname}/`.startsWith(site.pathname);
      const path = join(folder, decodeURIComponent(target.pathname.slice(site.pathname.length)));
      const answers = existsSync(path) && (statSync(path).isFile() || existsSync(join(path, 'index.html')));
      if (!inSite || !answers) broken.add(`${file}: ${link}`);
    }
  }
  if (followed === 0) throw new Error(`no link of ${folder} stands on ${site.origin}`);
  return [...broken];
}
