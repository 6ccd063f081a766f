import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { joinedPages } from '../kit/joinedPages.ts';
import { oneFile, type SiteFiles } from '../kit/oneFile.ts';
import { withFileSizes } from './fileSizes.ts';
import { writeKitArchive } from './kitArchives.ts';

/** A site whose pages are written. */
interface WrittenSite {
  readonly folder: string;
  /** Path on its host, with a slash at both ends. */
  readonly base: string;
  /** Null where the shop does not say. */
  readonly origin: string | null;
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
  writeOneFileEdition(slug, site);
  writeKitArchive(folder, slug);
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

function writeOneFileEdition(slug: string, site: WrittenSite): void {
  const { folder, base, origin } = site;
  const page = (path: string): string => readFileSync(join(folder, 'reports', slug, path), 'utf8');
  const files = siteFiles(site);
  const own: SiteFiles = { ...files, bytes: (address) => files.bytes(fromPage(address, slug)) };
  const address = `${base}reports/${slug}/`;
  const joined = joinedPages(
    { html: page('index.html'), address },
    { html: page('details/index.html'), address: `${address}details/` },
  );
  writeFileSync(
    join(folder, 'reports', slug, 'report.html'),
    oneFile(joined.page, own, origin, joined.within),
  );
}

/** Pictures are named from the report's own page. */
function fromPage(address: string, slug: string): string {
  return address.startsWith('/') ? address : `reports/${slug}/${address}`;
}
