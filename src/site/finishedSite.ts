import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { oneFile, type SiteFiles } from '../kit/oneFile.ts';
import { sitemap } from '../kit/sitemap.ts';

/** What can only be made of whole pages: each report in one file, and the sitemap where the site has an address. */
export function finishedSite(): AstroIntegration {
  let origin: string | null = null;
  let base = '/';
  return {
    name: 'finished-site',
    hooks: {
      'astro:config:done': ({ config }) => {
        origin = config.site === undefined ? null : new URL(config.site).origin;
        base = config.base.endsWith('/') ? config.base : `${config.base}/`;
      },
      'astro:build:done': ({ dir }) => {
        const folder = fileURLToPath(dir);
        writeOneFileEditions(folder, base, origin);
        if (origin === null) return;
        const root = `${origin}${encodeURI(base)}`;
        const addresses = pagesForSearch(folder).map((path) => `${root}${encodeURI(path)}`);
        for (const { name, xml } of sitemap(addresses, (file) => `${root}${file}`))
          writeFileSync(join(folder, name), xml);
      },
    },
  };
}

/**
 * Paths of the pages that searches should find; frames and error pages are found through others. Read from the disk: the
 * list that a build hands over may lack pages that it took from its cache.
 */
function pagesForSearch(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name === 'index.html')
    .map(({ parentPath }) => relative(folder, parentPath).split(sep).join('/'))
    .filter((path) => !/^404$|(^|\/)embed\//.test(path))
    .map((path) => (path === '' ? '' : `${path}/`));
}

function writeOneFileEditions(folder: string, base: string, origin: string | null): void {
  const reports = join(folder, 'reports');
  if (!existsSync(reports)) return;
  const known = new Map<string, Uint8Array | null>();
  const bytes: SiteFiles['bytes'] = (address) => {
    const found = known.get(address);
    if (found !== undefined) return found;
    const path = decodeURI(address);
    const file = join(folder, path.startsWith(base) ? path.slice(base.length) : path);
    const read = existsSync(file) ? readFileSync(file) : null;
    known.set(address, read);
    return read;
  };
  const files: SiteFiles = {
    bytes,
    text: (address) => {
      const found = bytes(address);
      return found === null ? null : new TextDecoder().decode(found);
    },
  };
  for (const slug of readdirSync(reports).sort()) {
    const page = join(reports, slug, 'index.html');
    // A withdrawn report has no kit, and none of its pages is to live on in a file.
    if (!existsSync(page) || !existsSync(join(reports, slug, 'kit'))) continue;
    writeFileSync(join(reports, slug, 'report.html'), oneFile(readFileSync(page, 'utf8'), files, origin));
  }
}
