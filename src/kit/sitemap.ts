import { escapeXml } from '../prose/escapeXml.ts';

const namespace = 'http://www.sitemaps.org/schemas/sitemap/0.9';

/** Most addresses in one file (sitemaps.org protocol 0.9 allows 50,000). */
export const mostInSitemap = 10_000;

export interface SitemapFile {
  readonly name: string;
  readonly xml: string;
}

/** The sitemap of some absolute addresses: an index and as many files as they need. */
export function sitemap(
  addresses: readonly string[],
  absoluteFile: (name: string) => string,
): readonly SitemapFile[] {
  const sorted = addresses.toSorted();
  const parts = Array.from({ length: Math.max(1, Math.ceil(sorted.length / mostInSitemap)) }, (_, part) => ({
    name: `sitemap-${part}.xml`,
    xml: document('urlset', 'url', sorted.slice(part * mostInSitemap, (part + 1) * mostInSitemap)),
  }));
  return [
    {
      name: 'sitemap-index.xml',
      xml: document(
        'sitemapindex',
        'sitemap',
        parts.map(({ name }) => absoluteFile(name)),
      ),
    },
    ...parts,
  ];
}

function document(root: string, entry: string, addresses: readonly string[]): string {
  const entries = addresses
    .map((address) => `<${entry}><loc>${escapeXml(address)}</loc></${entry}>`)
    .join('\n');
  return `<?xml version="1.0" encoding="UTF-8"?>\n<${root} xmlns="${namespace}">\n${entries}\n</${root}>\n`;
}
