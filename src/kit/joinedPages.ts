import { attribute, readPage, type ReadPage } from './htmlElements.ts';
import { concernedInOneFile } from './oneFile.ts';
import { withPart } from './withPart.ts';

/** A built page and the address that other pages of the site link to it by. */
interface BuiltPage {
  readonly html: string;
  readonly address: string;
}

interface JoinedPages {
  readonly page: ReadPage;
  /** Where a link of either leads within the page that holds both; null where it leads elsewhere. */
  readonly within: (path: string) => string | null;
}

/** The elements that are read of both pages. */
export const concerned: ReadonlySet<string> = new Set([...concernedInOneFile, 'main']);

/**
 * A report's page with its details at the end, for a file that holds both.
 *
 * @throws Error where the details have no element `data-details`, or the report has no `main`
 */
export function joinedPages(report: BuiltPage, details: BuiltPage): JoinedPages {
  const inner = readPage(details.html, concerned);
  const taken = inner.elements.find((element) => attribute(element, 'data-details') !== null);
  if (taken === undefined) throw new Error('The details have no element to take over.');
  const whole = readPage(report.html, concerned);
  const main = whole.elements.find(({ tagName }) => tagName === 'main');
  if (main === undefined) throw new Error('The report has no main part to add to.');
  const before =
    '<section id="details" aria-labelledby="details-heading"><h2 id="details-heading">The details</h2>';
  const page = withPart(whole, main, { of: inner, element: taken, before, after: '</section>' });
  return { page, within: (path) => within(path, report.address, details.address) };
}

function within(path: string, report: string, details: string): string | null {
  if (path === report) return '#main';
  if (path === details) return '#details';
  // A narrative names the details as they lie beside its page.
  const [fragment] = [report, details, 'details/'].flatMap((address) =>
    path.startsWith(`${address}#`) ? [path.slice(address.length)] : [],
  );
  return fragment ?? null;
}
