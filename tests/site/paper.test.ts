import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { allOr, isEveryday } from '../everyday.ts';
import { launch } from './browser.ts';
import { openPage } from './openPage.ts';
import { printedFigures, type PrintedFigure } from './printedPlaces.ts';
import { demoPages, pooledPages, reportPages, twoReports } from './sites.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

/** Height of the printed part of a sheet in CSS px: 96 an inch, less margins of 16 mm above and below. */
const room = { a4: ((297 - 32) / 25.4) * 96, letter: 11 * 96 - (32 / 25.4) * 96 } as const;
const columns = { a4: ((210 - 28) / 25.4) * 96, letter: 8.5 * 96 - (28 / 25.4) * 96 } as const;

const sheets = ['a4', 'letter'] as const;

describe.each(allOr(reportPages, twoReports))('$name', ({ address }) => {
  test('every figure fits on one sheet, with its caption', async () => {
    const page = await openPage(browser, address, { width: Math.floor(columns.a4) });
    await page.emulateMediaType('print');
    for (const sheet of sheets) {
      await page.setViewport({ width: Math.floor(columns[sheet]), height: 900 });
      const figures = await page.$$eval('figure', (all) =>
        all.map((figure) => {
          const { height, width } = figure.getBoundingClientRect();
          const svg = [...figure.querySelectorAll('svg')].find(
            (one) => one.getBoundingClientRect().width > 0,
          );
          return {
            height,
            over: (svg?.getBoundingClientRect().width ?? 0) - width,
            drawn: svg !== undefined,
          };
        }),
      );
      expect(figures.length).toBeGreaterThan(2);
      // Folded charts are printed as well.
      expect(figures.filter(({ drawn }) => !drawn)).toEqual([]);
      expect(Math.max(...figures.map(({ height }) => height)), sheet).toBeLessThan(room[sheet]);
      expect(Math.max(...figures.map(({ over }) => over)), sheet).toBeLessThanOrEqual(0.5);
    }
    await page.close();
  });
});

/** Figures of which a part stands on another sheet than the rest. */
const parted = (figures: readonly PrintedFigure[]): readonly PrintedFigure[] =>
  figures.filter(
    ({ heading, drawing, captionBegins, captionEnds }) =>
      new Set([heading, drawing, captionBegins, captionEnds]).size > 1,
  );

const details = demoPages.filter(({ file }) => file.endsWith('/details/index.html'));
const withFigures = [...reportPages, ...pooledPages.filter(({ file }) => file.startsWith('pairs/'))];

async function printed(
  address: string,
  sheet: (typeof sheets)[number],
  style = '',
): Promise<readonly PrintedFigure[]> {
  const page = await browser.newPage();
  await page.setBypassCSP(true);
  await page.goto(address, { waitUntil: 'load' });
  if (style !== '') await page.addStyleTag({ content: style });
  const figures = await printedFigures(page, sheet);
  await page.close();
  return figures;
}

describe.each(allOr(sheets, sheets.slice(0, 1)))('in a PDF on %s', (sheet) => {
  test.each(allOr(withFigures, twoReports))(
    '$name keeps question, drawing and caption of every figure together',
    async ({ address, file }) => {
      const figures = await printed(address, sheet);
      expect(figures.length).toBeGreaterThan(file.startsWith('pairs/') ? 0 : 2);
      expect(Math.max(...figures.map(({ drawing }) => drawing))).toBeGreaterThan(0);
      expect(parted(figures)).toEqual([]);
    },
  );

  test.skipIf(isEveryday)('would part some of them without the rules for print', async () => {
    const apart: Record<string, number> = { figure: 0, heading: 0 };
    const rules = {
      figure: 'figure { break-inside: auto !important }',
      heading: 'h2, h3, summary { break-after: auto !important }',
    };
    for (const { address } of [...details, ...reportPages]) {
      if ((apart['figure'] ?? 0) > 0 && (apart['heading'] ?? 0) > 0) break;
      apart['figure'] = (apart['figure'] ?? 0) + parted(await printed(address, sheet, rules.figure)).length;
      apart['heading'] =
        (apart['heading'] ?? 0) + parted(await printed(address, sheet, rules.heading)).length;
    }
    expect(apart['figure']).toBeGreaterThan(0);
    expect(apart['heading']).toBeGreaterThan(0);
  });
});

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
