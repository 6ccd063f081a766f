import type { Browser, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { allOr } from '../everyday.ts';
import { launch } from './browser.ts';
import { demoPages } from './sites.ts';

const screens = [
  { width: 390, height: 844 },
  { width: 1280, height: 800 },
] as const;

/** Bytes a second and ms: on the first fonts come with the page, on the second long after it was first painted. */
const lines = [
  { line: 'a slow line', downloadThroughput: (1.6 * 1024 * 1024) / 8, latency: 150 },
  { line: 'a very slow line', downloadThroughput: (400 * 1024) / 8, latency: 400 },
] as const;

const cases = lines.flatMap((line) => screens.map((screen) => ({ ...line, ...screen })));
const pages = demoPages.filter(({ file }) =>
  ['index.html', 'method/index.html', 'reports/three-balls-one-iron/index.html'].includes(file),
);

interface Shift {
  /** Share of the screen that moved, times how far (Layout Instability API). */
  readonly value: number;
  readonly moved: readonly string[];
}

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

/** A page as a new reader gets it: nothing cached, a processor a quarter as fast, a poor line. */
async function slowPage({
  width,
  height,
  downloadThroughput,
  latency,
}: (typeof cases)[number]): Promise<Page> {
  const page = await browser.newPage();
  await page.setCacheEnabled(false);
  await page.setViewport({ width, height });
  const session = await page.createCDPSession();
  await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  await session.send('Network.enable');
  await session.send('Network.emulateNetworkConditions', {
    offline: false,
    latency,
    downloadThroughput,
    uploadThroughput: downloadThroughput,
  });
  await page.evaluateOnNewDocument(() => {
    const shifts: Shift[] = [];
    Object.assign(globalThis, { shifts });
    type Entry = PerformanceEntry & { value: number; sources: readonly { node: Node | null }[] };
    new PerformanceObserver((list) => {
      for (const { value, sources } of list.getEntries() as Entry[])
        shifts.push({
          value,
          moved: sources.map(({ node }) => node?.textContent?.trim().slice(0, 40) ?? ''),
        });
    }).observe({ type: 'layout-shift', buffered: true });
  });
  return page;
}

const shiftsOf = (page: Page): Promise<readonly Shift[]> =>
  page.evaluate(() => (globalThis as unknown as { shifts: Shift[] }).shifts);

/** All fonts there or given up, and a moment for what a late one would move. */
async function settled(page: Page): Promise<void> {
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  await new Promise((done) => setTimeout(done, 500));
}

test('three pages are tried', () => expect(pages).toHaveLength(3));

describe.each(allOr(pages, pages.slice(-1)))('$name', ({ address }) => {
  test.each(allOr(cases, cases.slice(-2, -1)))(
    'moves nothing while it comes over $line at $width px',
    async (screen) => {
      const page = await slowPage(screen);
      await page.goto(address, { waitUntil: 'networkidle0', timeout: 120_000 });
      await settled(page);
      expect(await shiftsOf(page)).toEqual([]);
      // What moves later is seen: the observer works.
      await page.evaluate(() => document.querySelector('main')?.before(document.createElement('hr')));
      await settled(page);
      expect(await shiftsOf(page)).not.toEqual([]);
      await page.close();
    },
  );
});
