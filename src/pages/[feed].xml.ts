import rss from '@astrojs/rss';
import type { APIRoute, GetStaticPaths } from 'astro';
import { absoluteAddress, type Absolute } from '../kit/absoluteAddress.ts';
import { correctionItems, reportItems } from '../kit/feed.ts';
import { siteContent } from 'virtual:straightface/site';
import { escapeXml } from '../prose/escapeXml.ts';
import { shownReports } from '../site/siteContent.ts';

interface Props {
  readonly absolute: Absolute;
}

/** Feeds have no addresses of their own to give without that of the site: then there are none. */
export const getStaticPaths = (() => {
  const absolute = absoluteAddress(siteContent({ fresh: import.meta.env.DEV }).shop);
  if (absolute === null) return [];
  return ['feed', 'corrections'].map((feed) => ({ params: { feed }, props: { absolute } }));
}) satisfies GetStaticPaths;

export const GET: APIRoute<{ readonly absolute: Absolute }> = ({
  params: { feed },
  props: { absolute },
}: {
  params: { feed?: string };
  props: Props;
}) => {
  const site = siteContent({ fresh: false });
  const reports = shownReports(site, { drafts: false });
  const corrections = feed === 'corrections';
  const items = corrections ? correctionItems(reports, absolute) : reportItems(reports, absolute);
  const publisher = escapeXml(site.publisher);
  return rss({
    title: corrections ? `Corrections, ${publisher}` : publisher,
    description: corrections
      ? 'What was corrected, withdrawn or replaced, with what it said and what it says now.'
      : 'Equipment compared, shot by shot, with what the shots can tell and what they cannot.',
    site: absolute('/'),
    trailingSlash: false,
    items: items.map(({ title, link, date, description }) => ({
      title,
      link,
      description,
      pubDate: new Date(`${date}T00:00:00Z`),
    })),
  });
};
