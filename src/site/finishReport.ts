import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { joinedPages } from '../kit/joinedPages.ts';
import { oneFile, type SiteFiles } from '../kit/oneFile.ts';
import { cachedEdition } from './cachedEdition.ts';
import { withFileSizes } from './fileSizes.ts';
import { cacheFolder } from './folders.ts';
import { writeKitArchive } from './kitArchives.ts';

/** A site whose pages are written. */
export interface WrittenSite {
  readonly folder: string;
  /** Path on its host, with a slash at both ends. */
  readonly base: string;
  /** Null where the shop does not say. */
  readonly origin: string | null;
  /** Hash of the code; null where it cannot be told, and nothing is kept. */
  readonly code: string | null;
}

/**
 * Makes what can only be made of whole pages and files: the report in one file, all that its editor's page offers in
 * another, and on that page their sizes.
 *
 * @returns paths of the files that were added, from the site's folder
 */
export function finishReport(slug: string, site: WrittenSite): readonly string[] {
  const own = `reports/${slug}`;
  const folder = join(site.folder, own);
  // A withdrawn report gives nothing away, and none of its pages is to live on in a file; nor has an older address any.
  if (!existsSync(join(folder, 'index.html')) || !existsSync(join(folder, 'findings.json'))) return [];
  const cache = join(cacheFolder(), 'editions');
  writeOneFileEdition(slug, site, cache);
  writeKitArchive(folder, slug, site.code, cache);
  const kit = join(folder, 'kit/index.html');
  writeFileSync(kit, withFileSizes(readFileSync(kit, 'utf8'), folder));
  return [`${own}/report.html`, `${own}/kit.zip`];
}

/** Files of the site by the address that its pages name; each is read once. */
function siteFiles({ folder, base }: WrittenSite): SiteFiles {
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
  return {
    bytes,
    text: (address) => {
      const found = bytes(address);
      return found === null ? null : new TextDecoder().decode(found);
    },
  };
}

function writeOneFileEdition(slug: string, site: WrittenSite, cache: string): void {
  const { folder, base, origin, code } = site;
  const page = (path: string): string => readFileSync(join(folder, 'reports', slug, path), 'utf8');
  const files = siteFiles(site);
  const own: SiteFiles = { ...files, bytes: (address) => files.bytes(fromPage(address, slug)) };
  const address = `${base}reports/${slug}/`;
  const [report, details] = [page('index.html'), page('details/index.html')];
  const make = (): string => {
    const joined = joinedPages({ html: report, address }, { html: details, address: `${address}details/` });
    return oneFile(joined.page, own, origin, joined.within);
  };
  const edition = cachedEdition(
    {
      of: [origin ?? '', address, report, details],
      code,
      ending: 'html',
      make: () => new TextEncoder().encode(make()),
    },
    cache,
  );
  writeFileSync(join(folder, 'reports', slug, 'report.html'), edition);
}

/** Pictures are named from the report's own page. */
function fromPage(address: string, slug: string): string {
  return address.startsWith('/') ? address : `reports/${slug}/${address}`;
}
