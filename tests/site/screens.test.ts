import type { Browser, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { allOr, eachSoMany } from '../everyday.ts';
import { launch } from './browser.ts';
import { openPage, type Screen } from './openPage.ts';
import { allPages, oneOfEachKind, reportPages, twoReports, type BuiltPage } from './sites.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launch();
});

afterAll(() => browser.close());

const open = ({ address }: BuiltPage, screen: Screen): Promise<Page> => openPage(browser, address, screen);

/** Widths of a small phone, a tablet and a laptop, px. */
const widths = [320, 768, 1280];

const overflowOf = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

describe.each(allOr(allPages, eachSoMany(oneOfEachKind, 3)))('$name', (built) => {
  test('needs no scrolling sideways at any width, also at twice the zoom', async () => {
    const page = await open(built, { width: 1280 });
    // Twice the zoom halves the width that a page has in CSS pixels (WCAG 2.2, 1.4.4).
    const zoomed = widths.filter((width) => width > 640).map((width) => width / 2);
    const overflows = [];
    for (const width of [...widths, ...zoomed]) {
      await page.setViewport({ width, height: 900 });
      overflows.push({ width, over: Math.max(0, await overflowOf(page)) });
    }
    expect(overflows).toEqual([...widths, ...zoomed].map((width) => ({ width, over: 0 })));
    await page.close();
  });
});

describe.each(allOr(reportPages, twoReports))('$name', (built) => {
  const { origin } = new URL(built.address);
  const asked: string[] = [];
  const failed: string[] = [];
  let page: Page;

  beforeAll(async () => {
    page = await browser.newPage();
    page.on('request', (request) => asked.push(request.url()));
    page.on('requestfailed', (request) => failed.push(request.url()));
    page.on('console', (message) => failed.push(message.text()));
    await page.setViewport({ width: 768, height: 900 });
    await page.goto(built.address, { waitUntil: 'networkidle0' });
  });
  afterAll(() => page.close());

  test('asks no other host for anything, and nothing fails', () => {
    expect(asked.filter((url) => !url.startsWith(origin))).toEqual([]);
    expect(asked.length).toBeGreaterThan(3);
    expect(failed).toEqual([]);
  });

  test('reads the same without script', async () => {
    const without = await open(built, { width: 768, script: false });
    const text = (of: Page): Promise<string> => of.$eval('main', (main) => (main as HTMLElement).innerText);
    expect(await text(without)).toBe(await text(page));
    await without.close();
  });

  test.each(widths)('shows one variant of each chart at %i px, its text 12 px or more', async (width) => {
    await page.setViewport({ width, height: 900 });
    const charts = await page.evaluate(() =>
      [...document.querySelectorAll('figure')].map((figure) => {
        const shown = [...figure.querySelectorAll('svg')].filter(
          (svg) => svg.getBoundingClientRect().width > 0,
        );
        const [svg] = shown;
        const scale = svg === undefined ? 0 : svg.getBoundingClientRect().width / svg.viewBox.baseVal.width;
        const sizes = [...(svg?.querySelectorAll('text') ?? [])].map(
          (text) => parseFloat(getComputedStyle(text).fontSize) * scale,
        );
        return { shown: shown.length, smallest: Math.min(...sizes) };
      }),
    );
    expect(charts.length).toBeGreaterThan(1);
    for (const { shown, smallest } of charts) {
      expect(shown).toBe(1);
      expect(smallest).toBeGreaterThanOrEqual(12);
    }
  });

  test('says answer, how much, for whom and the interest within the first screen of a phone', async () => {
    await page.setViewport({ width: 390, height: 664 });
    const bottom = await page.$eval('.interest', (interest) => interest.getBoundingClientRect().bottom);
    expect(bottom).toBeLessThanOrEqual(664);
  });

  test('prints without cutting a figure', async () => {
    await page.setViewport({ width: 768, height: 900 });
    await page.emulateMediaType('print');
    const tallest = await page.evaluate(() =>
      Math.max(
        ...[...document.querySelectorAll('figure')].map((figure) => figure.getBoundingClientRect().height),
      ),
    );
    // A4 at 96 px an inch less 20 mm of margin.
    expect(tallest).toBeGreaterThan(100);
    expect(tallest).toBeLessThan(1046);
    const breaks = await page.$$eval('figure', (figures) =>
      figures.map((figure) => getComputedStyle(figure).breakInside),
    );
    expect(new Set(breaks)).toEqual(new Set(['avoid']));
    await page.emulateMediaType('screen');
  });
});

test.each(oneOfEachKind)('$name loses nothing under wider text spacing', async (built) => {
  const page = await open(built, { width: 320 });
  // WCAG 2.2, 1.4.12: line height 1.5, paragraphs 2, letters 0.12, words 0.16 of the font size.
  await page.evaluate(() => {
    for (const element of document.querySelectorAll<HTMLElement>('main *:not(svg *)')) {
      element.style.lineHeight = '1.5';
      element.style.letterSpacing = '0.12em';
      element.style.wordSpacing = '0.16em';
    }
  });
  expect(await overflowOf(page)).toBeLessThanOrEqual(0);
  // Only what is meant for screen readers alone has a box too small for its words.
  const cut = await page.$$eval('main *:not(svg *)', (all) =>
    all
      .filter((element) => {
        const { overflowX, overflowY } = getComputedStyle(element);
        const hides = [overflowX, overflowY].some((value) => value === 'hidden' || value === 'clip');
        const over =
          element.scrollWidth > element.clientWidth + 1 || element.scrollHeight > element.clientHeight + 1;
        return hides && over && !element.classList.contains('visually-hidden');
      })
      .map(({ outerHTML }) => outerHTML.slice(0, 80)),
  );
  expect(cut).toEqual([]);
  await page.close();
});
