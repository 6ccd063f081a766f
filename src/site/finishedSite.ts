import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { joinedPages } from '../kit/joinedPages.ts';
import { oneFile, type SiteFiles } from '../kit/oneFile.ts';
import { cachedEdition } from './cachedEdition.ts';
import { codeHash } from './codeHash.ts';
import { withFileSizes } from './fileSizes.ts';
import { cacheFolder } from './folders.ts';
import { writeKitArchive } from './kitArchives.ts';

/** What can only be made of whole pages and files: each report in one file, all that its editor's page offers in another. */
export function finishedSite(): AstroIntegration {
  let origin: string | null = null;
  let base = '/';
  let code: string | null = null;
  return {
    name: 'finished-site',
    hooks: {
      'astro:config:done': ({ config }) => {
        origin = config.site === undefined ? null : new URL(config.site).origin;
        code = codeHash(fileURLToPath(config.root));
        base = config.base.endsWith('/') ? config.base : `${config.base}/`;
      },
      'astro:build:done': ({ dir }) => writeEditions({ folder: fileURLToPath(dir), base, origin, code }),
    },
  };
}

interface Site {
  readonly folder: string;
  readonly base: string;
  readonly origin: string | null;
  /** Hash of the code; null where it cannot be told, and nothing is kept. */
  readonly code: string | null;
}

function writeEditions(site: Site): void {
  const reports = join(site.folder, 'reports');
  if (!existsSync(reports)) return;
  const files = siteFiles(site);
  const cache = join(cacheFolder(), 'editions');
  for (const slug of readdirSync(reports).sort()) {
    const folder = join(reports, slug);
    // A withdrawn report gives nothing away, and none of its pages is to live on in a file; nor has an older address any.
    if (!existsSync(join(folder, 'index.html')) || !existsSync(join(folder, 'findings.json'))) continue;
    writeOneFileEdition(slug, site, files, cache);
    writeKitArchive(folder, slug, site.code, cache);
    const kit = join(folder, 'kit/index.html');
    writeFileSync(kit, withFileSizes(readFileSync(kit, 'utf8'), folder));
  }
}

/** Files of the site by the address that its pages name; each is read once. */
function siteFiles({ folder, base }: Site): SiteFiles {
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

function writeOneFileEdition(
  slug: string,
  { folder, base, origin, code }: Site,
  files: SiteFiles,
  cache: string,
): void {
  const page = (path: string): string => readFileSync(join(folder, 'reports', slug, path), 'utf8');
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
