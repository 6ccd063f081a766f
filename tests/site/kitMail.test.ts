import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { oddBase } from '../kit/oddReports.ts';
import { launch } from './browser.ts';
import { editionFiles } from './pages.ts';

/** A file for mails, where its host's folder and its server are, and what its addresses begin with. */
interface Mail {
  readonly root: string;
  readonly served: string;
  readonly site: string;
  readonly file: string;
}

const sites = [
  { root: inject('siteFolder'), served: inject('siteAddress'), site: 'https://example.test/', base: '' },
  {
    root: inject('oddRoot'),
    served: inject('oddAddress'),
    site: `https://golf.example/${oddBase}/`,
    base: `${oddBase}/`,
  },
];

const named = (end: string): (readonly [name: string, mail: Mail])[] =>
  sites.flatMap(({ root, served, site, base }) =>
    editionFiles(join(root, base))
      .filter((file) => file.endsWith(end))
      .map((file) => [file, { root, served, site, file: `${base}${file}` }] as const),
  );

const mails = named('/email.html');
const blocks = named('/email-block.html');
const read = ({ root, file }: Mail): string => readFileSync(join(root, file), 'utf8');
let browser: Browser;

beforeAll(async () => {
  browser = await launch();
});

afterAll(() => browser.close());

/** The mail as a mail program shows it: without style elements, scripts or network; its images from the built site, or none. */
async function opened(
  { root, served, file }: Mail,
  { width, images, scheme = 'light' }: { width: number; images: boolean; scheme?: 'light' | 'dark' },
): Promise<Page> {
  const page = await browser.newPage();
  await page.setJavaScriptEnabled(false);
  await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: scheme }]);
  await page.setViewport({ width, height: 900 });
  await page.setRequestInterception(true);
  page.on('request', (request) => {
    const path = new URL(request.url()).pathname;
    if (request.resourceType() === 'document') return void request.continue();
    const png = join(root, path);
    if (!images || !existsSync(png)) return void request.abort();
    return void request.respond({ contentType: 'image/png', body: readFileSync(png) });
  });
  await page.goto(`${served}/${file}`, { waitUntil: 'load' });
  return page;
}

/** How many px of the text that stands for an image lie outside the image's place. */
async function hiddenAlternative(page: Page): Promise<number> {
  return page.evaluate(() => {
    const image = document.images[0];
    if (image === undefined) return 0;
    const room = image.getBoundingClientRect();
    const measure = document.createElement('div');
    measure.style.cssText = `width:${room.width}px;font:${getComputedStyle(image).font};line-height:23px`;
    measure.textContent = image.alt;
    document.body.append(measure);
    const { height } = measure.getBoundingClientRect();
    measure.remove();
    return Math.max(0, height - room.height);
  });
}

test('there is a mail and a block for every report', () => {
  expect(mails.length).toBeGreaterThan(3);
  expect(blocks.length).toBe(mails.length);
});

