import type { Browser, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { contrast } from '../../src/site/brand/contrast.ts';
import { launch } from './browser.ts';
import { openPage } from './openPage.ts';
import { triedPages } from './sites.ts';

/** The site with a logo, an accent and links of its own: its front page, a report, and one with a picture. */
const pages = triedPages.filter(({ file }) =>
  /^(index\.html|reports\/(six-shafts|two-names)\/index\.html)$/.test(file),
);
const accents = { light: 'rgb(138, 75, 8)', dark: 'rgb(224, 168, 96)' } as const;

test('three pages are tried', () => expect(pages).toHaveLength(3));

describe.each(['light', 'dark'] as const)('in the %s theme', (theme) => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch({ dark: theme === 'dark' });
  });
  afterAll(() => browser.close());

  const colourOf = (page: Page, selector: string, property: 'color' | 'outlineColor'): Promise<string> =>
    page.$eval(selector, (element, name) => getComputedStyle(element)[name], property);

  test.each(pages)('$name shows logo and accent, and what they stand on can be read', async ({ address }) => {
    for (const width of [320, 390, 1280]) {
      const page = await openPage(browser, address, { width });
      const logo = await page.$eval('.brand img', (img) => {
        const { width, height } = img.getBoundingClientRect();
        const { currentSrc, naturalWidth } = img as HTMLImageElement;
        return { width, height, loaded: naturalWidth > 0, src: new URL(currentSrc).pathname };
      });
      expect(logo).toMatchObject({ width: 90, height: 36, loaded: true });
      expect(logo.src).toMatch(/^\/brand\/[0-9a-f]{12}\.svg$/);
      const target = await page.$eval('.brand', (link) => link.getBoundingClientRect().height);
      expect(target).toBeGreaterThanOrEqual(44);
      expect(await colourOf(page, 'footer a:not(:visited):not([aria-current])', 'color')).toBe(
        accents[theme],
      );
      await page.focus('.brand');
      await page.keyboard.press('Tab');
      await page.keyboard.down('Shift');
      await page.keyboard.press('Tab');
      await page.keyboard.up('Shift');
      expect(await colourOf(page, '.brand', 'outlineColor')).toBe(accents[theme]);
      await page.close();
    }
  });

  test('charts keep their own colours, and print has the light ones', async () => {
    const report = pages.find(({ file }) => file.includes('six-shafts'));
    const page = await openPage(browser, report?.address ?? '', { width: 1280 });
    const painted = await page.$$eval('figure svg *', (all) =>
      all.flatMap((element) => [getComputedStyle(element).fill, getComputedStyle(element).stroke]),
    );
    expect(painted.length).toBeGreaterThan(100);
    expect(painted).not.toContain(accents[theme]);
    await page.emulateMediaType('print');
    const seen = await page.evaluate(() => ({
      link: getComputedStyle(document.documentElement).getPropertyValue('--link').trim(),
      paper: getComputedStyle(document.documentElement).getPropertyValue('--paper').trim(),
    }));
    expect(seen).toEqual({ link: '#8a4b08', paper: '#fff' });
    expect(contrast(seen.link, '#ffffff')).toBeGreaterThan(4.5);
    await page.close();
  });
});

test('a logo for each ground is shown on its own', async () => {
  const shown = await Promise.all(
    [false, true].map(async (dark) => {
      const browser = await launch({ dark });
      const page = await openPage(browser, pages[0]?.address ?? '', { width: 390 });
      const src = await page.$eval('.brand img', (img) => (img as HTMLImageElement).currentSrc);
      await browser.close();
      return src;
    }),
  );
  expect(new Set(shown).size).toBe(2);
});

test('a picture of a narrative comes in the width that its place needs, and moves nothing', async () => {
  const browser = await launch();
  const report = pages.find(({ file }) => file.includes('two-names'));
  const taken = [];
  for (const [width, scale] of [
    [390, 1],
    [390, 2],
    [1280, 2],
  ] as const) {
    const page = await browser.newPage();
    await page.setViewport({ width, height: 800, deviceScaleFactor: scale });
    await page.goto(report?.address ?? '', { waitUntil: 'load' });
    const before = await page.$eval('main picture img', (img) => img.getBoundingClientRect().height);
    await page.$eval('main picture img', (img) => img.scrollIntoView());
    await page.waitForFunction(
      () => document.querySelector<HTMLImageElement>('main picture img')?.complete === true,
    );
    const { src, height } = await page.$eval('main picture img', (img) => ({
      src: (img as HTMLImageElement).currentSrc,
      height: img.getBoundingClientRect().height,
    }));
    expect(height).toBe(before);
    expect(height).toBeGreaterThan(100);
    taken.push(/-(\d+\.\w+)$/.exec(src)?.[1]);
    await page.close();
  }
  expect(taken).toEqual(['480.webp', '960.webp', '1200.webp']);
  await browser.close();
});
