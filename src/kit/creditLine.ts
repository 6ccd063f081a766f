import { absoluteAddress } from './absoluteAddress.ts';
import { publisherOf } from './interestInShort.ts';
import type { Report } from './report.ts';

/** Whom to credit, and where the report stands as far as the site has an address. */
export function creditLine(report: Report): string {
  const { shop, slug } = report.source;
  const address = absoluteAddress(shop)?.(`/reports/${slug}/`);
  return [shop?.reuse.credit ?? publisherOf(report), ...(address === undefined ? [] : [address])].join(', ');
}
