import { expect, test } from 'vitest';
import { correctionItems } from '../../src/kit/feed.ts';
import { oneFile, oneFileLimit } from '../../src/kit/oneFile.ts';
import { mostInSitemap, sitemap } from '../../src/kit/sitemap.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';

const absolute = (path: string): string => `https://golf.example${path}`;

test('a report that was replaced is in the feed of corrections from the day of the newer one', () => {
  const { reports } = loadSite(
    contentFolder({
      'shop.yaml': shop,
      'reports/old/report.md': twoHeads((front) =>
        front.replace('status: published', 'status: superseded\nsuperseded_by: new'),
      ),
      'reports/old/shots.csv': twoHeadsCsv,
      'reports/new/report.md': twoHeads((front) =>
        front.replace('title: Two heads', 'title: Two heads again').replace('2026-05-02', '2026-06-02'),
      ),
      'reports/new/shots.csv': twoHeadsCsv,
    }),
  );
  expect(reports).toHaveLength(2);
  expect(correctionItems(reports, absolute)).toEqual([
    {
      title: 'Replaced: Two heads',
      link: 'https://golf.example/reports/old/#replaced',
      date: '2026-06-02',
      description: 'A newer report replaces it: Two heads again.',
    },
  ]);
});

test('a sitemap is parted before it grows too large (sitemaps.org: 50,000 addresses a file)', () => {
  const addresses = Array.from({ length: mostInSitemap + 1 }, (_, index) => absolute(`/a&b/${index}/`));
  const files = sitemap(addresses, (name) => absolute(`/${name}`));
  expect(files.map(({ name }) => name)).toEqual(['sitemap-index.xml', 'sitemap-0.xml', 'sitemap-1.xml']);
  expect(files[0]?.xml.match(/<loc>/g)).toHaveLength(2);
  const all = files.slice(1).flatMap(({ xml }) => xml.match(/<loc>/g) ?? []);
  expect(all).toHaveLength(addresses.length);
  expect(files[1]?.xml).toContain('https://golf.example/a&amp;b/0/');
});

const page =
  '<!doctype html><html><head><meta http-equiv="content-security-policy" content="default-src \'self\'"><link rel="stylesheet" href="/s.css"></head>' +
  '<body><a href="/x/">There</a> <a href="#y">Here</a></body></html>';
const css =
  "@font-face{font-family:F;src:url(/f.woff2) format('woff2'),url(/f.woff) format('woff')}body{color:red}";
const files = (font: number) => ({
  text: (address: string) => (address === '/s.css' ? css : null),
  bytes: (address: string) => (address === '/f.woff2' ? new Uint8Array(font) : null),
});

test('one file holds its styles and fonts, and its own policy', () => {
  const file = oneFile(page, files(30), 'https://golf.example');
  expect(file).toContain('src:url(data:font/woff2;base64,');
  expect(file).not.toMatch(/f\.woff|s\.css|'self'/);
  expect(file).toMatch(/style-src 'sha256-[A-Za-z0-9+/=]{44}'/);
  expect(file).toContain('<a href="https://golf.example/x/">There</a> <a href="#y">Here</a>');
});

test('one file leaves out fonts that would make it too large, and links that lead nowhere', () => {
  const file = oneFile(page, files(oneFileLimit), null);
  expect(Buffer.byteLength(file)).toBeLessThan(oneFileLimit);
  expect(file).not.toContain('@font-face');
  expect(file).toContain('body{color:red}');
  expect(file).toContain('<span>There</span> <a href="#y">Here</a>');
});

test('one file with more drawings than it may hold: the largest once, as for phones; then the largest not at all', () => {
  const drawing = (size: number): string => `<svg>${'m'.repeat(size)}</svg>`;
  const figure = (name: string, size: number): string =>
    `<figure>${name}<div class="chart-wide">${drawing(size)}</div><div class="chart-narrow">${drawing(size)}</div></figure>`;
  const of = (...sizes: readonly number[]): string =>
    oneFile(
      page.replace(
        '<a href="/x/">',
        `${sizes.map((size, index) => figure(`F${index}`, size)).join('')}<a href="/x/">`,
      ),
      files(30),
      null,
    );
  const fits = of(20_000, 60_000);
  expect(fits).not.toContain('alone"');
  const twice = of(20_000, 150_000, 30_000);
  expect(Buffer.byteLength(twice)).toBeLessThan(oneFileLimit);
  expect(twice).toMatch(/F1<div class="chart-narrow alone"><svg>m+<\/svg><\/div><\/figure>/);
  expect(twice).toContain('.figure .chart-narrow.alone{display:block}');
  expect(twice.match(/class="chart-wide"/g)).toHaveLength(2);
  const huge = of(20_000, 250_000, 200_000, 90_000);
  expect(Buffer.byteLength(huge)).toBeLessThan(oneFileLimit);
  expect(huge).toContain('F1<p>The drawing of so many shots is too large for one file.');
  expect(huge).toMatch(/F2<div class="chart-narrow alone">/);
});
