// sitemaps.org protocol 0.9.
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { DOMParser, parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import { manyReports } from '../kit/manyReports.ts';
import { wrongInXml } from '../kit/xmlLint.ts';
import { htmlFiles } from '../site/pages.ts';
import { build, foldersFor, newFolder } from './builds.ts';

const protocol = readFileSync(
  join(dirname(createRequire(import.meta.url).resolve('sitemap/package.json')), 'schema/sitemap.xsd'),
  'utf8',
);

/** Address and last change of every entry. */
function entries(site: string, file: string): readonly (readonly [string, string | null])[] {
  const document = new DOMParser().parseFromString(readFileSync(join(site, file), 'utf8'), 'text/xml');
  return [...document.documentElement.children].map((entry) => [
    entry.querySelector('loc')?.textContent ?? '',
    entry.querySelector('lastmod')?.textContent.slice(0, 10) ?? null,
  ]);
}

test('the sitemap names every page that searches should find, and those only, with the day of its last change', async () => {
  const folders = foldersFor(manyReports());
  const first = build(folders);
  expect(first.status, first.said).toBe(0);
  const root = 'https://golf.example/tests/';
  expect(entries(folders.out, 'sitemap-index.xml')).toEqual([[`${root}sitemap-0.xml`, '2026-06-25']]);
  const found = entries(folders.out, 'sitemap-0.xml');
  // The published schema of the protocol, as libxml2 reads it.
  const map = readFileSync(join(folders.out, 'sitemap-0.xml'), 'utf8');
  expect(await wrongInXml(map, { schema: protocol, kind: 'schema' })).toEqual([]);
  const broken = map.replace(/<lastmod>[^<]*/, '<lastmod>in June');
  expect((await wrongInXml(broken, { schema: protocol, kind: 'schema' })).join()).toMatch(/lastmod/);
  const pages = htmlFiles(folders.out)
    .filter((file) => {
      const { document } = parseHTML(readFileSync(join(folders.out, file), 'utf8'));
      return (
        file !== '404.html' && document.querySelector('meta[name="robots"][content*="noindex"]') === null
      );
    })
    .map((file) => root + file.replace(/index\.html$/, ''));
  expect(found.map(([address]) => address).toSorted()).toEqual(pages.toSorted());
  expect(pages.filter((page) => page.includes('/embed/'))).toEqual([]);
  expect(found.map(([address]) => address)).not.toContain(`${root}reports/gone/kit/`);
  expect(Object.fromEntries(found)).toMatchObject({
    [root]: '2026-06-25',
    [`${root}about/`]: null,
    [`${root}method/`]: null,
    [`${root}reports/first/`]: '2026-01-10',
    [`${root}reports/first/kit/`]: '2026-01-10',
    // Corrected.
    [`${root}reports/third/`]: '2026-04-01',
    [`${root}reports/gone/`]: '2026-06-25',
    [`${root}contenders/alder/`]: '2026-06-10',
    [`${root}pairs/alder-and-birch/`]: '2026-06-10',
  });
  expect(readFileSync(join(folders.out, 'robots.txt'), 'utf8')).toBe(
    `User-agent: *\nAllow: /\nSitemap: ${root}sitemap-index.xml\n`,
  );

  // Pages that a build takes from its cache are in it like those that it makes.
  const report = join(folders.content, 'reports/first/report.md');
  writeFileSync(
    report,
    readFileSync(report, 'utf8').replace('status: published', 'status: published\npublished: 2026-07-01'),
  );
  const [again, anew] = [
    { ...folders, out: newFolder('site') },
    { ...folders, out: newFolder('site'), cache: newFolder('cache') },
  ];
  for (const one of [again, anew]) expect(build(one).status).toBe(0);
  const kept = entries(again.out, 'sitemap-0.xml');
  expect(kept).toEqual(entries(anew.out, 'sitemap-0.xml'));
  expect(kept.map(([address]) => address)).toEqual(found.map(([address]) => address));
  expect(Object.fromEntries(kept)[`${root}reports/first/kit/`]).toBe('2026-07-01');
});
