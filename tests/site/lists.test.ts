import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { gzipSync } from 'node:zlib';
import { parseHTML } from 'linkedom';
import type { Browser, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { serveFolder, type StaticServer } from '../../src/commands/staticServer.ts';
import { listed, listedContent } from '../kit/listedReports.ts';
import { launch } from './browser.ts';
import { builtSite } from './builtSite.ts';
import { htmlFiles } from './pages.ts';

/** Enough for a second page; `LISTED=300` tries as many as a shop makes in ten years. */
const count = Number(process.env['LISTED'] ?? 70);
const perPage = 50;
const folder = resolve('.cache/listed-site');
const reports = listed(count).toSorted((x, y) => (x.date < y.date ? 1 : -1));

let browser: Browser;
let server: StaticServer;

beforeAll(async () => {
  await builtSite(listedContent(count), folder, { CACHE_DIR: `${folder}-cache` });
  [browser, server] = await Promise.all([launch(), serveFolder({ folder })]);
});
afterAll(async () => {
  await Promise.all([browser.close(), server.close()]);
});

const read = (file: string): string => readFileSync(join(folder, file), 'utf8');
/** Names of the reports that a page lists, in its order. */
const slugsOf = (file: string): readonly string[] =>
  [...parseHTML(read(file)).document.querySelectorAll('.report-line h2 a')].map(
    (link) => /\/reports\/(.+)\//.exec(link.getAttribute('href') ?? '')?.[1] ?? '',
  );
const pagesOf = (kind: string, size: number): readonly string[] =>
  Array.from(
    { length: size < 60 ? 1 : Math.ceil(size / perPage) },
    (_, index) => `${kind}${index === 0 ? '' : `page/${index + 1}/`}index.html`,
  );

test('all reports stand in pages of fifty, strictly by date', () => {
  const pages = pagesOf('', count);
  expect(pages.length).toBeGreaterThan(1);
  expect(pages.map((file) => slugsOf(file).length).slice(0, -1)).toEqual(
    Array(pages.length - 1).fill(perPage),
  );
  expect(pages.flatMap(slugsOf)).toEqual(reports.map(({ slug }) => slug));
});

test('each kind lists what it should, by club and by what was compared', () => {
  for (const kind of new Set(reports.flatMap(({ family, nouns }) => [family, nouns]))) {
    const own = reports.filter(({ family, nouns }) => family === kind || nouns === kind);
    expect(pagesOf(`kinds/${kind}/`, own.length).flatMap(slugsOf), kind).toEqual(own.map(({ slug }) => slug));
  }
});

test('pages of a list lead to one another', () => {
  const { document } = parseHTML(read('index.html'));
  const links = [...document.querySelectorAll('.pages a')].map((link) => [
    link.getAttribute('href'),
    link.getAttribute('aria-current'),
  ]);
  expect(links.slice(0, 2)).toEqual([
    ['/', 'page'],
    ['/page/2/', null],
  ]);
  expect(links.at(-1)).toEqual(['/page/2/', null]);
  expect(read('page/2/index.html')).toContain('<h1>All reports, page 2 of');
});

test('every page of a list stays under 60 kB compressed', () => {
  const lists = htmlFiles(folder).filter((file) => /^(index\.html|page\/|kinds\/)/.test(file));
  expect(lists.length).toBeGreaterThan(8);
  for (const file of lists) expect(gzipSync(read(file)).length, file).toBeLessThan(60_000);
});

test('the sitemap names every page of the lists', () => {
  const named = read('sitemap-0.xml');
  for (const path of ['/page/2/', '/kinds/drivers/', '/kinds/balls/'])
    expect(named).toContain(`<loc>https://golf.example${path}</loc>`);
});

describe('the search', () => {
  const open = async (path: string, script = true): Promise<Page> => {
    const page = await browser.newPage();
    await page.setJavaScriptEnabled(script);
    await page.goto(server.origin + path, { waitUntil: 'load' });
    return page;
  };
  const said = (page: Page): Promise<string> =>
    page.$eval('#search [role="status"]', (status) => status.textContent ?? '');

  test('finds by title, name, kind and finding on every page, asks once and only this site', async () => {
    const page = await open('/page/2/');
    const asked: string[] = [];
    const trouble: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    page.on('console', (message) => trouble.push(message.text()));
    const find = async (words: string): Promise<readonly string[]> => {
      await page.$eval('#search input', (field) => void ((field as HTMLInputElement).value = ''));
      await page.type('#search input', words);
      await page.waitForFunction(() =>
        /match/.test(document.querySelector('#search [role="status"]')?.textContent ?? ''),
      );
      return page.$$eval('.search-found a', (all) => all.map((link) => link.getAttribute('href') ?? ''));
    };
    const [one] = reports;
    if (one === undefined) throw new Error('no report');
    const address = (slug: string): string => `/reports/${slug}/`;
    expect(await find(one.title)).toContain(address(one.slug));
    expect(await find(one.names[0] ?? '')).toContain(address(one.slug));
    const wedges = reports.filter(({ family }) => family === 'wedges');
    expect(await find('wedges')).toEqual(wedges.slice(0, perPage).map(({ slug }) => address(slug)));
    expect(await said(page)).toBe(`${wedges.length} of ${count} reports match.`);
    expect(await page.$eval('#list', (list) => (list as HTMLElement).hidden)).toBe(true);
    expect((await find('carried farther')).length).toBeGreaterThan(0);
    expect(await find('no such words')).toEqual([]);
    expect(asked).toEqual([`${server.origin}/search.json`]);
    expect(trouble).toEqual([]);
    await page.close();
  });

  test('is named, reached by keyboard, and leads on to what it found', async () => {
    const page = await open('/');
    await page.focus('.kinds p:last-child a:last-child');
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('search-field');
    const named = await page.$eval(
      '#search-field',
      (field) => (field as HTMLInputElement).labels?.[0]?.textContent,
    );
    expect(named).toBe('Search titles, names and findings');
    await page.keyboard.type(reports.at(-1)?.title ?? '');
    await page.waitForSelector('.search-found a');
    await page.keyboard.press('Tab');
    await Promise.all([page.waitForNavigation(), page.keyboard.press('Enter')]);
    expect(new URL(page.url()).pathname).toMatch(/^\/reports\/report-\d+\/$/);
    await page.close();
  });

  test('is not there without script, and the kinds are', async () => {
    const page = await open('/', false);
    expect(await page.$$eval('#search *', (all) => all.length)).toBe(0);
    await Promise.all([page.waitForNavigation(), page.click('.kinds a[href="/kinds/wedges/"]')]);
    expect(await page.$$eval('.report-line', (all) => all.length)).toBeGreaterThan(3);
    await page.close();
  });
});
