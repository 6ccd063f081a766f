import type { SiteContent } from '../site/siteContent.ts';

/** Where a site stands on the web, as the framework takes it; nothing where its shop does not say. */
export interface SiteAddress {
  readonly site?: string;
  readonly base?: string;
}

export const addressOf = (shop: SiteContent['shop']): SiteAddress =>
  // The framework writes letters beyond ASCII as addresses do, and a sign of theirs once more.
  shop?.address == null ? {} : { site: shop.address.site, base: decodeURI(shop.address.base) };
