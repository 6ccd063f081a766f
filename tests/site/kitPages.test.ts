import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { serveFolder } from '../../src/commands/staticServer.ts';
import { oddBase } from '../kit/oddReports.ts';
import { sixHeads, sixHeadsSlug } from '../kit/sixHeads.ts';
import { launch } from './browser.ts';
import { builtUnder } from './kitFolder.ts';
import { editionFiles, htmlFiles, pathOf } from './pages.ts';

const folder = inject('siteFolder');
const read = (file: string): string => readFileSync(join(folder, file), 'utf8');
const kits = htmlFiles(folder).filter((file) => file.endsWith('/kit/index.html'));
const sheets = htmlFiles(folder).filter((file) => file.endsWith('/sheet/index.html'));
const oneFiles = editionFiles(folder).filter((file) => file.endsWith('/report.html'));
let browser: Browser;

beforeAll(async () => {
  browser = await launch();
});

afterAll(() => browser.close());

test('every published report has its kit, sheet and one-file edition', () => {
  const reports = htmlFiles(folder).filter((file) => /^reports\/[^/]+\/index\.html$/.test(file));
  expect(reports.length).toBeGreaterThan(3);
  for (const pages of [kits, sheets, oneFiles]) expect(pages.length).toBe(reports.length);
});

test.each(kits)('%s opens with the chart to take, terms and credit after it, then the others', (file) => {
  const headings = [...read(file).matchAll(/<h2 id="([^"]+)"/g)].map((match) => match[1]);
  expect(headings.slice(0, 2)).toEqual(['first', 'reuse']);
  expect(headings.length).toBeGreaterThan(3);
});

/** Pages of the reports that try the kit, as served in a folder of their host. */
const oddFolder = join(inject('oddRoot'), oddBase);
const oddFiles = htmlFiles(oddFolder);
const addressOf = (root: string, file: string): string =>
  root === folder
    ? inject('siteAddress') + pathOf(file)
    : `${inject('oddAddress')}/${oddBase}${pathOf(file)}`;
const ofBoth = (own: readonly string[], end: string): (readonly [name: string, address: string])[] => [
  ...own.map((file) => [file, addressOf(folder, file)] as const),
  ...oddFiles.filter((file) => file.endsWith(end)).map((file) => [file, addressOf(oddFolder, file)] as const),
];

describe.each(ofBoth(kits, '/kit/index.html'))('%s', (_file, address) => {
  test('shows every image it offers, and says without script all that it says with it', async () => {
    const texts: string[] = [];
    for (const script of [true, false]) {
      const page = await browser.newPage();
      await page.setJavaScriptEnabled(script);
      await page.goto(address, { waitUntil: 'load' });
      const images = await page.evaluate(() =>
        [...document.images].map(({ naturalWidth, alt }) => ({ naturalWidth, alt })),
      );
      expect(images.length).toBeGreaterThan(1);
      for (const { naturalWidth, alt } of images) {
        expect(naturalWidth).toBe(1200);
        expect(alt.length).toBeGreaterThan(60);
      }
      const buttons = await page.$$eval('article button', (all) => all.length);
      const copyable = await page.$$eval('[data-copy]', (all) => all.length);
      expect(buttons).toBe(script ? copyable : 0);
      expect(copyable).toBeGreaterThan(5 * images.length);
      texts.push(
        await page.evaluate(() => {
          for (const button of document.querySelectorAll('button')) button.remove();
          return document.querySelector('main')?.innerText ?? '';
        }),
      );
      await page.close();
    }
    expect(texts[0]).toBe(texts[1]);
  });
});

test('a copy button copies its text, or says that the browser does not let it', async () => {
  const [file = ''] = kits;
  const page = await browser.newPage();
  await page.goto(inject('siteAddress') + pathOf(file), { waitUntil: 'load' });
  await page.evaluate(() => {
    Object.defineProperty(navigator, 'clipboard', {
      value: {
        writeText: (text: string) =>
          text.startsWith('How far')
            ? Promise.reject(new Error('no'))
            : Promise.resolve(void (document.title = text)),
      },
    });
  });
  const expected = await page.$eval('[data-copy^="caption"]', (text) => text.textContent);
  await page.click('[data-copy^="caption"] + button');
  expect(await page.title()).toBe(expected?.trim());
  const said = (): Promise<string | null> => page.$eval('#copied', (status) => status.textContent);
  expect(await said()).toBe('Copied.');
  await page.click('[data-copy^="alternative"] + button');
  expect(await said()).toBe('Not copied: select the text instead.');
  await page.close();
});

