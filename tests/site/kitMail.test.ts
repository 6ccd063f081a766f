import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { allOr, eachSoMany } from '../everyday.ts';
import { laidOutByWordProcessor, recoloured, withoutStyleElements, wordsOf } from '../kit/mailEngines.ts';
import { oddBase } from '../kit/oddReports.ts';
import { launch } from './browser.ts';
import { editionFiles } from './pages.ts';
import { seen, type Seen } from './seenInMail.ts';

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

/** How a program takes a mail that does not take it as it is. */
type Taken = (html: string) => string;

const asItIs: Taken = (html) => html;

interface Shown {
  readonly width: number;
  readonly images?: boolean;
  readonly scheme?: 'light' | 'dark';
  readonly taken?: Taken;
}

/** The mail as a mail program shows it: without scripts or network; its images from the built site, or none. */
async function opened(
  { root, served, file }: Mail,
  { width, images = true, scheme = 'light', taken = asItIs }: Shown,
): Promise<Page> {
  const page = await browser.newPage();
  await page.setJavaScriptEnabled(false);
  await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: scheme }]);
  await page.setViewport({ width, height: 900 });
  await page.setRequestInterception(true);
  page.on('request', (request) => {
    const path = new URL(request.url()).pathname;
    if (request.resourceType() === 'document')
      return void request.respond({
        contentType: 'text/html; charset=utf-8',
        body: taken(readFileSync(join(root, file), 'utf8')),
      });
    const png = join(root, path);
    if (!images || !existsSync(png)) return void request.abort();
    return void request.respond({ contentType: 'image/png', body: readFileSync(png) });
  });
  await page.goto(`${served}/${file}`, { waitUntil: 'load' });
  return page;
}

/** What is there to see, and the page closed again. */
async function lookedAt(mail: Mail, shown: Shown): Promise<Seen> {
  const page = await opened(mail, shown);
  const found = await seen(page);
  await page.close();
  return found;
}

test('there is a mail and a block for every report', () => {
  expect(mails.length).toBeGreaterThan(3);
  expect(blocks.length).toBe(mails.length);
});

