import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { imageSize } from 'image-size';
import { parseHTML } from 'linkedom';
import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { allOr, eachSoMany } from '../everyday.ts';
import { serveFolder } from '../../src/commands/staticServer.ts';
import { oddBase } from '../kit/oddReports.ts';
import { sixHeads, sixHeadsSlug } from '../kit/sixHeads.ts';
import { launch } from './browser.ts';
import { builtUnder } from './kitFolder.ts';
import { openPage } from './openPage.ts';
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

test.each(kits)(
  '%s says how it stands and what its shop has to gain, then shows the pictures, the one to take first at the top, then its terms',
  (file) => {
    const { document } = parseHTML(read(file));
    const headings = [...document.querySelectorAll('main h2')].map(({ id }) => id);
    expect(headings[0]).toBe('pictures');
    expect(headings.slice(1)).toEqual(expect.arrayContaining(['terms', 'editions']));
    const before = read(file).slice(0, read(file).indexOf('id="pictures"'));
    for (const part of ['Hit ', 'Version 1.0.', 'Invented data.', 'Our interest.', 'kit.zip'])
      expect(before).toContain(part);
    const terms = document.querySelector('section[aria-labelledby="terms"]')?.textContent ?? '';
    for (const part of ['Terms', 'Credit']) expect(terms.replace('Terms and credit', '')).toContain(part);
    const items = [...document.querySelectorAll('.kit-item')];
    expect(items.length).toBeGreaterThan(3);
    expect(plain(items[0]?.querySelector('.question')?.textContent)).toContain(
      'The one to take first. How far apart?',
    );
    for (const [at, item] of items.entries()) {
      expect(item.querySelector('h3')?.textContent?.trim()).toMatch(/[.!?]$/);
      expect(item.querySelector('img')?.getAttribute('loading')).toBe('lazy');
      expect(item.querySelectorAll('details').length).toBe(1);
      expect(item.querySelector('details')?.hasAttribute('open')).toBe(false);
      if (at > 0) expect(item.textContent).not.toContain('The one to take first');
    }
  },
);

test.each(kits)(
  '%s offers exactly the files that are there, with their sizes, under names of its report',
  (file) => {
    const { document } = parseHTML(read(file));
    const slug = file.split('/')[1] ?? '';
    const links = [...document.querySelectorAll('main a[download]')].map((link) => ({
      path: (link.getAttribute('href') ?? '').slice(1),
      name: link.getAttribute('download') ?? '',
    }));
    for (const { path, name } of links) {
      expect(existsSync(join(folder, path)), path).toBe(true);
      expect(name).toBe(`${slug}-${path.split('/').at(-1) ?? ''}`);
    }
    const offered = links.map(({ path }) => path).filter((path) => path.includes('/charts/'));
    const there = readdirSync(join(folder, `reports/${slug}/charts`)).map(
      (name) => `reports/${slug}/charts/${name}`,
    );
    expect(offered.toSorted()).toEqual(there.toSorted());
    const sizes = [...document.querySelectorAll('[data-size-of]')];
    expect(sizes.length).toBe(there.length + 1);
    for (const size of sizes) {
      const path = join(folder, `reports/${slug}`, size.getAttribute('data-size-of') ?? '');
      const bytes = readFileSync(path);
      const kB = bytes.length < 1e6 ? `${Math.max(1, Math.round(bytes.length / 1000))} kB` : ' MB';
      expect(size.textContent, path).toContain(kB);
      if (path.endsWith('.png')) {
        const { width, height } = imageSize(bytes);
        expect(size.textContent).toContain(`${width} × ${height} px`);
      }
    }
  },
);

test.each(kits)(
  'the archive beside %s opens, and holds every chart, word and number of the report',
  (file) => {
    const slug = file.split('/')[1] ?? '';
    const report = join(folder, 'reports', slug);
    const inside = unzipSync(new Uint8Array(readFileSync(join(report, 'kit.zip'))));
    const charts = readdirSync(join(report, 'charts')).map((name) => `charts/${name}`);
    const same = ['captions.txt', 'shots.csv', 'findings.json', 'datapackage.json', 'email.html', ...charts];
    expect(Object.keys(inside)).toEqual(expect.arrayContaining(same.map((path) => `${slug}/${path}`)));
    for (const path of same)
      expect(
        Buffer.compare(inside[`${slug}/${path}`] ?? new Uint8Array(), readFileSync(join(report, path))),
      ).toBe(0);
    const readme = new TextDecoder().decode(inside[`${slug}/README.txt`]);
    for (const part of ['Credit:', 'Terms:', 'Our interest:', 'Invented data.'])
      expect(readme).toContain(part);
    // What its data package names lies where it says.
    const { resources } = JSON.parse(new TextDecoder().decode(inside[`${slug}/datapackage.json`])) as {
      readonly resources: readonly { readonly path: string }[];
    };
    for (const { path } of resources) expect(Object.keys(inside)).toContain(`${slug}/${path}`);
  },
);

const plain = (words: string | null | undefined): string => (words ?? '').replaceAll(/\s+/g, ' ').trim();

/** Pages of the reports that try the kit, as served in a folder of their host. */
const oddFolder = join(inject('oddRoot'), oddBase);
const oddFiles = htmlFiles(oddFolder);
const addressOf = (root: string, file: string): string =>
  root === folder
    ? inject('siteAddress') + pathOf(file)
    : `${inject('oddAddress')}/${oddBase}${pathOf(file)}`;
const ofBoth = (
  own: readonly string[],
  end: string,
): readonly (readonly [name: string, address: string])[] => {
  const odd = oddFiles.filter((file) => file.endsWith(end));
  const all = [
    ...own.map((file) => [file, addressOf(folder, file)] as const),
    ...odd.map((file) => [file, addressOf(oddFolder, file)] as const),
  ];
  return allOr(all, eachSoMany(all, 8));
};

