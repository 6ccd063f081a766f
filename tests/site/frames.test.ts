import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseHTML } from 'linkedom';
import type { Browser, Frame, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { serveFolder, type StaticServer } from '../../src/commands/staticServer.ts';
import { launch } from './browser.ts';
import { openPage } from './openPage.ts';
import { useOwnFonts } from './ownFonts.ts';
import { htmlFiles } from './pages.ts';

const folder = inject('siteFolder');
const site = inject('siteAddress');
const kits = htmlFiles(folder).filter((file) => file.endsWith('/kit/index.html'));

/** Code as an editor copies it, of every chart of a report, with the address under which the site is served here. */
const codesOf = (kit: string): readonly string[] =>
  [
    ...parseHTML(readFileSync(join(folder, kit), 'utf8')).document.querySelectorAll(
      '[data-copy="code of the frame"]',
    ),
  ].map((code) => (code.textContent ?? '').replace('https://example.test', site));

const hosts = resolve('.cache/test-kit/hosts');
const browsers: Partial<Record<'light' | 'dark', Browser>> = {};
let host: StaticServer;

beforeAll(async () => {
  rmSync(hosts, { recursive: true, force: true });
  mkdirSync(hosts, { recursive: true });
  host = await serveFolder({ folder: hosts });
  browsers.light = await launch();
  browsers.dark = await launch({ dark: true });
});

afterAll(async () => {
  await Promise.all([browsers.light?.close(), browsers.dark?.close(), host.close()]);
});

/** A page of somebody else, from another origin, that shows one chart. */
async function hostPage(
  code: string,
  { width, name, dark = false }: { readonly width: number; readonly name: string; readonly dark?: boolean },
): Promise<{ readonly page: Page; readonly frame: Frame }> {
  const browser = dark ? browsers.dark : browsers.light;
  if (browser === undefined) throw new Error('no browser');
  mkdirSync(join(hosts, name), { recursive: true });
  writeFileSync(
    join(hosts, name, 'index.html'),
    `<!doctype html><title>Host</title><body style="margin: 0; background: white">${code}<p>After it.</p>`,
  );
  const page = await openPage(browser, `${host.origin}/${name}/`, { width, height: 500 });
  const element = await page.waitForSelector('iframe');
  const frame = await element?.contentFrame();
  if (frame === undefined || frame === null) throw new Error('no frame');
  await frame.waitForSelector('svg.chart');
  // The button for the units comes by script, and makes the frame higher.
  if ((await frame.$('[data-units]')) !== null) await frame.waitForSelector('#units button');
  await frame.evaluate(() => document.fonts.ready.then(() => undefined));
  return { page, frame };
}

/** How the frame and what is in it fit, px, once nothing moves. */
async function fit(page: Page, frame: Frame) {
  // Messages and fonts come when they come; a frame that never fits is told by the test.
  const settled = async (): Promise<readonly [number, number]> => [
    await page.$eval('iframe', ({ clientHeight }) => clientHeight),
    await frame.evaluate(() => document.body.getBoundingClientRect().height),
  ];
  for (let look = 0; look < 20; look += 1) {
    const [height, content] = await settled();
    if (Math.abs(height - content) <= 2) break;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  const [height, content] = await settled();
  const inside = await frame.evaluate(() => {
    const { scrollWidth, scrollHeight, clientWidth, clientHeight } = document.documentElement;
    const shown = [...document.querySelectorAll('svg.chart')].find(
      (svg) => svg.getBoundingClientRect().width > 0,
    );
    const { left = 0, right = 0 } = shown?.getBoundingClientRect() ?? {};
    return {
      overX: scrollWidth - clientWidth,
      overY: scrollHeight - clientHeight,
      scrollbar: innerWidth - clientWidth,
      left,
      right: innerWidth - right,
    };
  });
  return { height, content, ...inside };
}

const widths = [320, 392, 600, 711, 900];

describe.each(kits)('frames of %s', (kit) => {
  const codes = codesOf(kit);

  test('each chart has one to paste', () => {
    expect(codes.length).toBeGreaterThan(3);
  });

  test('have neither scroll bar nor blank in another page, at any usual width', async () => {
    const [code = ''] = codes;
    const { page, frame } = await hostPage(code, { width: 600, name: kit.split('/')[1] ?? '' });
    for (const width of widths) {
      await page.setViewport({ width, height: 500 });
      const { height, content, overX, overY, scrollbar, left, right } = await fit(page, frame);
      expect(Math.abs(height - content), `blank at ${width}`).toBeLessThanOrEqual(2);
      expect({ overX, overY, scrollbar }, `scroll bars at ${width}`).toEqual({
        overX: 0,
        overY: 0,
        scrollbar: 0,
      });
      // The drawing stands in the middle, with less beside it than a quarter of the frame.
      expect(Math.abs(left - right), `off the middle at ${width}`).toBeLessThanOrEqual(1);
      expect((left + right) / width, `empty beside the drawing at ${width}`).toBeLessThan(0.25);
    }
    await page.close();
  });
});

describe('every chart of two reports, where the page around it has no script', () => {
  const all = kits.filter((kit) => /inch-off|eight-golfers/.test(kit)).flatMap(codesOf);

  test.each([320, 600, 900])('fits the height that is said for a width of %i', async (width) => {
    const browser = browsers.light;
    if (browser === undefined) throw new Error('no browser');
    expect(all.length).toBeGreaterThan(12);
    for (const code of all) {
      const src = /src="([^"]+)"/.exec(code)?.[1] ?? '';
      const kit = join(folder, new URL(src).pathname.replace(/embed\/[^/]+\/$/, 'kit/index.html'));
      const item = [...parseHTML(readFileSync(kit, 'utf8')).document.querySelectorAll('.kit-item')].find(
        (one) => one.textContent?.includes(new URL(src).pathname),
      );
      const said = new RegExp(`(\\d+) px at a width of ${width}`).exec(
        (item?.textContent ?? '').replaceAll(/\s+/g, ' '),
      )?.[1];
      const page = await openPage(browser, src, { width, height: 500 });
      await useOwnFonts(page);
      const height = await page.evaluate(() => document.body.getBoundingClientRect().height);
      expect(Number(said), src).toBeGreaterThanOrEqual(height);
      expect(Number(said), src).toBeLessThan(height + 130);
      await page.close();
    }
  });
});

