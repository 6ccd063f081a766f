import type { Browser, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launch } from './browser.ts';
import { openPage, type Screen } from './openPage.ts';
import { allPages, oneOfEachKind, reportPages, type BuiltPage } from './sites.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launch();
});

afterAll(() => browser.close());

const open = ({ address }: BuiltPage, screen: Screen): Promise<Page> => openPage(browser, address, screen);

describe.each([320, 768, 1280])('at %i px', (width) => {
  test.each(allPages)('$name needs no scrolling sideways, also at twice the zoom', async (built) => {
    const page = await open(built, { width });
    const overflow = (): Promise<number> =>
      page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    expect(await overflow()).toBeLessThanOrEqual(0);
    // Twice the zoom halves the width that a page has in CSS pixels (WCAG 2.2, 1.4.4).
    if (width > 640) {
      await page.setViewport({ width: width / 2, height: 900 });
      expect(await overflow()).toBeLessThanOrEqual(0);
    }
    await page.close();
  });

  test.each(reportPages)('$name shows one variant of each chart, its text 12 px or more', async (built) => {
    const page = await open(built, { width });
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
    await page.close();
  });
});

describe.each(reportPages)('$name', (built) => {
  const { origin } = new URL(built.address);

  test('asks no other host for anything, and nothing fails', async () => {
    const page = await browser.newPage();
    const asked: string[] = [];
    const failed: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    page.on('requestfailed', (request) => failed.push(request.url()));
    page.on('console', (message) => failed.push(message.text()));
    await page.goto(built.address, { waitUntil: 'networkidle0' });
    expect(asked.filter((url) => !url.startsWith(origin))).toEqual([]);
    expect(asked.length).toBeGreaterThan(3);
    expect(failed).toEqual([]);
    await page.close();
  });

  test('reads the same without script', async () => {
    const [withScript, without] = await Promise.all([
      open(built, { width: 768 }),
      open(built, { width: 768, script: false }),
    ]);
    const text = (page: Page): Promise<string> =>
      page.$eval('main', (main) => (main as HTMLElement).innerText);
    expect(await text(without)).toBe(await text(withScript));
    await Promise.all([withScript.close(), without.close()]);
  });

  test('says answer, how much, for whom and the interest within the first screen of a phone', async () => {
    const page = await open(built, { width: 390, height: 664 });
    const bottom = await page.$eval('.interest', (interest) => interest.getBoundingClientRect().bottom);
    expect(bottom).toBeLessThanOrEqual(664);
    await page.close();
  });

  test('prints without cutting a figure', async () => {
    const page = await open(built, { width: 768 });
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
    await page.close();
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
  const overflow = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(overflow).toBeLessThanOrEqual(0);
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
