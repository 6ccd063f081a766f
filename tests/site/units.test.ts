import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, inject, test } from 'vitest';
import { allOr } from '../everyday.ts';
import { launch } from './browser.ts';
import { htmlFiles, pathOf } from './pages.ts';

const folder = inject('siteFolder');
const reports = htmlFiles(folder).filter((file) => /^reports\/[^/]+\/index\.html$/.test(file));
let browser: Browser;
let visitor: BrowserContext;

beforeAll(async () => {
  browser = await launch();
});
beforeEach(async () => {
  visitor = await browser.createBrowserContext();
});
afterEach(() => visitor.close());
afterAll(() => browser.close());

async function visit(file: string, width = 768): Promise<Page> {
  const page = await visitor.newPage();
  await page.setViewport({ width, height: 900 });
  await page.goto(inject('siteAddress') + pathOf(file), { waitUntil: 'load' });
  return page;
}

const words = {
  yards: /(?<!\d-)\b(yards?|yds?|mph|miles|feet|foot|ft)\b/gi,
  metres: /(?<!\d )\b(metres?|km\/h|kilometres)\b|\(m\)/gi,
} as const;

/** All that is shown, folded parts and charts included, less what the shop wrote itself and what names the units of files. */
async function shown(page: Page): Promise<string> {
  await page.$$eval('details', (all) => all.forEach((one) => (one.open = true)));
  return page.$eval('main', (main) => {
    const copy = main.cloneNode(true) as HTMLElement;
    for (const gone of copy.querySelectorAll(
      '[hidden], [display=none], [data-authored], h1, .lede, #corrections',
    ))
      gone.remove();
    return copy.textContent;
  });
}

describe.each(allOr(reports, reports.slice(0, 1)))('%s', (file) => {
  test('shows one system of units at a time, charts and folded tables included', async () => {
    const page = await visit(file);
    const yards = await shown(page);
    expect(yards.match(words.yards)?.length).toBeGreaterThan(1);
    expect(yards.match(words.metres) ?? []).toEqual([]);
    await page.click('#units button');
    const metres = await shown(page);
    expect(metres.match(words.metres)?.length).toBeGreaterThan(1);
    expect(metres.match(words.yards) ?? []).toEqual([]);
  });
});

describe('the choice of units', () => {
  const [file = ''] = reports;

  test('is a button that says whether it is pressed, told once in a live region', async () => {
    const page = await visit(file);
    const state = (): Promise<readonly (string | null)[]> =>
      page.$eval('#units', (place) => [
        place.querySelector('button')?.getAttribute('aria-pressed') ?? null,
        place.querySelector('[role=status]')?.textContent ?? null,
      ]);
    expect(await state()).toEqual(['false', '']);
    await page.focus('#units button');
    await page.keyboard.press('Space');
    expect(await state()).toEqual(['true', 'Now in metres and kilometres an hour.']);
    await page.keyboard.press('Enter');
    expect(await state()).toEqual(['false', 'Now in yards and miles an hour.']);
    const button = await page.$('#units button');
    if (button === null) throw new Error('There is no button.');
    const named = await page.accessibility.snapshot({ root: button });
    expect([named?.role, named?.name]).toEqual(['button', 'In metres']);
  });

  test('is reached by Tab before the content, and is 44 px high', async () => {
    const page = await visit(file, 390);
    const passed: string[] = [];
    for (let press = 0; press < 5; press++) {
      await page.keyboard.press('Tab');
      passed.push(await page.evaluate(() => document.activeElement?.textContent?.trim() ?? ''));
    }
    expect(passed).toContain('In metres');
    expect(
      await page.$eval('#units button', (button) => button.getBoundingClientRect().height),
    ).toBeGreaterThanOrEqual(44);
  });

  test('is kept for the next report, and said to nobody who did not ask', async () => {
    const first = await visit(file);
    await first.click('#units button');
    const next = await visit(reports[1] ?? '');
    expect(await next.$eval('#units button', (button) => button.getAttribute('aria-pressed'))).toBe('true');
    expect(await next.$eval('#units [role=status]', (status) => status.textContent)).toBe('');
  });

  test('works for a page where the browser keeps no storage', async () => {
    const page = await visitor.newPage();
    await page.evaluateOnNewDocument(() =>
      Object.defineProperty(window, 'localStorage', {
        get: () => {
          throw new DOMException('refused', 'SecurityError');
        },
      }),
    );
    await page.goto(inject('siteAddress') + pathOf(file), { waitUntil: 'load' });
    await page.click('#units button');
    expect(await page.$eval('#units button', (button) => button.getAttribute('aria-pressed'))).toBe('true');
  });

  test('is not there without script, and nothing is missing: the page is in the units of the shop', () => {
    const page = readFileSync(join(folder, file), 'utf8');
    expect(page).toMatch(/<div id="units"[^>]*><\/div>/);
    const copies = [...page.matchAll(/data-units="(yards|metres)"( hidden| display="none")?/g)];
    expect(copies.length).toBeGreaterThan(10);
    for (const [, system, hidden] of copies) expect(hidden === undefined).toBe(system === 'yards');
  });

  test('leaves the one-file edition, which has no script, in one system', () => {
    const edition = readFileSync(join(folder, file.replace('index.html', 'report.html')), 'utf8');
    expect(edition).not.toContain('data-units="metres"');
    expect(edition).toContain('data-units="yards"');
  });
});