/** Pages of a PDF by Chromium: each has a page object of its own (ISO 32000-1, 7.7.3.3). */
const pagesOf = (pdf: Uint8Array): number =>
  Buffer.from(pdf)
    .toString('latin1')
    .match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;

describe.each(ofBoth(sheets, '/sheet/index.html'))('%s', (file, address) => {
  test.each(['A4', 'Letter'] as const)('is one printed side of %s', async (format) => {
    const page = await browser.newPage();
    await page.goto(address, { waitUntil: 'load' });
    expect(pagesOf(await page.pdf({ format }))).toBe(1);
    await page.close();
  });

  test.each([
    ['A4', 210, 297],
    ['Letter', 215.9, 279.4],
  ] as const)('fills its side of %s', async (_format, widthMm, heightMm) => {
    const page = await browser.newPage();
    await page.goto(address, { waitUntil: 'load' });
    await page.emulateMediaType('print');
    // Margins of 10 mm above and below and 14 mm at the sides, as the style sheet has them.
    const px = (mm: number): number => Math.floor((mm / 25.4) * 96);
    await page.setViewport({ width: px(widthMm - 28), height: px(heightMm - 20) });
    const { parts, bottom } = await page.$eval('.sheet', (sheet) => ({
      parts:
        [...sheet.children].reduce((sum, part) => sum + part.getBoundingClientRect().height, 0) / innerHeight,
      bottom: sheet.getBoundingClientRect().bottom / innerHeight,
    }));
    // What is left is air between the parts; a sheet without a chart has more of it.
    expect(parts).toBeGreaterThan(file.includes('four-shots-each') ? 0.6 : 0.7);
    expect(bottom).toBeGreaterThan(0.97);
    expect(bottom).toBeLessThanOrEqual(1);
    await page.close();
  });

  test('has answer, interest, chart, what is not recorded, address and QR code, black on white', async () => {
    const page = await browser.newPage();
    await page.goto(address, { waitUntil: 'load' });
    await page.emulateMediaType('print');
    const words = await page.$eval('.sheet', (sheet) => (sheet as HTMLElement).innerText);
    expect(words).toContain('Our interest.');
    expect(words).toMatch(/Not recorded, \d+ of \d+\. [A-Z]|conditions of the list are recorded/);
    expect(words).toContain(
      `${oddFiles.includes(file) ? `golf.example/${oddBase}` : 'example.test'}/${file.replace(/\/sheet\/index\.html$/, '')}`,
    );
    const { ink, paper, qr, charts } = await page.evaluate(() => {
      const shown = (selector: string): number =>
        [...document.querySelectorAll(selector)].filter((one) => one.getBoundingClientRect().width > 0)
          .length;
      return {
        ink: getComputedStyle(document.body).color,
        paper: getComputedStyle(document.documentElement).backgroundColor,
        qr: shown('svg.qr'),
        charts: shown('.figure svg.chart'),
      };
    });
    expect({ ink, paper, qr, charts }).toEqual({
      ink: 'rgb(0, 0, 0)',
      paper: 'rgb(255, 255, 255)',
      qr: 1,
      // Where nothing could be judged there are no gaps to draw.
      charts: file.includes('four-shots-each') ? 0 : 1,
    });
    await page.close();
  });
});

