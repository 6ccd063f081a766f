import type { Browser, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { allOr } from '../everyday.ts';
import { launch } from './browser.ts';
import { openPage } from './openPage.ts';
import { oneOfEachKind, reportPages } from './sites.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

interface Stop {
  readonly words: string;
  /** Width of the focus ring, px. */
  readonly ring: number;
  readonly style: string;
  /** Whether it lies within the window, uncovered, somewhere. */
  readonly seen: boolean;
  readonly top: number;
  readonly left: number;
}

/** What has the focus, and how it shows. */
const focused = (page: Page): Promise<Stop | null> =>
  page.evaluate(async () => {
    // The window is scrolled to what has the focus when the next picture is made.
    await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
    const at = document.activeElement;
    if (at === null || at === document.body) return null;
    const { outlineWidth, outlineStyle } = getComputedStyle(at);
    const box = [...at.getClientRects()].find(({ width, height }) => width > 0 && height > 0);
    // The middle of what of it lies within the window: a table may be taller than that.
    const [top, bottom] = [Math.max(0, box?.top ?? 0), Math.min(window.innerHeight, box?.bottom ?? 0)];
    const [left, right] = [Math.max(0, box?.left ?? 0), Math.min(window.innerWidth, box?.right ?? 0)];
    const found =
      bottom - top < 1 || right - left < 1
        ? null
        : document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
    return {
      words: (at.getAttribute('aria-label') ?? at.textContent ?? '').trim().replace(/\s+/g, ' '),
      ring: parseFloat(outlineWidth),
      style: outlineStyle,
      seen: found !== null && (at.contains(found) || found.contains(at)),
      top: (box?.top ?? 0) + window.scrollY,
      left: box?.left ?? 0,
    };
  });

/** Every stop of the Tab key from the top of the page to where it leaves it. */
async function walk(page: Page): Promise<readonly Stop[]> {
  const stops: Stop[] = [];
  for (;;) {
    await page.keyboard.press('Tab');
    const stop = await focused(page);
    if (stop === null) return stops;
    stops.push(stop);
    if (stops.length > 400) throw new Error('Tab never leaves the page.');
  }
}

/** WCAG 2.2: 2.1.1, 2.1.2, 2.4.1, 2.4.3, 2.4.7, 2.4.11. */
describe.each(allOr(oneOfEachKind, oneOfEachKind.slice(0, 3)))('$name by keyboard alone', ({ address }) => {
  test('shows where the focus is at every stop, in the order of the page, and lets go at the end', async () => {
    const page = await openPage(browser, address, { width: 390, height: 700 });
    const stops = await walk(page);
    expect(stops.length).toBeGreaterThan(4);
    expect(stops[0]?.words).toBe('Skip to the content');
    expect(stops.filter(({ ring, style }) => ring < 2 || style === 'none')).toEqual([]);
    expect(stops.filter(({ seen }) => !seen).map(({ words }) => words)).toEqual([]);
    const back = stops.filter(({ top }, index) => index > 1 && top < (stops[index - 1]?.top ?? 0) - 60);
    expect(back.map(({ words }) => words)).toEqual([]);
    await page.close();
  });

  test('skips to the content', async () => {
    const page = await openPage(browser, address, { width: 390, height: 700 });
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => document.activeElement?.id === 'main', { timeout: 5000 });
    await page.keyboard.press('Tab');
    // A page without a link in its text goes on below it.
    const before = await page.evaluate(
      () => document.activeElement?.closest('header, .breadcrumb, .skip') !== null,
    );
    expect(before && (await page.evaluate(() => document.activeElement?.closest('main') === null))).toBe(
      false,
    );
    await page.close();
  });
});

test('a folded chart opens by keyboard', async () => {
  const [report] = reportPages;
  const page = await openPage(browser, report?.address ?? '', { width: 768 });
  await page.focus('details summary');
  await page.keyboard.press('Enter');
  expect(await page.$eval('details', (details) => details.open)).toBe(true);
  await page.close();
});
