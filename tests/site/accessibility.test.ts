import { statSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { allOr, firstOfEach, isEveryday } from '../everyday.ts';
import { faultsOf } from './audit.ts';
import { launch, patience } from './browser.ts';
import { byPa11y } from './byPa11y.ts';
import { templateOf } from './pages.ts';
import { allPages, oddPages } from './sites.ts';

const every = [...allPages, ...oddPages];
const pages = allOr(
  every,
  firstOfEach(every, ({ file }) => templateOf(file)),
);

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

/** WCAG 2.1 AA by axe-core and by HTML_CodeSniffer on every page that was built, none left out. */
test('no page has an error by one of both runners, in either theme', async () => {
  expect(every.length).toBeGreaterThan(80);
  expect(pages.length).toBeGreaterThan(14);
  const open = [...pages];
  const audited: string[] = [];
  const found: object[] = [];
  const inTab = async (): Promise<void> => {
    const tab = await browser.newPage();
    tab.setDefaultTimeout(patience);
    await tab.setViewport({ width: 1280, height: 1024 });
    for (let next = open.shift(); next !== undefined; next = open.shift()) {
      const { address, name } = next;
      await tab.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: 'light' }]);
      await tab.goto(address, { waitUntil: 'load' });
      found.push(...(await faultsOf(tab)).map((fault) => ({ name, ...fault })));
      audited.push(tab.url());
    }
    await tab.close();
  };
  await Promise.all([inTab(), inTab()]);
  expect(found).toEqual([]);
  expect(audited.sort()).toEqual(pages.map(({ address }) => address).sort());
});

/** The whole way of pa11y-ci, with its own browser, on the shortest page of each template. */
test.skipIf(isEveryday)('pa11y-ci passes a page of every template in both themes', async () => {
  const size = ({ folder, file }: (typeof pages)[number]): number => statSync(join(folder, file)).size;
  const ofEach = [...Map.groupBy(pages, ({ file }) => templateOf(file)).values()].flatMap((alike) =>
    alike.toSorted((x, y) => size(x) - size(y)).slice(0, 1),
  );
  expect(ofEach.length).toBeGreaterThanOrEqual(14);
  const addresses = ofEach.map(({ address }) => address);
  for (const theme of ['light', 'dark'] as const)
    expect(await byPa11y(addresses, theme), theme).toEqual({ audited: addresses.toSorted(), faults: [] });
});