describe.each(oneFiles)('%s', (file) => {
  test('is whole by itself: under 600 kB, asks for nothing, shows charts and fonts', async () => {
    expect(Buffer.byteLength(read(file))).toBeLessThan(600_000);
    const page = await browser.newPage();
    const trouble: string[] = [];
    const asked: string[] = [];
    page.on('console', (message) => trouble.push(message.text()));
    page.on('request', (request) => asked.push(request.url()));
    await page.setViewport({ width: 800, height: 900 });
    await page.setContent(read(file), { waitUntil: 'load' });
    expect(asked.filter((url) => !url.startsWith('data:') && url !== 'about:blank')).toEqual([]);
    expect(trouble).toEqual([]);
    await page.evaluate(() => document.fonts.ready);
    const { fonts, charts, sheet } = await page.evaluate(() => ({
      fonts: [...document.fonts].filter(({ status }) => status === 'loaded').map(({ family }) => family),
      charts: [...document.querySelectorAll('.chart-wide svg')].filter(
        (svg) => svg.getBoundingClientRect().width > 0,
      ).length,
      sheet: getComputedStyle(document.body).maxWidth,
    }));
    expect(fonts.join()).toContain('Literata');
    expect(charts).toBeGreaterThan(1);
    expect(sheet).toBe('1228px');
    await page.close();
  });

  test('says what its page says without script', async () => {
    const page = await browser.newPage();
    await page.setJavaScriptEnabled(false);
    await page.setViewport({ width: 800, height: 900 });
    const words: string[] = [];
    const own = pathOf(file.replace(/report\.html$/, 'index.html'));
    for (const address of [`/${file}`, own, `${own}details/`]) {
      await page.goto(inject('siteAddress') + address, { waitUntil: 'load' });
      words.push(
        await page.evaluate(() => {
          for (const details of document.querySelectorAll('details')) details.open = true;
          // The browser counts texts of a chart among the words even where they are not shown.
          for (const gone of document.querySelectorAll('svg [display=none]')) gone.remove();
          const part = document.querySelector<HTMLElement>('main > article [data-details]');
          return (part ?? document.querySelector('main'))?.innerText.trim() ?? '';
        }),
      );
    }
    const [edition = '', report = '', details = ''] = words;
    expect(report.length).toBeGreaterThan(2000);
    expect(details.length).toBeGreaterThan(2000);
    expect(edition.startsWith(report), 'the words of the page').toBe(true);
    expect(edition.endsWith(details), 'then those of its details').toBe(true);
    expect(edition.length - report.length - details.length, 'and a heading between').toBeLessThan(40);
    await page.close();
  });

  test('links to the published site only', () => {
    for (const [, address = ''] of read(file).matchAll(/<a\b[^>]*\shref="([^"#][^"]*)"/g))
      expect(address).toMatch(/^(https:\/\/example\.test\/|mailto:)/);
  });
});

test('charts stand at stable addresses, and pages to frame them', () => {
  for (const kit of kits) {
    const report = kit.replace(/kit\/index\.html$/, '');
    const charts = [...read(kit).matchAll(/<img src="\/([^"]+)\.png"/g)].map(([, path = '']) => path);
    expect(charts[0]).toBe(`${report}charts/apart`);
    for (const chart of charts) {
      expect(existsSync(join(folder, `${chart}.svg`))).toBe(true);
      expect(existsSync(join(folder, `${chart}.png`))).toBe(true);
      expect(existsSync(join(folder, `${chart.replace('/charts/', '/embed/')}/index.html`))).toBe(true);
    }
  }
});

test('a chart can be shown in a frame of another site', async () => {
  const [kit = ''] = kits;
  const embed = `${inject('siteAddress')}/${kit.replace('kit/index.html', 'embed/apart/')}`;
  const elsewhere = resolve('.cache/test-kit/elsewhere');
  mkdirSync(elsewhere, { recursive: true });
  writeFileSync(
    join(elsewhere, 'index.html'),
    `<!doctype html><title>Elsewhere</title><iframe src="${embed}" width="400" height="700" title="chart"></iframe>`,
  );
  const server = await serveFolder({ folder: elsewhere });
  const page = await browser.newPage();
  await page.goto(`${server.origin}/`, { waitUntil: 'load' });
  const frame = page.frames().find((one) => one.url() === embed);
  expect(await frame?.$eval('.chart-narrow svg', (svg) => svg.getBoundingClientRect().width)).toBeGreaterThan(
    280,
  );
  await page.close();
  await server.close();
});

test('the fullest report still fits one printed side, and tells its interest whole under its charts', async () => {
  const root = await builtUnder(sixHeads(), 'a-long-folder', 'six');
  const server = await serveFolder({ folder: root });
  const report = `/a-long-folder/reports/${sixHeadsSlug}`;
  const page = await browser.newPage();
  for (const format of ['A4', 'Letter'] as const) {
    const response = await page.goto(`${server.origin}${report}/sheet/`, { waitUntil: 'load' });
    expect(response?.status()).toBe(200);
    expect(pagesOf(await page.pdf({ format }))).toBe(1);
  }
  const svg = readFileSync(join(root, `${report}/charts/apart.svg`), 'utf8');
  // All that stands under the last rule, the address on a line of its own.
  const strip = svg.slice(svg.lastIndexOf('<path '));
  expect(strip.match(/<text/g)?.length).toBeLessThanOrEqual(9);
  const words = strip.replaceAll(/<[^>]*>/g, ' ').replaceAll(/\s+/g, ' ');
  expect(words).toContain('was lent by distributor 0, Birch extra low by distributor 1, Cedar');
  expect(words).toContain('Paid for by a group of distributors that share the cost.');
  await page.close();
  await server.close();
});
