import type { Shop } from '../intake/authored/shop.ts';
import { feedWords } from '../prose/english/kit/feedWords.ts';
import { inventedInList } from '../prose/english/kit/standing.ts';
import { absoluteAddress } from './absoluteAddress.ts';
import { languageOf } from './language.ts';
import { graphOf, publisherNode, type Node } from './linkedData.ts';
import type { Report } from './report.ts';

/** What the front page is, for machines: a site, who publishes it, and the reports it lists. */
interface FrontPage {
  readonly publisher: string;
  readonly shop: Shop | null;
  readonly heading: string;
  readonly description: string;
  /** Those that the page itself lists, as it lists them. */
  readonly reports: readonly Report[];
}

/** The linked data of the front page (schema.org: WebSite, Organization, CollectionPage); null without an address of the site. */
export function frontPageData({ publisher, shop, heading, description, reports }: FrontPage): Node | null {
  const absolute = absoluteAddress(shop);
  if (absolute === null) return null;
  const home = absolute('/');
  const organization = publisherNode(publisher, shop);
  const site = `${home}#site`;
  const invented = inventedInList(reports.map(({ source }) => source.front));
  return graphOf([
    {
      '@type': 'WebSite',
      '@id': site,
      url: home,
      name: publisher,
      inLanguage: languageOf(shop?.defaults.locale),
      publisher: organization,
    },
    organization,
    {
      '@type': 'CollectionPage',
      '@id': `${home}#page`,
      url: home,
      name: heading,
      description,
      ...(invented === null ? {} : { abstract: invented }),
      isPartOf: { '@id': site },
      mainEntity: {
        '@type': 'ItemList',
        numberOfItems: reports.length,
        itemListElement: reports.map(({ source: { front, slug } }, index) => ({
          '@type': 'ListItem',
          position: index + 1,
          name: titleOf(front),
          url: absolute(`/reports/${slug}/`),
        })),
      },
    },
  ]);
}

/** The title with what became of the report. */
function titleOf({ status, title }: Report['source']['front']): string {
  if (status === 'withdrawn') return feedWords.gone(title);
  return status === 'superseded' ? feedWords.replaced(title) : title;
}
