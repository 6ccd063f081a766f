import { escapeXml } from '../prose/escapeXml.ts';
import {
  applyEdits,
  attribute,
  isElement,
  nodesOf,
  placeOf,
  placeOfAttribute,
  placeOfTags,
  type Edit,
} from './htmlEdits.ts';

/** A built page and the address that other pages of the site link to it by. */
export interface BuiltPage {
  readonly html: string;
  readonly address: string;
}

/**
 * A report's page with its details at the end, for a file that holds both: what leads from one to the other leads to
 * the place within. What is not changed stays as it is, letter by letter.
 *
 * @throws Error where the details have no element `data-details`, or the report has no `main`
 */
export function joinedPages(report: BuiltPage, details: BuiltPage): string {
  const inner = nodesOf(details.html)
    .filter(isElement)
    .find((element) => attribute(element, 'data-details') !== null);
  if (inner === undefined) throw new Error('The details have no element to take over.');
  const { start, end } = placeOf(inner);
  const taken = details.html.slice(start, end);
  const section = `<section id="details" aria-labelledby="details-heading"><h2 id="details-heading">The details</h2>${taken}</section>`;
  const main = nodesOf(report.html)
    .filter(isElement)
    .find(({ tagName }) => tagName === 'main');
  if (main === undefined) throw new Error('The report has no main part to add to.');
  const { start: at } = placeOfTags(main).endTag;
  const both = applyEdits(report.html, [{ start: at, end: at, words: section }]);
  return applyEdits(both, linksWithin(both, report.address, details.address));
}

function linksWithin(page: string, report: string, details: string): readonly Edit[] {
  const within = (path: string): string | null => {
    if (path === report) return '#main';
    if (path === details) return '#details';
    // A narrative names the details as they lie beside its page.
    const [fragment] = [report, details, 'details/'].flatMap((address) =>
      path.startsWith(`${address}#`) ? [path.slice(address.length)] : [],
    );
    return fragment ?? null;
  };
  return nodesOf(page)
    .filter(isElement)
    .flatMap((element) => {
      const path = element.tagName === 'a' ? attribute(element, 'href') : null;
      const target = path === null ? null : within(path);
      return target === null
        ? []
        : [{ ...placeOfAttribute(element, 'href'), words: `href="${escapeXml(target)}"` }];
    });
}
