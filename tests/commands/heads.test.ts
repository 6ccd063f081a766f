// What machines read in the heads of a built site: addresses, feeds, licences, linked data.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import { manyReports } from '../kit/manyReports.ts';
import { htmlFiles } from '../site/pages.ts';
import { build, foldersFor } from './builds.ts';

const root = 'https://golf.example/tests/';
const shop = [
  'name: Shop & Sons',
  `address: ${root}`,
  'reuse: {licence_charts: CC-BY-4.0}',
  'defaults: {locale: en-US}',
  '',
].join('\n');

interface Head {
  readonly file: string;
  readonly links: (rel: string) => readonly (string | null)[];
  readonly meta: (name: string) => string | null;
  readonly linked: readonly Readonly<Record<string, unknown>>[];
}

function headOf(site: string, file: string): Head {
  const { document } = parseHTML(readFileSync(join(site, file), 'utf8'));
  return {
    file,
    links: (rel) =>
      [...document.querySelectorAll(`head link[rel="${rel}"]`)].map((one) => one.getAttribute('href')),
    meta: (name) =>
      document.querySelector(`meta[property="${name}"], meta[name="${name}"]`)?.getAttribute('content') ??
      null,
    linked: [...document.querySelectorAll('script[type="application/ld+json"]')].map(
      (one) => JSON.parse(one.textContent ?? '') as Readonly<Record<string, unknown>>,
    ),
  };
}

test('every page that searches find says where it stands, in which language, and where the feeds are', () => {
  const folders = foldersFor(manyReports(shop));
  const { status, said } = build(folders);
  expect(status, said).toBe(0);
  const heads = htmlFiles(folders.out).map((file) => headOf(folders.out, file));
  const found = heads.filter(({ meta }) => meta('robots') !== 'noindex');
  expect(found.length).toBeGreaterThan(30);
  for (const { file, links, meta } of found) {
    const address = root + file.replace(/index\.html$/, '');
    expect(links('canonical'), file).toEqual(file === '404.html' ? [] : [address]);
    expect(links('alternate'), file).toEqual(['/tests/feed.xml', '/tests/corrections.xml']);
    expect(meta('og:locale'), file).toBe('en_US');
    expect(meta('og:url'), file).toBe(file === '404.html' ? null : address);
    expect(meta('og:title'), file).not.toBeNull();
    expect(meta('twitter:card'), file).toMatch(/^summary/);
  }
  const at = (file: string): Head => {
    const head = heads.find((one) => one.file === file);
    if (head === undefined) throw new Error(`no ${file}`);
    return head;
  };

  // Charts stand on a report, its details, its sheet and the page for editors; a withdrawn one has none.
  const licence = ['https://spdx.org/licenses/CC-BY-4.0'];
  for (const file of ['index.html', 'details/index.html', 'sheet/index.html', 'kit/index.html'])
    expect(at(`reports/first/${file}`).links('license'), file).toEqual(licence);
  for (const file of [
    'index.html',
    'about/index.html',
    'reports/gone/index.html',
    'reports/gone/kit/index.html',
  ])
    expect(at(file).links('license'), file).toEqual([]);
  // What stands where pictures stood is for those who come for them, not for searches.
  expect(at('reports/gone/kit/index.html').meta('robots')).toBe('noindex');
  expect(at('reports/gone/index.html').meta('robots')).toBeNull();

  const days = (slug: string): readonly (string | null)[] =>
    ['article:published_time', 'article:modified_time'].map(at(`reports/${slug}/index.html`).meta);
  expect(days('first')).toEqual(['2026-01-10', null]);
  expect(days('third')).toEqual(['2026-03-10', '2026-04-01']);
  expect(days('gone')).toEqual(['2026-06-20', '2026-06-25']);

  const types = (file: string): unknown =>
    at(file).linked.map((data) =>
      '@graph' in data
        ? (data['@graph'] as Record<string, string>[]).map((node) => node['@type'])
        : data['@type'],
    );
  expect(types('index.html')).toEqual([['WebSite', 'Organization', 'CollectionPage']]);
  expect(types('reports/first/index.html')).toEqual([['Article', 'Dataset']]);
  expect(types('reports/gone/index.html')).toEqual([['Article']]);
  expect(at('reports/first/sheet/index.html').linked).toMatchObject([
    {
      '@type': 'BreadcrumbList',
      itemListElement: [
        { position: 1, item: root },
        { position: 2, name: 'Two heads: first', item: `${root}reports/first/` },
        { position: 3, name: 'On paper: Two heads: first', item: `${root}reports/first/sheet/` },
      ],
    },
  ]);
  // Every page with a trail says it to machines as well.
  for (const { file, linked } of heads) {
    const shown = readFileSync(join(folders.out, file), 'utf8').includes('class="breadcrumb"');
    expect(
      linked.some((data) => data['@type'] === 'BreadcrumbList'),
      file,
    ).toBe(shown);
  }
});
