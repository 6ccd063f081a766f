import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { joinedPages } from '../kit/joinedPages.ts';
import { oneFile, type SiteFiles } from '../kit/oneFile.ts';
import { cachedEdition } from './cachedEdition.ts';
import { codeHash } from './codeHash.ts';
import { cacheFolder } from './folders.ts';

/** What can only be made of whole pages: each report in one file. */
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
      'astro:build:done': ({ dir }) =>
        writeOneFileEditions({ folder: fileURLToPath(dir), base, origin, code }),
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

function writeOneFileEditions({ folder, base, origin, code }: Site): void {
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
    // A withdrawn report gives nothing away, and none of its pages is to live on in a file; nor has an older address any.
    if (!existsSync(page) || !existsSync(join(reports, slug, 'findings.json'))) continue;
    const own: SiteFiles = { ...files, bytes: (address) => bytes(fromPage(address, slug)) };
    const address = `${base}reports/${slug}/`;
    const html = joinedPages(
      { html: readFileSync(page, 'utf8'), address },
      {
        html: readFileSync(join(reports, slug, 'details/index.html'), 'utf8'),
        address: `${address}details/`,
      },
    );
    const make = (): string => oneFile(html, own, origin);
    const edition =
      code === null
        ? make()
        : cachedEdition(`${origin ?? ''}\n${html}`, code, join(cacheFolder(), 'editions'), make);
    writeFileSync(join(reports, slug, 'report.html'), edition);
  }
}

/** Pictures are named from the report's own page. */
function fromPage(address: string, slug: string): string {
  return address.startsWith('/') ? address : `reports/${slug}/${address}`;
}
