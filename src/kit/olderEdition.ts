import { escapeXml } from '../prose/escapeXml.ts';
import { applyEdits } from './htmlEdits.ts';
import { attribute, readPage } from './htmlElements.ts';

/**
 * A kept edition of a report as it is published: as it was, with a notice above everything else that it was corrected
 * since, and a link to the report as it stands.
 *
 * @param address of the report, from the site's root
 * @throws Error where the page has no main part, as every edition has
 */
export function olderEdition(
  html: string,
  { words, link, address }: { readonly words: string; readonly link: string; readonly address: string },
): string {
  const main = readPage(html, new Set(['main'])).elements.find(
    (element) => element.tagName === 'main' && attribute(element, 'id') === 'main',
  );
  if (main === undefined) throw new Error('The edition has no main part.');
  const { end } = main.startTag;
  const notice = `<p class="notice"><strong>${escapeXml(words)}</strong> <a href="${escapeXml(address)}">${escapeXml(link)}</a></p>`;
  return applyEdits(html, [{ start: end, end, words: notice }]);
}