/** What mail programs drop or refuse: SVG, scripts, style sheets, newer layout, relative addresses (common practice). */
describe.each([...mails, ...blocks])('%s', (_name, place) => {
  const mail = read(place);

  test('holds nothing that mail programs refuse', () => {
    expect(mail).not.toMatch(/<(svg|script|style|link|form|input|button|iframe|video|object|base)\b/i);
    expect(mail).not.toMatch(
      /(?:display:\s*(?:flex|grid|inline-flex)|position:|float:|url\(|@import|var\(|calc\()/i,
    );
    expect(mail).not.toMatch(/\s(?:class|id|on\w+)=/i);
    expect(mail).not.toMatch(/data:|javascript:|cid:/i);
    for (const [, address = ''] of mail.matchAll(/\s(?:href|src)="([^"]*)"/g))
      expect(address.startsWith(place.site), address).toBe(true);
    for (const [image] of mail.matchAll(/<img[^>]*>/g)) {
      expect(image).toMatch(/\salt="[^"]{40,}"/);
      expect(image).toMatch(/\swidth="600" height="\d+"/);
    }
    for (const [table] of mail.matchAll(/<table[^>]*>(?!<caption)/g))
      expect(table).toContain('role="presentation"');
  });

  test('names no image that is not there', () => {
    const images = [...mail.matchAll(/<img src="([^"]*)"/g)].map(([, address = '']) => address);
    expect(images).toHaveLength(1);
    for (const address of images) expect(existsSync(join(place.root, new URL(address).pathname))).toBe(true);
  });

  test('says the interest before any result', () => {
    const interest = mail.indexOf('Our interest.');
    expect(interest).toBeGreaterThan(-1);
    // The first of the headings under which answers stand.
    const answer = mail.indexOf('<h2');
    expect(answer).toBeGreaterThan(interest);
    expect(mail.slice(0, answer)).not.toMatch(/\blikely\b|cannot tell|did not judge/i);
  });

  test('says in words, so also with images off, that data are invented, the report corrected or replaced', () => {
    const words = mail.replaceAll(/<[^>]*>/g, ' ');
    expect(words).toContain('Invented data.');
    expect(words.includes('Corrected ')).toBe(/corrected|replaced|three-irons-after-work/.test(place.file));
    expect(words.includes('Replaced by a newer report.')).toBe(place.file.includes('replaced'));
    if (place.file.includes('launch-only')) expect(words).toContain('by our own flight model');
  });
});

describe.each(mails)('%s', (_name, mail) => {
  test('stays under 90 kB', () => {
    expect(Buffer.byteLength(read(mail))).toBeLessThan(90_000);
  });

  test.each([320, 600])('at %i px fits its window, images on or off', async (width) => {
    for (const images of [true, false]) {
      const page = await opened(mail, { width, images });
      const { over, small, drawn } = await page.evaluate(() => ({
        over: document.documentElement.scrollWidth - document.documentElement.clientWidth,
        small: [...document.querySelectorAll('p, td, th, h1, h2, caption')].filter(
          (element) => parseFloat(getComputedStyle(element).fontSize) < 14,
        ).length,
        drawn: [...document.images].map(({ naturalWidth }) => naturalWidth),
      }));
      expect(over).toBeLessThanOrEqual(0);
      expect(small).toBe(0);
      expect(drawn).toEqual([images ? 1200 : 0]);
      if (!images) expect(await hiddenAlternative(page)).toBe(0);
      await page.close();
    }
  });

  test('in a dark theme keeps its own light ground under its dark letters', async () => {
    const page = await opened(mail, { width: 600, images: true, scheme: 'dark' });
    const colours = await page.evaluate(() => ({
      body: getComputedStyle(document.body).backgroundColor,
      letters: [...document.querySelectorAll('p, th, td > b, h1, h2, caption')].map(
        (element) => getComputedStyle(element).color,
      ),
    }));
    expect(colours.body).toBe('rgb(250, 248, 242)');
    for (const colour of colours.letters) expect(['rgb(29, 33, 37)', 'rgb(75, 80, 87)']).toContain(colour);
    await page.close();
  });

  test('without images still says interest, answer, numbers and where the rest is', async () => {
    const page = await opened(mail, { width: 600, images: false });
    const words = await page.$eval('body', (body) => body.innerText);
    for (const part of [
      'Our interest.',
      'How sure.',
      'Who hit.',
      mail.file.includes('four-shots') ? 'did not judge' : 'Likely',
      'All shots, conditions and numbers',
    ])
      expect(words).toContain(part);
    await page.close();
  });

  test('its plain-text part says the same in lines of at most 72 characters', async () => {
    const plain = read({ ...mail, file: mail.file.replace(/html$/, 'txt') });
    expect(plain).not.toMatch(/<(?!Max>)|&amp;|&quot;/);
    for (const line of plain.split('\n'))
      if (!line.startsWith('https://')) expect(line.length).toBeLessThanOrEqual(72);
    const page = await opened(mail, { width: 600, images: false });
    const told = await page.$$eval('p, th, td > b', (cells) =>
      cells.map((cell) => (cell as HTMLElement).innerText),
    );
    const flat = plain.replaceAll(/\s+/g, ' ');
    for (const words of told) expect(flat).toContain(words.replaceAll(/\s+/g, ' ').trim());
    await page.close();
  });
});
