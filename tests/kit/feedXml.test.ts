import { readFileSync } from 'node:fs';
import { getRssString } from '@astrojs/rss';
import { parseRssFeed } from 'feedsmith';
import { describe, expect, test } from 'vitest';
import { correctionItems } from '../../src/kit/correctionFeed.ts';
import { feeds, feedXml, type Feed } from '../../src/kit/feedXml.ts';
import { reportItems } from '../../src/kit/feed.ts';
import { lastChanges } from '../../src/kit/lastChanges.ts';
import type { Report } from '../../src/kit/report.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { oddOnes, reports } from './content.ts';
import { manyReports } from './manyReports.ts';
import { wrongInXml } from './xmlLint.ts';

const absolute = (path: string): string => `https://golf.example${path}`;
const site = { publisher: 'Shop & Sons', locale: 'en-US', absolute, version: '9.8.7' };
const many = loadSite(manyReports()).reports;
const rng = readFileSync('tests/kit/rss-2.0.rng', 'utf8');

const made = (feed: Feed, of: readonly Report[], locale = site.locale): Promise<string> =>
  getRssString(feedXml(feed, of, { ...site, locale }));
const wrong = (xml: string): Promise<readonly string[]> => wrongInXml(xml, { schema: rng, kind: 'relaxng' });

describe.each(feeds)('%s.xml', (feed) => {
  test.each([
    ['the demo', reports],
    ['many of one pair', many],
    ['reports that try the kit', oddOnes],
    ['nothing', []],
  ] as const)('is RSS 2.0 as libxml2 reads it: %s', async (_name, of) => {
    expect(await wrong(await made(feed, of))).toEqual([]);
  });

  test('says where it stands, in which language, and when it last changed', async () => {
    const read = parseRssFeed(await made(feed, many));
    expect(read).toMatchObject({
      language: 'en-us',
      link: 'https://golf.example/',
      generator: 'Straightface 9.8.7',
      atom: {
        links: [{ href: `https://golf.example/${feed}.xml`, rel: 'self', type: 'application/rss+xml' }],
      },
      lastBuildDate: 'Thu, 25 Jun 2026 12:00:00 GMT',
    });
    expect(lastChanges(many)('/')).toBe('2026-06-25');
    // Twice the same, whenever it is built.
    expect(await made(feed, many)).toBe(await made(feed, [...many]));
  });

  test('a shop that writes its dates in another language has a feed in plain English', async () => {
    expect(parseRssFeed(await made(feed, many, 'de-DE'))).toMatchObject({ language: 'en' });
  });

  test('a reader knows every entry by a name of its own, and all of it reaches the reader', async () => {
    const of = [...reports, ...oddOnes];
    const items = feed === 'feed' ? reportItems(of, absolute) : correctionItems(of, absolute);
    const read = parseRssFeed(await made(feed, of));
    const entries = read.items ?? [];
    expect(items.length).toBeGreaterThan(1);
    expect(entries).toHaveLength(items.length);
    expect(new Set(items.map(({ guid }) => guid)).size).toBe(items.length);
    items.forEach((item, index) => {
      const entry = entries[index];
      expect(entry?.guid).toEqual({ value: item.guid, isPermaLink: item.guid === item.link });
      expect(entry?.link).toBe(item.link);
      expect(entry?.pubDate?.startsWith(new Date(item.date).toUTCString().slice(0, 16))).toBe(true);
      expect(entry?.content?.encoded ?? null).toBe(item.content);
      expect(entry?.media?.contents?.[0]?.url ?? null).toBe(item.picture?.address ?? null);
    });
  });
});

describe('an entry of a report', () => {
  const [first] = reportItems(reports, absolute);
  if (first === undefined) throw new Error('no entry');

  test('says finding, caution, stamp, interest and who, in this order, each a paragraph', () => {
    expect(first.description).toMatch(
      /^In a test of .*The swing differed too: it may not be the length\. In a test of .* Invented data\. Our interest: We .*\. One golfer, 20 shots with each length, .*2026\.$/,
    );
    expect(first.content?.match(/<p>/g)).toHaveLength(7);
    expect(first.categories).toEqual(['Invented data']);
  });

  test('shows the card, which says in words what it shows', () => {
    expect(first.picture).toMatchObject({
      address: 'https://golf.example/reports/inch-off-the-driver/share.png',
      width: 1200,
      height: 630,
      alt: expect.stringContaining('Invented data.'),
    });
  });

  test('of a withdrawn one it says when and why, and gives nothing away', () => {
    const gone = reportItems(many, absolute).find(({ link }) => link.endsWith('/gone/'));
    expect(gone).toMatchObject({
      title: 'Withdrawn: Two heads: gone',
      date: '2026-06-25',
      description: 'This report was withdrawn on 25 June 2026. The monitor was out of order.',
      content: null,
      picture: null,
    });
  });
});

describe('a correction', () => {
  const two = [
    { date: '2026-04-01', what: 'A number', was: '7 yd', now: '6 yd' },
    { date: '2026-05-01', what: 'A name', was: 'Alder', now: 'Birch' },
  ];
  const guids = (corrections: typeof two): readonly string[] => {
    const report = many.find(({ source: { slug } }) => slug === 'first');
    if (report === undefined) throw new Error('no report');
    const { source } = report;
    const one = { ...report, source: { ...source, front: { ...source.front, corrections } } };
    return correctionItems([one], absolute).map(({ guid }) => guid);
  };

  test('keeps its name wherever it stands in the list, whatever else is listed, and when its new value is reworded', () => {
    const before = guids(two);
    expect(before).toHaveLength(2);
    expect(guids(two.toReversed())).toEqual(before);
    expect(guids([{ date: '2026-03-01', what: 'Older', was: '1', now: '2' }, ...two])).toEqual(
      expect.arrayContaining([...before]),
    );
    expect(guids(two.map((one) => ({ ...one, now: `${one.now}.` })))).toEqual(before);
  });

  test('says that the data are invented, with what it said and what it says now', () => {
    const [one] = correctionItems(many, absolute).filter(({ title }) => title.startsWith('Corrected'));
    expect(one?.description).toBe(
      'A typing error &amp; its &lt;cure&gt;. It said: 7 yd. It now says: 6 yd. Invented data.',
    );
  });
});

test('the checks of a feed refuse a broken one', async () => {
  const good = await made('feed', reports);
  const [entry = ''] = /<item>.*?<\/item>/s.exec(good) ?? [];
  for (const [broken, why] of [
    [good.replace('</channel>', ''), /parser error/],
    [good.replace(/<pubDate>[^<]*/, '<pubDate>2026-05-01'), /pubDate/],
    [good.replace(/<atom:link[^>]*>/, ''), /channel|atom/],
    [good.replace('<language>', '<langauge>').replace('</language>', '</langauge>'), /langauge/],
    [good.replace(entry, entry.replace(/<guid.*<\/guid>/, '')), /item/],
    [good.replace(/ isPermaLink="true"/, ''), /guid/],
  ] as const)
    expect((await wrong(broken)).join('\n')).toMatch(why);
  expect(() => parseRssFeed(good.replaceAll('channel', 'chanel'))).toThrow();
});
