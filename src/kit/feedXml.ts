import type { RSSOptions } from '@astrojs/rss';
import { feedWords } from '../prose/english/kit/feedWords.ts';
import { escapeXml } from '../prose/escapeXml.ts';
import type { Absolute } from './absoluteAddress.ts';
import { correctionItems } from './correctionFeed.ts';
import { reportItems } from './feed.ts';
import type { FeedItem } from './feedItem.ts';
import { languageOf } from './language.ts';
import { lastChanges } from './lastChanges.ts';
import type { Report } from './report.ts';

/** The feeds of a site, by the names of their files. */
export const feeds = ['feed', 'corrections'] as const;
export type Feed = (typeof feeds)[number];

interface FeedSite {
  readonly publisher: string;
  /** Of the shop; "en-GB" where it says none. */
  readonly locale: string | undefined;
  readonly absolute: Absolute;
  /** Of Straightface. */
  readonly version: string;
}

/** Namespaces of what RSS 2.0 has no element for: the feed's own address, and pictures without their size in bytes. */
const namespaces = { atom: 'http://www.w3.org/2005/Atom', media: 'http://search.yahoo.com/mrss/' };

/** A feed of the reports that are shown, as RSS 2.0 is made of it. */
export function feedXml(
  feed: Feed,
  reports: readonly Report[],
  { publisher, locale, absolute, version }: FeedSite,
): RSSOptions {
  const items = feed === 'feed' ? reportItems(reports, absolute) : correctionItems(reports, absolute);
  const changed = feed === 'feed' ? lastChanges(reports)('/') : (items[0]?.date ?? null);
  const name = escapeXml(publisher);
  return {
    title: feed === 'feed' ? name : feedWords.correctionsTitle(name),
    description: feed === 'feed' ? feedWords.about : feedWords.correctionsAbout,
    site: absolute('/'),
    trailingSlash: true,
    xmlns: { ...namespaces },
    customData: [
      `<atom:link href="${escapeXml(absolute(`/${feed}.xml`))}" rel="self" type="application/rss+xml"/>`,
      `<language>${languageOf(locale).toLowerCase()}</language>`,
      ...(changed === null ? [] : [`<lastBuildDate>${noonOf(changed).toUTCString()}</lastBuildDate>`]),
      `<generator>Straightface ${escapeXml(version)}</generator>`,
    ].join(''),
    items: items.map((item) => ({
      title: item.title,
      link: item.link,
      description: item.description,
      pubDate: noonOf(item.date),
      customData: furtherElements(item),
      ...(item.categories.length === 0 ? {} : { categories: [...item.categories] }),
      ...(item.content === null ? {} : { content: item.content }),
    })),
  };
}

/** What the library has no option for, as XML; empty where there is none. */
function furtherElements({ guid, link, picture }: FeedItem): string {
  const own = guid === link ? '' : `<guid isPermaLink="false">${escapeXml(guid)}</guid>`;
  if (picture === null) return own;
  const { address, width, height, alt } = picture;
  return (
    `${own}<media:content url="${escapeXml(address)}" medium="image" type="image/png" width="${width}" height="${height}">` +
    `<media:description type="plain">${escapeXml(alt)}</media:description></media:content>`
  );
}

/** A day as the moment of its noon in UTC, which falls on that day nearly everywhere. */
function noonOf(day: string): Date {
  return new Date(`${day}T12:00:00Z`);
}
