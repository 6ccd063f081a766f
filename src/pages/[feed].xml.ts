import rss from '@astrojs/rss';
import type { APIRoute, GetStaticPaths } from 'astro';
import { absoluteAddress, type Absolute } from '../kit/absoluteAddress.ts';
import { feeds, feedXml, type Feed } from '../kit/feedXml.ts';
import { siteContent } from 'virtual:straightface/site';
import { shownReports } from '../site/siteContent.ts';
import { version } from '../site/version.ts';

interface Props {
  readonly feed: Feed;
  readonly absolute: Absolute;
}

/** Feeds have no addresses of their own to give without that of the site: then there are none. */
export const getStaticPaths = (() => {
  const absolute = absoluteAddress(siteContent({ fresh: import.meta.env.DEV }).shop);
  if (absolute === null) return [];
  return feeds.map((feed) => ({ params: { feed }, props: { feed, absolute } }));
}) satisfies GetStaticPaths;

export const GET: APIRoute<Props> = ({ props: { feed, absolute } }) => {
  const site = siteContent({ fresh: false });
  const reports = shownReports(site, { drafts: false });
  const locale = site.shop?.defaults.locale;
  return rss(feedXml(feed, reports, { publisher: site.publisher, locale, absolute, version }));
};
