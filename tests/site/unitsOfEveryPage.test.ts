import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseHTML } from 'linkedom';
import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launch } from './browser.ts';
import { openPage } from './openPage.ts';
import { everyPage, type BuiltPage } from './sites.ts';

// "A 200-yard shot" is how the shop put its question.
const words = {
  yards: /(?<!\d-)\b(yards?|yds?|mph|miles|feet|foot|ft)\b/gi,
  metres: /\b(metres?|km\/h|kilometres)\b|\(m\)/gi,
} as const;
type System = keyof typeof words;

const kinds: readonly (readonly [kind: string, file: RegExp])[] = [
  ['front page', /^index\.html$/],
  ['list of a kind', /^kinds\//],
  ['report', /^reports\/[^/]+\/index\.html$/],
  ['details', /\/details\/index\.html$/],
  ['kit', /\/kit\/index\.html$/],
  ['sheet', /\/sheet\/index\.html$/],
  ['embedded chart', /\/embed\/[^/]+\/index\.html$/],
  ['pair', /^pairs\//],
  ['contender', /^contenders\//],
  ['method', /^method\//],
  ['glossary', /^glossary\//],
  ['about', /^about\//],
  ['no such page', /^404\.html$/],
  ['component', /^specimens\//],
];
const kindOf = ({ file }: BuiltPage): string => kinds.find(([, pattern]) => pattern.test(file))?.[0] ?? file;

/**
 * The words of a page as they are with the copies in one system of units, less what the shop wrote itself, what
 * describes an image that has units of its own, and the note that says so.
 */
function told({ folder, file }: BuiltPage, system: System): string {
  const { document } = parseHTML(readFileSync(join(folder, file), 'utf8'));
  const not = system === 'yards' ? 'metres' : 'yards';
  const gone = `[data-units="${not}"], [data-authored], [data-image-units], [data-file-words], .lede, #corrections, .disclosure, script`;
  for (const element of document.querySelectorAll(gone)) element.remove();
  const main = document.querySelector('main');
  for (const block of main?.querySelectorAll('p, li, td, th, dd, dt, h1, h2, h3, text, tspan') ?? [])
    block.append(' ');
  // What a yard is, and how either system is rounded, stays as it is in either.
  return [
    'A yard is 0.9144 metres, a foot 0.3048 metres, and a mile an hour 0.44704 metres a second',
    'Yards and metres are each rounded',
    'whole yards or metres',
  ].reduce((text, fixed) => text.replace(fixed, ''), main?.textContent ?? '');
}

const twice = (page: BuiltPage): boolean =>
  readFileSync(join(page.folder, page.file), 'utf8').includes('data-units=');
const counts = (text: string, system: System): number => text.match(words[system])?.length ?? 0;

// Its subject is these words; a specimen stands in whatever its example says.
const pages = everyPage.filter((page) => !['glossary', 'component'].includes(kindOf(page)));

test('every kind of page that prints such numbers has some in both systems', () => {
  expect([...new Set(everyPage.map(kindOf))].sort()).toEqual(kinds.map(([kind]) => kind).sort());
  expect([...new Set(pages.filter(twice).map(kindOf))].sort()).toEqual(
    [
      ...['contender', 'details', 'embedded chart', 'front page', 'kit', 'list of a kind', 'method'],
      ...['pair', 'report', 'sheet'],
    ].sort(),
  );
});

describe.each(pages)('$name', (page) => {
  test('is in one system of units at a time, and says as much in either', () => {
    const [yards, metres] = [told(page, 'yards'), told(page, 'metres')];
    expect(yards.match(words.metres) ?? []).toEqual([]);
    expect(metres.match(words.yards) ?? []).toEqual([]);
    expect(counts(yards, 'yards') > 0).toBe(counts(metres, 'metres') > 0);
  });
});

describe('one page of each kind in a browser', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => browser.close());

  const one = [...Map.groupBy(pages.filter(twice), kindOf)].map(([kind, own]) => ({
    kind,
    page: own.at(-1) ?? own[0],
  }));

  test.each(one)('$kind: one button switches all of it there and back', async ({ page: built }) => {
    const context = await browser.createBrowserContext();
    const page = await openPage(context, built?.address ?? '', { width: 390 });
    const shown = (): Promise<readonly (string | undefined)[]> =>
      page.$$eval('[data-units]', (all) => [
        ...new Set(
          all
            .filter((element) => getComputedStyle(element).display !== 'none')
            .map((element) => (element as HTMLElement).dataset['units']),
        ),
      ]);
    const own = await page.$eval('#units', (place) => (place as HTMLElement).dataset['own']);
    const other = own === 'yards' ? 'metres' : 'yards';
    expect(await shown()).toEqual([own]);
    expect(await page.$$eval('#units button', (all) => all.map(({ textContent }) => textContent))).toEqual([
      `In ${other}`,
    ]);
    await page.click('#units button');
    expect(await shown()).toEqual([other]);
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow).toBeLessThanOrEqual(0);
    expect(
      await page.$eval('#units button', (button) => button.getBoundingClientRect().height),
    ).toBeGreaterThanOrEqual(44);
    await page.click('#units button');
    expect(await shown()).toEqual([own]);
    await context.close();
  });

  test('a page on which nothing differs has no button', async () => {
    const same = everyPage.find(
      (page) => page.file.startsWith('specimens/') && page.file.includes('UnitsSwitch') && !twice(page),
    );
    const context = await browser.createBrowserContext();
    const page = await openPage(context, same?.address ?? '', { width: 390 });
    expect(await page.$$eval('#units', (all) => all.length)).toBe(1);
    expect(await page.$$eval('#units button', (all) => all.length)).toBe(0);
    await context.close();
  });

  test('an editor copies the words of the units that are shown', async () => {
    // Its caption has numbers with units: the cause of its difference is not in doubt.
    const kit = pages.find((page) => page.name.startsWith('demo/reports/three-balls-one-iron/kit/'));
    const context = await browser.createBrowserContext();
    const page = await openPage(context, kit?.address ?? '', { width: 768 });
    await page.evaluate(() => {
      Object.defineProperty(navigator, 'clipboard', {
        value: { writeText: (text: string) => Promise.resolve(void (document.title = text)) },
      });
    });
    const copied = async (): Promise<string> => {
      await page.$$eval('details', (all) => all.forEach((details) => (details.open = true)));
      const buttons = await page.$$('[data-copy^="caption of 600"] + button');
      for (const button of buttons) if (await button.isVisible()) await button.click();
      return page.title();
    };
    expect(await copied()).toMatch(/\d yards/);
    await page.click('#units button');
    expect(await copied()).toMatch(/\d metres/);
    expect(await page.$eval('.lede + .lede', (note) => (note as HTMLElement).innerText)).toContain(
      'Images, their alternative texts and the files stay in yards unless they say otherwise',
    );
    await context.close();
  });
});
