import type { Shop } from '../intake/authored/shop.ts';
import { absoluteAddress } from './absoluteAddress.ts';

/** A node of linked data in the words of schema.org. */
export type Node = { readonly [property: string]: Value };
type Value = string | number | boolean | Node | readonly (string | Node)[];

/** JSON that may stand inside a script element. */
export function scriptJson(node: Node): string {
  return JSON.stringify(node).replaceAll('<', '\\u003c');
}

/** Nodes that know each other, as the linked data of one page. */
export function graphOf(nodes: readonly Node[]): Node {
  return { '@context': 'https://schema.org', '@graph': nodes };
}

/** Who publishes, the same on every page: what one report says of money is no property of its publisher. */
export function publisherNode(publisher: string, shop: Shop | null): Node {
  const absolute = absoluteAddress(shop);
  return {
    '@type': 'Organization',
    name: publisher,
    ...(absolute === null
      ? {}
      : {
          '@id': absolute('/#publisher'),
          url: absolute('/'),
          correctionsPolicy: absolute('/about/#corrections'),
        }),
  };
}

/** The way to a page, from the top down; the page itself is the last step. */
export function breadcrumbs(steps: readonly { readonly name: string; readonly address: string }[]): Node {
  return {
    '@context': 'https://schema.org',
    '@type': 'BreadcrumbList',
    itemListElement: steps.map(({ name, address }, index) => ({
      '@type': 'ListItem',
      position: index + 1,
      name,
      item: address,
    })),
  };
}