/** What mail programs drop or refuse: SVG, scripts, newer layout, relative addresses (common practice). */
describe.each(allOr([...mails, ...blocks], eachSoMany([...mails, ...blocks], 9)))('%s', (_name, place) => {
  const mail = read(place);
  const head = mail.slice(0, mail.indexOf('<body'));
  const isBlock = place.file.endsWith('email-block.html');

  test('holds nothing that mail programs refuse', () => {
    expect(mail).not.toMatch(
      /<(svg|script|link|form|input|button|iframe|video|object|base|picture|source)\b/i,
    );
    expect(mail).not.toMatch(
      /(?:display:\s*(?:flex|grid|inline-flex)|position:|float:|url\(|@import|var\(|calc\()/i,
    );
    expect(mail).not.toMatch(/\s(?:id|on\w+)=/i);
    expect(mail).not.toMatch(/data:|javascript:|cid:/i);
    // A block is pasted among other things, which its classes could meet.
    const named = [...mail.matchAll(/\sclass="([^"]*)"/g)].flatMap(([, names = '']) => names.split(' '));
    if (isBlock) expect(named).toEqual([]);
    for (const name of named) expect(name).toMatch(/^mail-/);
    expect(mail.match(/<style/g)?.length ?? 0).toBe(isBlock ? 0 : (head.match(/<style/g)?.length ?? -1));
    for (const [, address = ''] of mail.matchAll(/\s(?:href|src)="([^"]*)"/g))
      expect(address.startsWith(place.site), address).toBe(true);
    for (const [image] of mail.matchAll(/<img[^>]*>/g)) {
      expect(image).toMatch(/\salt="[^"]{30,200}"/);
      expect(image).toMatch(/\swidth="(?:598|358)"/);
    }
    for (const [table] of mail.matchAll(/<table[^>]*>(?!<caption)/g))
      expect(table).toContain('role="presentation"');
  });

  test('names no image that is not there', () => {
    const images = new Set([...mail.matchAll(/<img src="([^"]*)"/g)].map(([, address = '']) => address));
    expect(images.size).toBe(isBlock ? 1 : 2);
    for (const address of images)
      expect(existsSync(join(place.root, new URL(address).pathname)), address).toBe(true);
  });

  test('says the interest with the answer, before picture and figures', () => {
    const interest = mail.indexOf('Our interest.');
    expect(interest).toBeGreaterThan(mail.lastIndexOf('<h2'));
    expect(interest).toBeLessThan(mail.indexOf('<img'));
    expect(mail.slice(interest)).not.toMatch(/<h\d/);
  });

  test('says in words, so also with images off, that data are invented, the report corrected or replaced', () => {
    const words = wordsOf(mail.slice(mail.indexOf('<table')));
    expect(words).toContain('Invented data.');
    expect(words.includes('Corrected ')).toBe(/corrected|replaced|three-irons-after-work/.test(place.file));
    expect(words.includes('Replaced by a newer report.')).toBe(place.file.includes('replaced'));
    if (place.file.includes('launch-only')) expect(words).toMatch(/by our own flight model/i);
  });

  test.each([
    ['on', true],
    ['off', false],
  ])('with images %s fits windows of 320 and 600 px, light and dark', async (_state, images) => {
    const page = await opened(place, { width: 600, images });
    for (const width of [600, 320])
      for (const scheme of ['light', 'dark'] as const) {
        await page.setViewport({ width, height: 900 });
        await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: scheme }]);
        const { over, smallest, faintest, images: shown } = await seen(page);
        expect(over).toBeLessThanOrEqual(0);
        expect(smallest).toBeGreaterThanOrEqual(14);
        expect(faintest.ratio, faintest.words).toBeGreaterThanOrEqual(4.5);
        // One picture: a phone's on a phone, and in a block, which has no way to tell.
        const phone = isBlock || width === 320;
        expect(shown).toHaveLength(1);
        const [picture] = shown;
        expect(picture?.file).toMatch(phone ? /^[a-z0-9-]+-phone\.png$/ : /^[a-z0-9-]+(?<!-phone)\.png$/);
        expect(picture?.natural).toBe(images ? (phone ? 720 : 1200) : 0);
        // While images are blocked no empty box, and no words that look like a link.
        if (!images) expect(picture?.height).toBeLessThanOrEqual(6 * 24);
        expect(picture?.colour).toBe('rgb(29, 33, 37)');
        expect(picture?.underlined).toBe(false);
      }
    await page.close();
  });
});

describe.each(allOr(mails, eachSoMany(mails, 9)))('%s', (_name, mail) => {
  test('stays under 90 kB', () => {
    expect(Buffer.byteLength(read(mail))).toBeLessThan(90_000);
  });

  test('in a dark theme turns all but the panel of its picture', async () => {
    const page = await opened(mail, { width: 600, scheme: 'dark' });
    const grounds = await page.evaluate(() => {
      const groundOf = (selector: string): string[] =>
        [...document.querySelectorAll(selector)].map((one) => getComputedStyle(one).backgroundColor);
      const panel = document.images[0]?.closest('td');
      return {
        paper: groundOf('.mail-paper'),
        panel: panel === null || panel === undefined ? '' : getComputedStyle(panel).backgroundColor,
        letters: [...document.querySelectorAll('p, h1, h2')].map((one) => getComputedStyle(one).color),
      };
    });
    expect(new Set(grounds.paper)).toEqual(new Set(['rgb(22, 25, 29)']));
    expect(grounds.panel).toBe('rgb(250, 248, 242)');
    for (const colour of grounds.letters)
      expect(['rgb(236, 232, 223)', 'rgb(185, 180, 169)']).toContain(colour);
    await page.close();
  });

  test('where its style elements are dropped, it keeps its own light ground and its wide picture', async () => {
    for (const width of [320, 600]) {
      const found = await lookedAt(mail, { width, scheme: 'dark', taken: withoutStyleElements });
      expect(found.over).toBeLessThanOrEqual(0);
      expect(found.faintest.ratio, found.faintest.words).toBeGreaterThanOrEqual(4.5);
      expect(found.images.map(({ file }) => file)).toEqual([expect.not.stringContaining('phone')]);
    }
  });

  test('where a webmail recolours and marks it, letters and ground are turned together', async () => {
    const { faintest } = await lookedAt(mail, { width: 600, taken: recoloured });
    expect(faintest.ratio, faintest.words).toBeGreaterThanOrEqual(4.5);
    const page = await opened(mail, { width: 600, taken: recoloured });
    expect(await page.$eval('h1', (title) => getComputedStyle(title).color)).toBe('rgb(236, 232, 223)');
    expect(await page.$eval('body', (body) => getComputedStyle(body).backgroundColor)).toBe(
      'rgb(22, 25, 29)',
    );
    await page.close();
  });

  test('an engine that knows tables alone holds it at 600 px, with one picture of its true proportions', async () => {
    const page = await opened(mail, { width: 1300, taken: laidOutByWordProcessor });
    const columns = await page.$$eval('p, h1, h2, img', (all) =>
      all.map((one) => one.closest('table[width="600"]')?.getBoundingClientRect().width ?? 0),
    );
    expect(new Set(columns)).toEqual(new Set([600]));
    const { images } = await seen(page);
    expect(images).toHaveLength(1);
    const drawn = await page.$eval('img', (image) => image.naturalHeight / image.naturalWidth);
    const [{ width, height } = { width: 1, height: 0 }] = images;
    expect(width).toBe(598);
    expect(Math.abs(height - drawn * width)).toBeLessThan(2);
    await page.close();
  });

  test('without images still says interest, answer, figures, and where the rest is', async () => {
    const page = await opened(mail, { width: 600, images: false });
    const words = await page.$eval('body', (body) => body.innerText);
    const judged = !mail.file.includes('four-shots');
    for (const part of [
      'Our interest.',
      'Who hit.',
      'the smallest difference in',
      judged ? 'How sure. Likely' : 'did not judge',
      'Read the whole report',
    ])
      expect(words).toContain(part);
    expect(words.includes('How sure.')).toBe(judged);
    await page.close();
  });

  test('its button is a place to press, and leads to the report', async () => {
    const page = await opened(mail, { width: 320 });
    const [, button] = (await page.$$('a.mail-on-action')).toReversed();
    expect(button).toBeUndefined();
    const { height, address } = await page.$eval('a.mail-on-action', (link) => ({
      height: link.getBoundingClientRect().height,
      address: (link as HTMLAnchorElement).href,
    }));
    expect(height).toBeGreaterThanOrEqual(44);
    expect(address).toBe(
      `${mail.site}${mail.file.slice(mail.file.indexOf('reports/')).replace('email.html', '')}`,
    );
    await page.close();
  });

  test('its plain-text part says the same in lines of at most 72 characters', async () => {
    const plain = read({ ...mail, file: mail.file.replace(/html$/, 'txt') });
    expect(plain).not.toMatch(/<(?!Max>)|&amp;|&quot;/);
    for (const line of plain.split('\n'))
      if (!line.startsWith('https://')) expect(line.length).toBeLessThanOrEqual(72);
    const page = await opened(mail, { width: 600, images: false });
    const told = await page.$$eval('p, h1, h2', (cells) => cells.map((cell) => cell.innerText));
    const flat = plain.replaceAll(/\s+/g, ' ');
    // A text needs no way out of a bad display.
    for (const words of told)
      expect(flat).toContain(words.replace('Read it in a browser', '').replaceAll(/\s+/g, ' ').trim());
    await page.close();
  });
});
