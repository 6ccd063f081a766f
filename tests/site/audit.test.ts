import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { serveFolder, type StaticServer } from '../../src/commands/staticServer.ts';
import { faultsOf, type Fault } from './audit.ts';
import { launch, patience } from './browser.ts';
import { byPa11y, type ByPa11y } from './byPa11y.ts';

/** What a page gets that somebody could have written, by what is wrong with it. */
const wrong: Readonly<Record<string, (page: string) => string>> = {
  'no language': (page) => page.replace(/(<html[^>]*) lang="[^"]*"/, '$1'),
  'a picture that says nothing': (page) => page.replace('</main>', '<img src="/icon.svg"></main>'),
  'a field without a name': (page) => page.replace('</main>', '<input type="text"></main>'),
  'a link without words': (page) => page.replace('</main>', '<p><a href="/about/"></a></p></main>'),
  'words too pale': (page) =>
    page.replace('</main>', '<p style="color:#8a8a8a;background:#fff">Eight yards farther.</p></main>'),
  'words too pale in the dark theme': (page) =>
    page.replace(
      '</main>',
      '<style>@media (prefers-color-scheme:dark){.x{color:#555;background:#111}}</style><p class="x">Eight yards farther.</p></main>',
    ),
  'a link that is told by its colour': (page) =>
    page.replace(
      '</main>',
      '<p style="color:#000;background:#fff">Eight <a href="/about/" style="color:#222;text-decoration:none">yards</a> farther.</p></main>',
    ),
  'a table whose cell names a heading that is not there': (page) =>
    page.replace(
      '</main>',
      '<table><tr><th id="a">Head</th><th id="b">Carry</th></tr><tr><td headers="a">Alder</td><td headers="c">230</td></tr></table></main>',
    ),
};

const names = Object.keys(wrong);
const folder = resolve('.cache/test-audit');
const pathOf = (name: string): string => `/${names.indexOf(name)}/`;

let server: StaticServer;
let browser: Browser;
let found: readonly ByPa11y['faults'][number][];

beforeAll(async () => {
  const site = inject('siteFolder');
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  for (const own of ['_astro', 'icon.svg']) cpSync(join(site, own), join(folder, own), { recursive: true });
  const whole = readFileSync(join(site, 'about/index.html'), 'utf8').replace(
    /<meta http-equiv="content-security-policy"[^>]*>/i,
    '',
  );
  for (const [name, spoil] of Object.entries(wrong)) {
    const page = spoil(whole);
    expect(page).not.toBe(whole);
    mkdirSync(join(folder, pathOf(name)));
    writeFileSync(join(folder, pathOf(name), 'index.html'), page);
  }
  server = await serveFolder({ folder });
  const addresses = names.map((name) => server.origin + pathOf(name));
  found = [...(await byPa11y(addresses, 'light')).faults, ...(await byPa11y(addresses, 'dark')).faults];
  browser = await launch();
});

afterAll(async () => {
  await browser.close();
  await server.close();
});

const inTheme = ({ theme, runner, code }: Fault): string => `${theme} ${runner} ${code}`;
const ofColours = ['color-contrast', 'link-in-text-block'];

test.each(names)('%s is found as by pa11y', async (name) => {
  const address = server.origin + pathOf(name);
  const tab = await browser.newPage();
  tab.setDefaultTimeout(patience);
  await tab.setViewport({ width: 1280, height: 1024 });
  await tab.goto(address, { waitUntil: 'load' });
  const own = await faultsOf(tab);
  await tab.close();
  const byOthers = found.filter((fault) => fault.address === address);
  // What has nothing to do with colours axe is asked in the light theme only.
  const twice = ({ theme, runner, code }: Fault): boolean =>
    theme === 'dark' && runner === 'axe' && !ofColours.includes(code);
  expect(own.length).toBeGreaterThan(0);
  expect(own.map(inTheme).sort()).toEqual(
    byOthers
      .filter((fault) => !twice(fault))
      .map(inTheme)
      .sort(),
  );
  // Nothing that pa11y finds in the dark theme alone is left out.
  const told = new Set(own.map(({ code }) => code));
  expect(byOthers.filter(({ code }) => !told.has(code))).toEqual([]);
});

test('what is seen in one theme only stops the audit', async () => {
  const tab = await browser.newPage();
  await tab.setContent(
    '<style>@media (prefers-color-scheme:dark){p{visibility:hidden}}</style><p>Eight yards farther.</p>',
  );
  await expect(faultsOf(tab)).rejects.toThrow('the themes do not show the same elements');
  await tab.close();
});
