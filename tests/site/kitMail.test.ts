import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { launch } from './browser.ts';
import { editionFiles } from './pages.ts';

const folder = inject('siteFolder');
const mails = editionFiles(folder).filter((file) => file.endsWith('/email.html'));
const blocks = editionFiles(folder).filter((file) => file.endsWith('/email-block.html'));
const read = (file: string): string => readFileSync(join(folder, file), 'utf8');
let browser: Browser;

beforeAll(async () => {
  browser = await launch();
});

afterAll(() => browser.close());

/** The mail as a mail program shows it: without style elements, scripts or network; its images from the built site, or none. */
async function opened(file: string, { width, images }: { width: number; images: boolean }): Promise<Page> {
  const page = await browser.newPage();
  await page.setJavaScriptEnabled(false);
  await page.setViewport({ width, height: 900 });
  await page.setRequestInterception(true);
  page.on('request', (request) => {
    const path = new URL(request.url()).pathname;
    if (request.resourceType() === 'document') return void request.continue();
    const png = join(folder, path);
    if (!images || !existsSync(png)) return void request.abort();
    return void request.respond({ contentType: 'image/png', body: readFileSync(png) });
  });
  await page.goto(`${inject('siteAddress')}/${file}`, { waitUntil: 'load' });
  return page;
}

test('there is a mail and a block for every report', () => {
  expect(mails.length).toBeGreaterThan(3);
  expect(blocks.length).toBe(mails.length);
});

/** What mail programs drop or refuse: SVG, scripts, style sheets, newer layout, relative addresses (common practice). */
describe.each([...mails, ...blocks])('%s', (file) => {
  const mail = read(file);

  test('holds nothing that mail programs refuse', () => {
    expect(mail).not.toMatch(/<(svg|script|style|link|form|input|button|iframe|video|object|base)\b/i);
    expect(mail).not.toMatch(
      /(?:display:\s*(?:flex|grid|inline-flex)|position:|float:|url\(|@import|var\(|calc\()/i,
    );
    expect(mail).not.toMatch(/\s(?:class|id|on\w+)=/i);
    expect(mail).not.toMatch(/data:|javascript:|cid:/i);
    for (const [, address = ''] of mail.matchAll(/\s(?:href|src)="([^"]*)"/g))
      expect(address).toMatch(/^https:\/\/example\.test\//);
    for (const [image] of mail.matchAll(/<img[^>]*>/g)) {
      expect(image).toMatch(/\salt="[^"]{40,}"/);
      expect(image).toMatch(/\swidth="600" height="\d+"/);
    }
    for (const [table] of mail.matchAll(/<table[^>]*>(?!<caption)/g))
      expect(table).toContain('role="presentation"');
  });

  test('names no image that is not there', () => {
    for (const [, address = ''] of mail.matchAll(/<img src="https:\/\/example\.test([^"]*)"/g))
      expect(existsSync(join(folder, address))).toBe(true);
  });

  test('says the interest before any result', () => {
    const interest = mail.indexOf('Our interest.');
    expect(interest).toBeGreaterThan(-1);
    const answer = mail.search(/For (this golfer|these|golfers like these)/);
    expect(answer).toBeGreaterThan(interest);
  });
});

describe.each(mails)('%s', (file) => {
  test('stays under 90 kB', () => {
    expect(Buffer.byteLength(read(file))).toBeLessThan(90_000);
  });

  test.each([320, 600])('at %i px fits its window, images on or off', async (width) => {
    for (const images of [true, false]) {
      const page = await opened(file, { width, images });
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
      await page.close();
    }
  });

  test('without images still says interest, answer, numbers and where the rest is', async () => {
    const page = await opened(file, { width: 600, images: false });
    const words = await page.$eval('body', (body) => body.innerText);
    for (const part of [
      'Our interest.',
      'The answer',
      'For whom.',
      'would fit',
      'All shots, conditions and numbers',
    ])
      expect(words).toContain(part);
    await page.close();
  });

  test('its plain-text part says the same in lines of at most 72 characters', async () => {
    const plain = read(file.replace(/html$/, 'txt'));
    expect(plain).not.toMatch(/<|&amp;|&quot;/);
    for (const line of plain.split('\n'))
      if (!line.startsWith('https://')) expect(line.length).toBeLessThanOrEqual(72);
    const page = await opened(file, { width: 600, images: false });
    const told = await page.$$eval('p, th, td > b', (cells) =>
      cells.map((cell) => (cell as HTMLElement).innerText),
    );
    const flat = plain.replaceAll(/\s+/g, ' ');
    for (const words of told) expect(flat).toContain(words.replaceAll(/\s+/g, ' ').trim());
    await page.close();
  });
});
