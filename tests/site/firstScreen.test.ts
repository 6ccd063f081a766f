import type { Browser, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { allOr } from '../everyday.ts';
import { launch } from './browser.ts';
import { openPage } from './openPage.ts';
import { reportPages, twoReports } from './sites.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

/** A phone with the bars of its browser, and without. */
const phone = { width: 390, bars: 664, height: 844 } as const;
const laptop = { width: 1280, height: 800 } as const;

/**
 * How long a report may be: of two or three things with one main measure and a narrative as most are; longer where it
 * compares more. None where a second measure or pages of authored text make it as long as they are.
 */
const barsOf = (page: Page): Promise<{ readonly table: number; readonly sheets: number } | null> =>
  page.evaluate(() => {
    const things = document.querySelectorAll('#side-by-side thead th[scope=col]').length - 1;
    const authored = document.querySelector('#seen')?.textContent.length ?? 0;
    if (document.getElementById('answer-2') !== null || authored > 5000) return null;
    return things > 3 ? { table: 3, sheets: 5 } : { table: 2.5, sheets: 3 };
  });

/** On paper these take a sheet more: money from outside and several golfers to tell of, or a correction. */
const sheetMore = /(fairway-woods-two-golfers|three-irons-after-work)/;

describe.each(allOr(reportPages, twoReports))('$name', ({ address }) => {
  test('a phone shows answer and interest whole before anything else, then the chart', async () => {
    const page = await openPage(browser, address, { width: phone.width, height: phone.bars });
    const { interest, chart } = await page.evaluate(() => ({
      interest: document.querySelector('#interest')?.getBoundingClientRect().bottom ?? Infinity,
      chart: document.querySelector('.first figure')?.getBoundingClientRect().top ?? Infinity,
    }));
    expect(interest).toBeLessThanOrEqual(phone.bars);
    expect(chart).toBeLessThanOrEqual(phone.height);
    await page.close();
  });

  test('a laptop shows the whole chart beside the answer', async () => {
    const page = await openPage(browser, address, laptop);
    const { left, bottom } = await page.evaluate(() => {
      const drawings = [...document.querySelectorAll('.first figure svg')].map((svg) =>
        svg.getBoundingClientRect(),
      );
      const shown = drawings.find(({ width }) => width > 0);
      return { left: shown?.left ?? 0, bottom: shown?.bottom ?? Infinity };
    });
    expect(bottom).toBeLessThanOrEqual(laptop.height);
    expect(left).toBeGreaterThan(laptop.width / 3);
    await page.close();
  });

  test('is short on a phone: eight screens, four folds of different names, the table within the third screen', async () => {
    const page = await openPage(browser, address, { width: phone.width, height: phone.height });
    const { height, table, folds } = await page.evaluate(() => ({
      height: document.documentElement.scrollHeight,
      table: document.querySelector('#side-by-side')?.getBoundingClientRect().top ?? Infinity,
      folds: [...document.querySelectorAll('summary')].map((summary) =>
        (summary as HTMLElement).innerText.trim(),
      ),
    }));
    expect(new Set(folds).size).toBe(folds.length);
    expect(folds).not.toContain('');
    const bars = await barsOf(page);
    if (bars !== null) {
      expect(table).toBeLessThanOrEqual(bars.table * phone.height);
      expect(height).toBeLessThanOrEqual(8 * phone.height);
      expect(folds.length).toBeLessThanOrEqual(4);
    }
    await page.close();
  });

  test.each(['A4', 'Letter'] as const)(
    'prints on three sheets of %s, up to five where it compares more',
    async (format) => {
      const page = await openPage(browser, address, laptop);
      const pdf = Buffer.from(await page.pdf({ format })).toString('latin1');
      const sheets = pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0;
      expect(sheets).toBeGreaterThan(0);
      const bars = await barsOf(page);
      const more = sheetMore.test(address) ? 1 : 0;
      if (bars !== null) expect(sheets).toBeLessThanOrEqual(bars.sheets + more);
      await page.close();
    },
  );
});

describe('what only a phone folds', () => {
  const [{ address } = { address: '' }] = reportPages;
  const looked = async (width: number, script: boolean) => {
    const page = await openPage(browser, address, { width, script });
    const folds = await page.$$eval('details.phone-fold', (all) =>
      all.map((fold) => ({
        open: (fold as HTMLDetailsElement).open,
        reachable: (fold.querySelector('summary') as HTMLElement).tabIndex >= 0,
        shows: [...fold.children].slice(1).some((child) => child.checkVisibility()),
      })),
    );
    await page.close();
    return folds;
  };

  test('is closed there and can be opened by keyboard', async () => {
    const folds = await looked(390, true);
    expect(folds.length).toBeGreaterThan(1);
    for (const fold of folds) expect(fold).toEqual({ open: false, reachable: true, shows: false });
  });

  test('is whole on wider screens, and its heading is nothing to press', async () => {
    for (const fold of await looked(1280, true))
      expect(fold).toEqual({ open: true, reachable: false, shows: true });
  });

  test('is whole on wider screens without script too', async () => {
    for (const fold of await looked(1280, false)) expect(fold.shows).toBe(true);
  });
});
