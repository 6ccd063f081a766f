import { existsSync, mkdtempSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pa11yCi from 'pa11y-ci';
import type { Browser, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { checkContent } from '../../src/commands/checkContent.ts';
import { serveFolder } from '../../src/commands/staticServer.ts';
import { chromiumLaunch, launch } from '../site/browser.ts';
import { foldersFor } from './builds.ts';
import { startDev, type DevServer } from './devServer.ts';
import { fiveHeadsCsv } from './fiveHeads.ts';
import { listen } from './listen.ts';

const folder = mkdtempSync(join(tmpdir(), 'straightface-desk-test-'));
const folders = foldersFor(mkdtempSync(join(tmpdir(), 'straightface-empty-')));
const sessionFile = join(folder, 'five_heads_2026-04-11.csv');
const slug = 'five-heads-2026-04-11';
const reportFile = join(folders.content, 'reports', slug, 'report.md');
writeFileSync(sessionFile, fiveHeadsCsv);

let server: DevServer;
let browser: Browser;
let page: Page;
/** What was typed or chosen, one for each answer. */
const answered: string[] = [];

beforeAll(async () => {
  server = await startDev(folders);
  browser = await launch();
  page = await browser.newPage();
  await page.setViewport({ width: 1280, height: 900 });
});

afterAll(async () => {
  await browser.close();
  await server.stop();
});

/** Presses the key that goes from one control to the next until one is reached. */
async function tabTo(selector: string): Promise<void> {
  for (let tries = 0; tries < 400; tries += 1) {
    await page.keyboard.press('Tab');
    if (await page.evaluate((wanted) => document.activeElement?.matches(wanted) === true, selector)) return;
  }
  throw new Error(`No key leads to ${selector} on ${page.url()}`);
}

async function press(selector: string, timeout = 60_000): Promise<void> {
  await tabTo(selector);
  await Promise.all([page.waitForNavigation({ waitUntil: 'load', timeout }), page.keyboard.press('Enter')]);
}

async function answer(name: string, text: string): Promise<void> {
  await tabTo(`[name="answer.${name}"]`);
  await page.keyboard.type(text);
  answered.push(name);
}

/** The first of the choices: where none is chosen yet, the key leads there. */
async function choose(name: string): Promise<void> {
  await tabTo(`[name="answer.${name}"]`);
  await page.keyboard.press('Space');
  answered.push(name);
}

const text = (selector: string): Promise<string> =>
  page.$eval(selector, (element) => element.textContent?.replace(/\s+/g, ' ').trim() ?? '');

describe('from an empty folder to a published page, by keyboard alone', () => {
  test('the printed address opens the desk', async () => {
    const address = /http:\S+\/desk\/\?token=\S+/.exec(server.said())?.[0] ?? '';
    await page.goto(address);
    expect(page.url()).toBe(`${server.origin}/desk/`);
    expect(await text('h1')).toBe('Desk');
  });

  test('the shop says who it is', async () => {
    await press('main a[href$="/desk/shop/"]');
    await answer('name', 'Example Golf Workshop');
    await answer('interests.paid_by', 'the shop');
    await answer('interests.commission_or_gifts', 'none');
    await answer('interests.seen_before', 'nobody outside the shop');
    await press('main button[type=submit]');
    expect(await text('.notice')).toBe('Saved.');
    expect(readFileSync(join(folders.content, 'shop.yaml'), 'utf8')).toBe(
      'schema: 1\nname: Example Golf Workshop\ninterests:\n  paid_by: the shop\n  commission_or_gifts: none\n  seen_before: nobody outside the shop\n',
    );
  });

  test('a session file is chosen, and what it says is told', async () => {
    await press('.places a[href$="/desk/"]');
    await tabTo('#files');
    const chooser = page.waitForFileChooser({ timeout: 60_000 });
    // Its dialog is only caught once the browser knows that somebody waits for it.
    await page.evaluate(() => document.activeElement?.id);
    await page.keyboard.press('Enter');
    await (await chooser).accept([sessionFile]);
    await press('form.drop button');
    expect(page.url()).toContain(`/desk/reports/${slug}/`);
    expect(await text('.understood')).toContain('8 complete rounds');
    expect(readFileSync(join(folders.content, 'reports', slug, 'five_heads_2026-04-11.csv'), 'utf8')).toBe(
      fiveHeadsCsv,
    );
  });

  test('the open questions are answered', async () => {
    const open = await page.$$eval('section[aria-labelledby="must"] :is(input, textarea)', (controls) => [
      ...new Set(controls.map((control) => control.getAttribute('name') ?? '')),
    ]);
    await answer('question', 'Which of the five heads carries farthest?');
    for (const name of open.filter((each) => each.includes('.contenders.')))
      if (name.endsWith('.sold_here')) await choose(name.replace('answer.', ''));
      else await answer(name.replace('answer.', ''), 'our stock');
    const [golfer = ''] = open.flatMap((name) => /^answer\.(hitters\.[^.]+)\.role$/.exec(name)?.[1] ?? []);
    await answer(`${golfer}.role`, 'staff fitter');
    await answer(`${golfer}.consent`, 'yes');
    await press('button[value=save]');
    expect(await text('.notice')).toBe('Saved.');
    expect(await text('#must')).toBe('Everything that must be answered is answered');
    expect(answered.length).toBeLessThanOrEqual(25);
    expect(answered.length).toBe(17);
  });

  test('three sentences are written, one with a figure from the menu, and it is published', async () => {
    await tabTo('#narrative');
    await page.keyboard.type('All five heads went onto one shaft. The carry of the last one came to ');
    await tabTo('details.menu summary');
    await page.keyboard.press('Enter');
    await tabTo('button.value');
    for (let tries = 0; tries < 20; tries += 1) {
      if (await page.evaluate(() => document.activeElement?.textContent?.includes('elm-9') === true)) break;
      await tabTo('button.value');
    }
    await page.keyboard.press('Enter');
    // The menu puts one back into the text, behind what was put there.
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('narrative');
    await page.keyboard.type(' on average. We would hit them again on grass.');
    await press('button[value=publish]');
    expect(await text('.notice')).toContain('Published:');
    const written = readFileSync(reportFile, 'utf8');
    expect(written).toMatch(/\npublished: \d{4}-\d{2}-\d{2}\n/);
    expect(written).toContain('\nstatus: published\n');
    expect(written).toContain('came to {{ mean carry elm-9 }} on average.');
  });

  test('the page beside the form shows it, from the same place', async () => {
    const frame = await page.waitForFrame((each) => each.url() === `${server.origin}/reports/${slug}/`);
    await frame.waitForSelector('h1');
    expect(await frame.$eval('main', (main) => main.textContent)).toContain('hit them again on grass');
  });

  test('the site is built, and has the page; check finds nothing that stands in the way', async () => {
    await press('.places a[href$="/desk/"]');
    await press('form[action$="/desk/build/"] button', 300_000);
    expect(await text('.notice')).toBe(`Your site is built. It lies in ${folders.out}.`);
    const { origin, close } = await serveFolder({ folder: folders.out, base: '/', port: 0, tries: 1 });
    try {
      await page.goto(`${origin}/reports/${slug}/`);
      expect(await text('h1')).toBe('Five heads');
      expect(await text('main')).toMatch(
        /The carry of the last one came to 23\d(?:\.\d+)? yards on average\./,
      );
    } finally {
      await close();
    }
    const built = readdirSync(folders.out, { recursive: true, encoding: 'utf8' });
    expect(built.filter((path) => /desk/i.test(path))).toEqual([]);
    const { terminal } = listen();
    expect(checkContent({ contentDir: folders.content, only: [], json: false, terminal })).toBe(0);
    expect(existsSync(join(folders.content, '.straightface-lock'))).toBe(false);
  });
});

describe('by mouse', () => {
  test('a file that is dropped anywhere on the page goes into the form, and becomes a draft', async () => {
    await page.goto(`${server.origin}/desk/`);
    const [first = '', ...rows] = fiveHeadsCsv.split('\n');
    const text = [first, ...rows.slice(0, 20), ''].join('\n');
    await page.evaluate((csv) => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([csv], 'dropped.csv', { type: 'text/csv' }));
      document
        .querySelector('h1')
        ?.dispatchEvent(new DragEvent('drop', { bubbles: true, cancelable: true, dataTransfer }));
    }, text);
    await Promise.all([page.waitForNavigation({ timeout: 60_000 }), page.click('form.drop button')]);
    expect(page.url()).toContain('/desk/reports/dropped/');
    expect(readFileSync(join(folders.content, 'reports/dropped/dropped.csv'), 'utf8')).toBe(text);
  });
});

