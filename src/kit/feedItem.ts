import { escapeXml } from '../prose/escapeXml.ts';

/**
 * An entry of a feed; `date` is a day. Title and description are HTML of nothing but text, as RSS 2.0 has it: what a
 * shop wrote can become no markup, whether a reader takes them for HTML or for plain text.
 */
export interface FeedItem {
  readonly title: string;
  readonly link: string;
  /** By what readers know the entry again; where it is not the link, it is no address to open. */
  readonly guid: string;
  readonly date: string;
  readonly description: string;
  /** The same with paragraphs and a picture, as HTML; null where the description is all. */
  readonly content: string | null;
  readonly picture: FeedPicture | null;
  readonly categories: readonly string[];
}

export interface FeedPicture {
  readonly address: string;
  readonly width: number;
  readonly height: number;
  /** For readers who cannot see it; plain text. */
  readonly alt: string;
}

/** Items with titles and descriptions of plain text as those of a feed, the newest first. */
export function feedOf(items: readonly FeedItem[]): readonly FeedItem[] {
  return items
    .map((item) => ({
      ...item,
      title: escapeXml(item.title),
      description: escapeXml(item.description),
    }))
    .toSorted((x, y) => (x.date === y.date ? (x.guid < y.guid ? -1 : 1) : x.date < y.date ? 1 : -1));
}