describe('a frame', () => {
  const [code = ''] = codesOf(kits.find((kit) => kit.includes('three-balls')) ?? '');
  const asked = (query: string): string => code.replace('/embed/apart/', `/embed/apart/${query}`);
  const ground = (frame: Frame): Promise<string> =>
    frame.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  const [light, dark] = ['rgb(250, 248, 242)', 'rgb(22, 25, 29)'];

  test.each([
    ['', false, light],
    ['', true, light],
    ['?theme=light', true, light],
    ['?theme=dark', false, dark],
    ['?theme=auto', false, light],
    ['?theme=auto', true, dark],
  ] as const)(
    'with "%s" has its ground, whether the device is dark (%s) or not',
    async (query, isDark, expected) => {
      const { page, frame } = await hostPage(asked(query), { width: 600, name: 'theme', dark: isDark });
      expect(await ground(frame)).toBe(expected);
      const { height, content } = await fit(page, frame);
      expect(Math.abs(height - content)).toBeLessThanOrEqual(2);
      await page.close();
    },
  );

  test('is in the units that its address asks for, and follows a reader who changes them', async () => {
    const { page, frame } = await hostPage(asked('?units=metres'), { width: 600, name: 'units' });
    const words = (): Promise<string> => frame.$eval('h1', (heading) => heading.innerText);
    expect(await words()).toContain('metres');
    expect(await words()).not.toContain('yards');
    await frame.click('#units button');
    expect(await words()).toContain('yards');
    const { height, content, overY } = await fit(page, frame);
    expect(Math.abs(height - content)).toBeLessThanOrEqual(2);
    expect(overY).toBe(0);
    await page.close();
  });

  test('grows with the numbers that a reader unfolds', async () => {
    const { page, frame } = await hostPage(code, { width: 600, name: 'unfolded' });
    const { height: before } = await fit(page, frame);
    await frame.click('summary');
    const { height, content, overY } = await fit(page, frame);
    expect(height).toBeGreaterThan(before + 100);
    expect(Math.abs(height - content)).toBeLessThanOrEqual(2);
    expect(overY).toBe(0);
    await page.close();
  });

  test('says what it found, every caution and the interest', async () => {
    const { page, frame } = await hostPage(code, { width: 600, name: 'words' });
    const words = await frame.$eval('main', (main) => main.innerText);
    for (const part of [
      'Heron carried farther',
      'Invented data.',
      'Carry was calculated',
      'save Heron, which its distributor lent us. We paid for the test.',
      'Nobody outside the shop saw it before publication.',
    ])
      expect(words).toContain(part);
    await page.close();
  });

  test('the script of its code leaves alone what other frames say', async () => {
    const { page, frame } = await hostPage(code, { width: 600, name: 'others' });
    const { height } = await fit(page, frame);
    await page.evaluate(() => window.postMessage({ name: 'straightface:height', px: 9 }, '*'));
    await page.evaluate(() => window.postMessage('something else', '*'));
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(await page.$eval('iframe', ({ clientHeight }) => clientHeight)).toBe(height);
    await page.close();
  });

  test('stands without any script, light and in the units of the shop', async () => {
    const browser = browsers.dark;
    if (browser === undefined) throw new Error('no browser');
    const page = await openPage(
      browser,
      `${site}/reports/three-balls-one-iron/embed/apart/?theme=dark&units=metres`,
      {
        width: 600,
        script: false,
      },
    );
    expect(await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)).toBe(light);
    expect(await page.$eval('h1', (heading) => heading.innerText)).toContain('yards');
    await page.close();
  });
});