describe.each([
  ['light', false],
  ['dark', true],
] as const)('every page of the desk in the %s theme', (_name, dark) => {
  test('has no error by both pa11y runners', async () => {
    const before = readFileSync(reportFile, 'utf8');
    const cookie = (await browser.cookies()).map(({ name, value }) => `${name}=${value}`).join('; ');
    const audit = async (paths: readonly string[], actions: string[]): Promise<unknown[]> => {
      const { results, total } = await pa11yCi(
        paths.map((path) => `${server.origin}${path}`),
        {
          runners: ['axe', 'htmlcs'],
          standard: 'WCAG2AA',
          levelCapWhenNeedsReview: 'warning',
          useIncognitoBrowserContext: false,
          headers: { cookie },
          actions,
          timeout: 120_000,
          log: { info: () => undefined, error: () => undefined, debug: () => undefined },
          chromeLaunchConfig: chromiumLaunch(dark),
        },
      );
      expect(total).toBe(paths.length);
      return Object.entries(results).flatMap(([url, issues]) => issues.map((issue) => ({ url, ...issue })));
    };
    // The waiting tells that it is the page itself, and not the answer to a stranger.
    const isThere = (selector: string): string => `wait for element ${selector} to be visible`;
    expect(await audit(['/desk/'], [isThere('.rows')])).toEqual([]);
    expect(await audit(['/desk/shop/'], [isThere('form.answers')])).toEqual([]);
    expect(await audit(['/desk/reports/nowhere/'], [])).toEqual([]);
    const groups = ['test', 'compared', 'golfers', 'interests', 'conditions', 'plan'];
    const opened = groups.map((id) => `click element #group-${id} summary`);
    const place = `/desk/reports/${slug}/`;
    expect(await audit([place], [...opened, 'click element details.menu summary'])).toEqual([]);
    expect(await audit([`${place}shots/`], [isThere('.shots')])).toEqual([]);
    // With questions open, and with something wrong in an answer, in the narrative and in a file.
    writeFileSync(
      reportFile,
      `${before
        .replace('status: published', 'status: draft')
        .replace(/consent: .*/, 'consent:')
        .replace(/published: .*/, 'published: soon')
        .replace('date: 2026', 'date: 26')}\n{{ mean nothing at all }}\n`,
    );
    expect(await audit([place], [isThere('.problems')])).toEqual([]);
    writeFileSync(reportFile, before);
  });
});
