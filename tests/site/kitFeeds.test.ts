import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { manyReports } from '../kit/manyReports.ts';
import { oddBase } from '../kit/oddReports.ts';
import { launch } from './browser.ts';
import { builtUnder } from './kitFolder.ts';
import { editionFiles, htmlFiles } from './pages.ts';

let browser: Browser;
let page: Page;
let root = '';
let site = '';

beforeAll(async () => {
  browser = await launch();
  page = await browser.newPage();
  root = await builtUnder(manyReports(), 'tests', 'many');
  site = join(root, 'tests');
});

afterAll(() => browser.close());

interface Element {
  readonly name: string;
  readonly text: string;
  readonly namespace: string | null;
  readonly children: readonly Element[];
}

/** The XML as Chromium's own parser reads it; throws where it is not well formed. */
async function parsed(file: string): Promise<Element> {
  const text = readFileSync(join(site, file), 'utf8');
  const read = await page.evaluate((xml) => {
    interface Read {
      name: string;
      text: string;
      namespace: string | null;
      children: Read[];
    }
    const walk = (element: globalThis.Element): Read => ({
      name: element.localName,
      text: element.textContent ?? '',
      namespace: element.namespaceURI,
      children: [...element.children].map(walk),
    });
    const document = new DOMParser().parseFromString(xml, 'application/xml');
    return document.querySelector('parsererror') === null ? walk(document.documentElement) : null;
  }, text);
  if (read === null) throw new Error(`${file} is not well formed`);
  return read;
}

const child = (element: Element, name: string): string =>
  element.children.find((one) => one.name === name)?.text ?? '';

