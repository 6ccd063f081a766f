import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseHTML } from 'linkedom';
import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { launch } from './browser.ts';
import { openPage } from './openPage.ts';

const front = (folder: string): string => readFileSync(join(folder, 'index.html'), 'utf8');
const demo = front(inject('siteFolder'));
const tried = front(inject('triedFolder'));

/** Where words first stand, so that their order can be told. */
const placeOf = (page: string, words: string): number => {
  const place = page.indexOf(words);
  expect(place, words).toBeGreaterThan(0);
  return place;
};

/** The rows of a list, in their order. */
const rowsOf = (page: string): readonly Element[] => [
  ...parseHTML(page).document.querySelectorAll('.report-line'),
];
const textOf = (row: Element, selector: string): string =>
  (row.querySelector(selector)?.textContent ?? '').replaceAll(/\s+/g, ' ').trim();

describe('the front page', () => {
  test('says what the shop has to gain before the first report, and what became of its plans after the last', () => {
    const interest = placeOf(demo, 'We sell most of what we tested.');
    expect(interest).toBeLessThan(placeOf(demo, 'class="report-line"'));
    expect(placeOf(demo, 'We planned one test: we published one.')).toBeGreaterThan(
      demo.lastIndexOf('class="report-line"'),
    );
  });

  test('explains the ring and bar once, before it is first seen', () => {
    expect(placeOf(demo, 'class="sign-key')).toBeLessThan(placeOf(demo, 'class="sign"'));
    expect(demo.match(/class="sign-key[ "]/g)).toHaveLength(1);
  });

  test('lists every report strictly by date, newest first', () => {
    const written = readdirSync(resolve('content/reports')).map((slug) => {
      const text = readFileSync(join(resolve('content/reports'), slug, 'report.md'), 'utf8');
      return { slug, date: /^date: (.+)$/m.exec(text)?.[1] ?? '' };
    });
    expect(rowsOf(demo).map((row) => row.querySelector('a')?.getAttribute('href'))).toEqual(
      written.toSorted((x, y) => (x.date < y.date ? 1 : -1)).map(({ slug }) => `/reports/${slug}/`),
    );
  });

  test('gives each report status, finding with a number, facts, and a picture named by the finding', () => {
    for (const row of rowsOf(demo)) {
      expect(textOf(row, '.status')).not.toBe('');
      expect(textOf(row, '.finding')).toMatch(/\d/);
      expect(textOf(row, '.row-facts')).toMatch(/golfers?\b.* · \d+ shots · \d+ \w+ 2026/);
      const picture = row.querySelector('svg[role="img"]');
      expect(picture?.getAttribute('aria-labelledby')).toBe(row.querySelector('.finding')?.id);
      expect(picture?.querySelectorAll('circle').length).toBeGreaterThan(0);
    }
  });

  test('says outside money, corrections and replies in words', () => {
    const facts = (slug: string): string =>
      textOf(
        rowsOf(demo).find((row) => row.querySelector('a')?.getAttribute('href') === `/reports/${slug}/`) ??
          parseHTML('<p></p>').document.documentElement,
        '.row-facts',
      );
    expect(facts('fairway-woods-two-golfers')).toContain(
      'paid for by the shop and the maker of Clover, half each · commission or gifts: a box of balls from the maker of Clover · reply from the maker of Clover',
    );
    expect(facts('three-irons-after-work')).toContain('corrected 2 April 2026');
    expect(facts('three-balls-one-iron')).toContain('Heron lent by its distributor · invented data');
  });

  test('keeps replaced and withdrawn reports in the list and says so, without their pictures standing for them', () => {
    const row = (words: string): Element => {
      const found = rowsOf(tried).find((one) => (one.textContent ?? '').includes(words));
      if (found === undefined) throw new Error(`no row says ${words}`);
      return found;
    };
    const replaced = row('A newer report, “Two driver heads, one shaft”, replaces it. It said:');
    expect(textOf(replaced, '.status')).toBe('Replaced');
    const withdrawn = row('Withdrawn 20 February 2026. the monitor had been set to another ball');
    expect(textOf(withdrawn, '.status')).toBe('Withdrawn');
    expect(withdrawn.querySelector('svg')).toBeNull();
  });

  test('counts no wins and ranks nothing', () => {
    for (const page of [demo, tried])
      expect(page.replaceAll(/<[^>]*>/g, ' ')).not.toMatch(
        /\b(wins?|winner|top \d|ranked|first place|beats)\b|\bbest (?!estimate)/i,
      );
  });

  test('links each kind to a list of its own, which holds what it says', () => {
    const { document } = parseHTML(demo);
    const links = [...document.querySelectorAll('.kinds a')].filter(
      (link) => link.getAttribute('href') !== '/',
    );
    expect(links.length).toBeGreaterThan(8);
    for (const link of links) {
      const address = link.getAttribute('href') ?? '';
      const list = readFileSync(join(inject('siteFolder'), address, 'index.html'), 'utf8');
      expect(rowsOf(list)).toHaveLength(Number(/\d+$/.exec(link.textContent.trim())?.[0]));
      expect(list).toContain(`aria-current="page"`);
    }
  });
});

describe('in a browser', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => browser.close());

  test('nine reports stand within two screens of 1,280 by 800, each finding in two lines', async () => {
    const page = await openPage(browser, `${inject('siteAddress')}/`, { width: 1280, height: 800 });
    const rows = await page.$$eval('.report-line', (all) =>
      all.map((row) => {
        const finding = row.querySelector('.finding');
        const { lineHeight } = getComputedStyle(finding ?? row);
        return {
          bottom: row.getBoundingClientRect().bottom,
          lines: (finding?.getBoundingClientRect().height ?? 0) / parseFloat(lineHeight),
        };
      }),
    );
    expect(rows).toHaveLength(9);
    expect(Math.max(...rows.map(({ bottom }) => bottom))).toBeLessThanOrEqual(1600);
    expect(Math.max(...rows.map(({ lines }) => lines))).toBeLessThan(2.1);
    await page.close();
  });

  test.each([320, 390, 768, 1280])(
    'the head takes two lines at most at %i px, its targets 44',
    async (width) => {
      const page = await openPage(browser, `${inject('siteAddress')}/`, { width });
      const height = await page.$eval('.masthead', (head) => head.getBoundingClientRect().height);
      expect(height).toBeLessThan(width < 768 ? 92 : 48);
      const targets = await page.$$eval('.masthead a, .masthead button, .kinds a, .report-line h2 a', (all) =>
        all.map((one) => one.getBoundingClientRect().height).filter((height) => height > 0),
      );
      expect(targets.length).toBeGreaterThan(10);
      expect(Math.min(...targets)).toBeGreaterThanOrEqual(43.9);
      await page.close();
    },
  );

  test('the search and the units switch move nothing when they come', async () => {
    const places = [];
    for (const script of [true, false]) {
      const page = await openPage(browser, `${inject('siteAddress')}/`, { width: 390, script });
      places.push(await page.$eval('.report-line', (row) => row.getBoundingClientRect().top));
      expect(await page.$$eval('#search input', (all) => all.length)).toBe(script ? 1 : 0);
      await page.close();
    }
    // Without script the room of the search is given to the list.
    expect((places[0] ?? 0) - (places[1] ?? 0)).toBeCloseTo(70, 0);
  });
});