describe.each(ofBoth(kits, '/kit/index.html'))('%s', (_file, address) => {
  test('shows every image it offers, and says without script all that it says with it', async () => {
    const texts: string[] = [];
    for (const script of [true, false]) {
      const page = await browser.newPage();
      await page.setJavaScriptEnabled(script);
      await page.goto(address, { waitUntil: 'load' });
      const images = await page.evaluate(async () => {
        const all = [...document.images];
        for (const image of all) image.loading = 'eager';
        await Promise.all(all.map((image) => image.decode()));
        return all.map(({ naturalWidth, alt }) => ({ naturalWidth, alt }));
      });
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
          for (const details of document.querySelectorAll('details')) details.open = true;
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
  const expected = await page.$eval('[data-copy="short caption"]', (text) => text.textContent);
  const press = (words: string): Promise<void> =>
    page.$$eval(
      '.kit-item button',
      (all, starts) => all.find((one) => one.textContent?.startsWith(starts))?.click(),
      words,
    );
  await press('Copy: short caption');
  expect(await page.title()).toBe(expected?.trim());
  const said = (): Promise<string | null> => page.$eval('#copied', (status) => status.textContent);
  expect(await said()).toBe('Copied.');
  await press('Copy: alternative text');
  expect(await said()).toBe('Not copied: select the text instead.');
  await page.close();
});

test('the two buttons of a row stand side by side on a phone, large enough to press, and are reached by keyboard', async () => {
  const page = await openPage(browser, inject('siteAddress') + pathOf(kits[0] ?? ''), { width: 390 });
  const places = await page.$$eval('.kit-item:first-of-type .kit-caption button', (all) =>
    all
      .filter((one) => one.offsetParent !== null)
      .map((one) => one.getBoundingClientRect())
      .map(({ top, height }) => ({ top, height })),
  );
  expect(places.length).toBe(2);
  expect(places[0]?.top).toBe(places[1]?.top);
  for (const { height } of places) expect(height).toBeGreaterThanOrEqual(44);
  await page.focus('.kit-item .thumbnail');
  const reached: string[] = [];
  for (let press = 0; press < 3; press += 1) {
    await page.keyboard.press('Tab');
    reached.push(await page.evaluate(() => document.activeElement?.textContent?.slice(0, 24) ?? ''));
  }
  expect(reached.join()).toMatch(/^Copy: short caption.*Copy: alternative text.*PNG/s);
  await page.close();
});

test('a report that another one has replaced says so over its pictures and over its frames, with the way there', () => {
  const of = (file: string): string =>
    readFileSync(join(oddFolder, 'reports/range-balls-replaced', file, 'index.html'), 'utf8');
  for (const file of ['kit', 'embed/apart']) {
    const { document } = parseHTML(of(file));
    const notice = document.querySelector('main .notice');
    expect(plain(notice?.textContent)).toBe('Replaced by a newer report: Two heads far apart');
    expect(notice?.querySelector('a')?.getAttribute('href')).toBe(`/${oddBase}/reports/clear-and-priced/`);
    expect(notice?.querySelector('a')?.getAttribute('target') ?? null).toBe(file === 'kit' ? null : '_top');
  }
  expect(of('kit')).toContain('Corrected 20 May 2026; pictures taken before that day are out of date.');
});

describe('a withdrawn report', () => {
  const gone = join(inject('pooledFolder'), 'reports/gone');
  const dom = (file: string) => parseHTML(readFileSync(join(gone, file), 'utf8')).document;

  test.each(['kit/index.html', 'embed/apart/index.html'])(
    'leaves a notice at %s: when, why and where to look',
    (file) => {
      const main = dom(file).querySelector('main');
      expect(main?.textContent).toContain('Withdrawn on 25 June 2026');
      expect(main?.textContent).toContain('The monitor was out of order.');
      expect([...(main?.querySelectorAll('a') ?? [])].map((link) => link.getAttribute('href'))).toContain(
        '/reports/gone/',
      );
      expect(main?.querySelector('img, svg, pre, [data-copy]')).toBeNull();
    },
  );

  test('leaves a picture of that notice wherever a picture stood, and nothing else', () => {
    const names = readdirSync(join(gone, 'charts'));
    // Two heads have the same charts wherever the same golfer hit them.
    const standing = readdirSync(join(inject('pooledFolder'), 'reports/first/charts'));
    expect(names.toSorted()).toEqual(standing.filter((name) => /\.(png|svg)$/.test(name)).toSorted());
    const [first, ...others] = names
      .filter((name) => name.endsWith('.png'))
      .map((name) => readFileSync(join(gone, 'charts', name)));
    if (first === undefined) throw new Error('no picture');
    expect(imageSize(first).width).toBe(1200);
    for (const other of others) expect(other.equals(first)).toBe(true);
    expect(readFileSync(join(gone, 'charts/apart.svg'), 'utf8')).toContain('Withdrawn on 25 June 2026');
    for (const file of ['kit.zip', 'captions.txt', 'email.html', 'shots.csv', 'findings.json', 'report.html'])
      expect(existsSync(join(gone, file)), file).toBe(false);
  });
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

describe.each(allOr(oneFiles, oneFiles.slice(0, 1)))('%s', (file) => {
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
  for (const part of [
    'Alder extra low was lent to us by distributor 0, Birch extra low by distributor 1, Cedar',
    'The test was paid for by a group of distributors that share the cost.',
    'one box of balls from each distributor',
    'golf.example/a-long-folder/reports/six-heads-with-rather-long-names, version 1.0.0.',
  ])
    expect(words).toContain(part);
  await page.close();
  await server.close();
});