/** Required elements of RSS 2.0 (rssboard.org specification): channel with title, link, description; items with a title or description. */
describe.each(['feed.xml', 'corrections.xml'])('%s', (file) => {
  test('is RSS 2.0 with dates of RFC 822 and addresses of the published site', async () => {
    const rss = await parsed(file);
    expect(rss.name).toBe('rss');
    const [channel] = rss.children;
    if (channel === undefined) throw new Error('no channel');
    for (const name of ['title', 'link', 'description']) expect(child(channel, name)).not.toBe('');
    const items = channel.children.filter(({ name }) => name === 'item');
    expect(items.length).toBeGreaterThan(1);
    expect(new Set(items.map((item) => child(item, 'guid'))).size).toBe(items.length);
    const dates = items.map((item) => child(item, 'pubDate'));
    for (const date of dates)
      expect(date).toMatch(
        /^(Mon|Tue|Wed|Thu|Fri|Sat|Sun), \d\d (Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec) \d{4} 12:00:00 GMT$/,
      );
    const times = dates.map((date) => Date.parse(date));
    expect(times).toEqual(times.toSorted((x, y) => y - x));
    for (const item of items) {
      const link = child(item, 'link');
      expect(link).toMatch(/^https:\/\/golf\.example\/tests\/reports\//);
      expect(existsSync(join(root, new URL(link).pathname, 'index.html'))).toBe(true);
    }
  });
});

test('the feed says the answer, then the stamp and the whole interest, and of a withdrawn report when and why', async () => {
  const [channel] = (await parsed('feed.xml')).children;
  const items = channel?.children.filter(({ name }) => name === 'item') ?? [];
  expect(items).toHaveLength(7);
  const withdrawn = items.find((item) => child(item, 'title').includes('gone'));
  expect(withdrawn === undefined ? '' : child(withdrawn, 'description')).toBe(
    'This report was withdrawn on 25 June 2026. The monitor was out of order.',
  );
  for (const item of items.filter((one) => one !== withdrawn)) {
    const words = child(item, 'description');
    expect(words).toMatch(
      /^In a test of heads by one golfer, .* Invented data\. Our interest: We sell both new and took them from stock\. .* hit \d+ \w+ 2026\.( Corrected 1 April 2026\.)?$/s,
    );
    expect(words.includes('Corrected')).toBe(child(item, 'title').includes('third'));
  }
});

test('the feed of corrections has what it said and what it says now', async () => {
  const [channel] = (await parsed('corrections.xml')).children;
  const items = channel?.children.filter(({ name }) => name === 'item') ?? [];
  expect(items.map((item) => child(item, 'title'))).toEqual([
    'Withdrawn: Two heads: gone',
    'Corrected: Two heads: third',
  ]);
  expect(items.map((item) => child(item, 'description'))[1]).toBe(
    // HTML of nothing but text.
    'A typing error &amp; its &lt;cure&gt;. It said: 7 yd. It now says: 6 yd. Invented data.',
  );
});

test.each([
  ['many reports of one pair', () => root, 'tests'],
  ['reports that try the kit', () => inject('oddRoot'), oddBase],
] as const)(
  'every absolute address in pages and mails leads to a file of the site: %s',
  (_name, at, base) => {
    const folder = join(at(), base);
    const files = [...htmlFiles(folder), ...editionFiles(folder)];
    // Code to paste stands in a page as text, with its quotation marks written out.
    const addresses = files.flatMap((file) =>
      [...readFileSync(join(folder, file), 'utf8').matchAll(/https:\/\/golf\.example(\/[^"&\s<,#]*)/g)].map(
        ([, path = '']) => path,
      ),
    );
    expect(addresses.length).toBeGreaterThan(50);
    const missing = addresses.filter((path) => {
      const place = join(at(), path.replace(/[.]$/, ''));
      return !existsSync(path.endsWith('/') ? join(place, 'index.html') : place);
    });
    expect(missing).toEqual([]);
  },
);

test('charts, pages, frames and feeds of a report that was replaced and corrected say so, each by itself', () => {
  const folder = join(inject('oddRoot'), oddBase);
  const report = join(folder, 'reports/range-balls-replaced');
  const read = (file: string): string => readFileSync(file, 'utf8').replaceAll(/\s+/g, ' ');
  const charts = readdirSync(join(report, 'charts')).filter((file) => file.endsWith('.svg'));
  const frames = readdirSync(join(report, 'embed'));
  expect(frames.length).toBeGreaterThan(4);
  // Each frame shows the wide form of its chart; the first chart has one for phones as well.
  expect(charts.toSorted()).toEqual([...frames, 'apart-phone'].map((name) => `${name}.svg`).toSorted());
  for (const chart of charts) {
    const words = read(join(report, 'charts', chart))
      .replaceAll(/<[^>]*>/g, ' ')
      .replaceAll(/\s+/g, ' ');
    for (const part of ['Replaced by a newer report.', 'Corrected 20 May 2026.'])
      expect(words, chart).toContain(part);
  }
  for (const frame of frames) {
    const words = read(join(report, 'embed', frame, 'index.html'));
    for (const part of ['Replaced by a newer report', 'Corrected 20 May 2026.'])
      expect(words, frame).toContain(part);
  }
  const kit = read(join(report, 'kit/index.html'));
  expect(kit).toContain('Corrected 20 May 2026; pictures taken before that day are out of date.');
  expect(kit).toMatch(/<strong>Replaced by a newer report:?<\/strong>/);
  const corrections = read(join(folder, 'corrections.xml'));
  expect(corrections).toMatch(/<title>Replaced: Two heads with range balls/);
  expect(corrections).toMatch(/<title>Corrected: Two heads with range balls/);
  expect(corrections.match(/<title>Corrected: Four heads with long names/g)).toHaveLength(2);
  expect(read(join(folder, 'feed.xml'))).toContain('Replaced by a newer report. Corrected 20 May 2026.');
  // Nothing of it stands on reports that stand as they were.
  expect(read(join(folder, 'reports/clear-and-priced/charts/apart.svg'))).not.toMatch(/Replaced|Corrected/);
});

test('a frame speaks of nothing that stands around the chart on its page', () => {
  const folder = join(inject('oddRoot'), oddBase);
  const frames = htmlFiles(folder).filter((file) => file.includes('/embed/'));
  expect(frames.length).toBeGreaterThan(30);
  for (const file of frames)
    expect(readFileSync(join(folder, file), 'utf8'), file).not.toMatch(/listed below|stands? below/);
});

test('a withdrawn report gives nothing away, a corrected chart says so', () => {
  // What stands at the addresses of its frames and pictures, kitPages.test.ts tells.
  expect(
    htmlFiles(site).filter((file) => file.startsWith('reports/gone/') && !file.includes('/embed/')),
  ).toEqual(['reports/gone/index.html', 'reports/gone/kit/index.html']);
  expect(existsSync(join(site, 'reports/gone/report.html'))).toBe(false);
  expect(readFileSync(join(site, 'reports/third/charts/apart.svg'), 'utf8')).toContain(
    'Corrected 1 April 2026.',
  );
  expect(readFileSync(join(site, 'reports/first/charts/apart.svg'), 'utf8')).not.toContain('Corrected');
});

test('without an address there is no mail, feed or sitemap, the rest is there, and no address is made up', async () => {
  const folder = await builtUnder(manyReports('name: Shop & Sons\n'), 'tests', 'without');
  const without = join(folder, 'tests');
  expect(editionFiles(without).filter((file) => file.includes('email'))).toEqual([]);
  for (const file of ['feed.xml', 'corrections.xml', 'sitemap-index.xml'])
    expect(existsSync(join(without, file))).toBe(false);
  expect(readFileSync(join(without, 'robots.txt'), 'utf8')).toBe('User-agent: *\nAllow: /\n');
  const kit = readFileSync(join(without, 'reports/first/kit/index.html'), 'utf8');
  expect(kit).toContain('The address of this site is not recorded');
  for (const file of [...htmlFiles(without), ...editionFiles(without)]) {
    const text = readFileSync(join(without, file), 'utf8')
      .replaceAll('http://www.w3.org/2000/svg', '')
      .replaceAll('https://schema.org', '');
    expect(text, file).not.toMatch(/https?:\/\//);
  }
  expect(existsSync(join(without, 'reports/first/charts/apart.png'))).toBe(true);
});
