import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launch } from './browser.ts';
import { openPage } from './openPage.ts';
import { reportPages } from './sites.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

/** Height of the printed part of a sheet in CSS px: 96 an inch, less margins of 16 mm above and below. */
const room = { a4: ((297 - 32) / 25.4) * 96, letter: 11 * 96 - (32 / 25.4) * 96 } as const;
const columns = { a4: ((210 - 28) / 25.4) * 96, letter: 8.5 * 96 - (28 / 25.4) * 96 } as const;

describe.each(['a4', 'letter'] as const)('on %s', (sheet) => {
  test.each(reportPages)('$name: every figure fits on one sheet, with its caption', async ({ address }) => {
    const page = await openPage(browser, address, { width: Math.floor(columns[sheet]) });
    await page.emulateMediaType('print');
    const figures = await page.$$eval('figure', (all) =>
      all.map((figure) => {
        const { height, width } = figure.getBoundingClientRect();
        const svg = [...figure.querySelectorAll('svg')].find((one) => one.getBoundingClientRect().width > 0);
        return { height, over: (svg?.getBoundingClientRect().width ?? 0) - width, drawn: svg !== undefined };
      }),
    );
    expect(figures.length).toBeGreaterThan(3);
    // Folded charts are printed as well.
    expect(figures.filter(({ drawn }) => !drawn)).toEqual([]);
    expect(Math.max(...figures.map(({ height }) => height))).toBeLessThan(room[sheet]);
    expect(Math.max(...figures.map(({ over }) => over))).toBeLessThanOrEqual(0.5);
    await page.close();
  });
});

/** That Chromium really makes sheets of it; on which sheet a figure falls is told above by its height and `break-inside`. */
test.each(reportPages.slice(0, 2))(
  '$name makes a PDF of whole pages, longer with the folds than the screen shows',
  async ({ address }) => {
    const page = await openPage(browser, address, { width: 768 });
    const pdf = Buffer.from(await page.pdf({ format: 'a4', preferCSSPageSize: true })).toString('latin1');
    const pages = pdf.match(/\/Type \/Page\b/g)?.length ?? 0;
    expect(pages).toBeGreaterThan(5);
    expect(pages).toBeLessThan(40);
    await page.close();
  },
);

test('forced colours leave every chart its lines and words', async () => {
  const page = await openPage(browser, reportPages[0]?.address ?? '', { width: 768 });
  const session = await page.createCDPSession();
  await session.send('Emulation.setEmulatedMedia', {
    features: [{ name: 'forced-colors', value: 'active' }],
  });
  const inks = await page.$eval('figure svg', (svg) =>
    [...svg.querySelectorAll('text')].map((text) => getComputedStyle(text).fill),
  );
  const ground = await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  expect(inks.length).toBeGreaterThan(3);
  expect(inks).not.toContain(ground);
  await page.close();
});

test('nothing moves, so there is nothing to reduce', async () => {
  for (const { address } of reportPages.slice(0, 1)) {
    const page = await openPage(browser, address, { width: 768 });
    const moving = await page.$$eval(
      '*',
      (all) =>
        all.filter((element) => {
          const { animationName, transitionDuration, scrollBehavior } = getComputedStyle(element);
          return animationName !== 'none' || transitionDuration !== '0s' || scrollBehavior === 'smooth';
        }).length,
    );
    expect(moving).toBe(0);
    await page.close();
  }
});
