import { mkdtempSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { plannedOrder } from '../../src/intake/plan/plannedOrder.ts';
import { hittingSheet } from '../../src/kit/hittingSheet.ts';
import { usualExclusionRule, usualStoppingRule, usualWarmUp } from '../../src/planning/usualRules.ts';
import { launch, patience } from '../site/browser.ts';
import { foldersFor } from './builds.ts';
import { shop } from './contentFolder.ts';
import { deskAudit } from './deskAudit.ts';
import { startDev, type DevServer } from './devServer.ts';

const folders = foldersFor(mkdtempSync(join(tmpdir(), 'straightface-plan-')));
writeFileSync(join(folders.content, 'shop.yaml'), shop);

let server: DevServer;
let browser: Browser;
let page: Page;

beforeAll(async () => {
  server = await startDev(folders);
  browser = await launch();
  page = await browser.newPage();
  page.setDefaultTimeout(patience);
  await page.setViewport({ width: 1280, height: 900 });
  await page.goto(/http:\S+\/desk\/\?token=\S+/.exec(server.said())?.[0] ?? '');
});

afterAll(async () => {
  await browser.close();
  await server.stop();
});

async function tabTo(selector: string): Promise<void> {
  for (let tries = 0; tries < 100; tries += 1) {
    await page.keyboard.press('Tab');
    if (await page.evaluate((wanted) => document.activeElement?.matches(wanted) === true, selector)) return;
  }
  throw new Error(`No key leads to ${selector} on ${page.url()}`);
}

async function press(selector: string): Promise<void> {
  await tabTo(selector);
  await Promise.all([page.waitForNavigation({ waitUntil: 'load' }), page.keyboard.press('Enter')]);
}

const answer = async (key: string, text: string): Promise<void> => {
  await tabTo(`[name="answer.${key}"]`);
  await page.keyboard.type(text);
};

const value = (key: string): Promise<string> =>
  page.$eval(`[name="answer.${key}"]`, (control) =>
    control instanceof HTMLInputElement ? control.value : '',
  );

const found = (): Promise<string> =>
  page.$eval('.worked-out', ({ textContent }) => textContent?.replace(/\s+/g, ' ').trim() ?? '');

/** Waits until the arithmetic of the page says something. */
const says = (words: string): Promise<unknown> =>
  page.waitForFunction(
    (wanted) => document.querySelector('.worked-out')?.textContent?.includes(wanted) === true,
    { timeout: 60_000 },
    words,
  );

describe('a test is planned by keyboard alone', () => {
  test('the arithmetic follows what is typed, without the page being loaded again', async () => {
    await press('.places a[href$="/desk/plan/"]');
    await page.evaluate(() => {
      document.title = 'Not loaded again';
    });
    await tabTo('[name="answer.contender"]');
    await page.keyboard.type('Alder');
    await tabTo('[name="answer.contender"]');
    await page.keyboard.type('Birch');
    await answer('varied', 'head');
    await tabTo('[name="answer.club"]');
    await page.keyboard.press('Space');
    await says('typical of a middle handicap with a driver');
    expect(await found()).toContain('For a true gap of 5 yd to be found 4 times in 5: 93 shots with each.');
    await answer('metric', 'ball speed');
    await says('Spread of ball speed');
    // What was proposed for carry and left alone is what is proposed for ball speed.
    expect(await value('matters')).toBe('2 mph');
    await answer('spread', '2 mph');
    await says('as you typed it');
    expect(await page.title()).toBe('Not loaded again');
    expect(await page.$eval('.worked-out', (region) => region.getAttribute('aria-live'))).toBe('polite');
  });

  test('nothing that was typed is lost while the desk does not answer', async () => {
    const before = await found();
    await page.setOfflineMode(true);
    await answer('shots', '15');
    await says('The desk did not answer');
    expect(await found()).toContain(before);
    expect([await value('shots'), await value('spread')]).toEqual(['15', '2 mph']);
    await page.setOfflineMode(false);
    await answer('expectation', 'no difference');
    await says('With 15 shots each');
    expect(await found()).not.toContain('The desk did not answer');
  });

  test('the plan is recorded, and its sheet stands ready', async () => {
    await press('button[value=record]');
    expect(page.url()).toBe(`${server.origin}/desk/reports/alder-and-birch/?planned`);
    const report = readFileSync(join(folders.content, 'reports/alder-and-birch/report.md'), 'utf8');
    expect(report).toContain('  shots_per_contender: 15\n');
    expect(report).toMatch(/^primary: ball_speed$/m);
    expect(report).toContain('  expectation: no difference\n');
    await press('a[href$="/sheet/"]');
    expect(await page.$eval('h1', ({ textContent }) => textContent)).toBe('Alder and Birch');
    // Its style is let in by the policy of the page.
    expect(await page.$eval('.order table', (table) => getComputedStyle(table).borderCollapse)).toBe(
      'collapse',
    );
  });
});

test('without script the same is done by a button', async () => {
  const plain = await browser.newPage();
  await plain.setJavaScriptEnabled(false);
  await plain.goto(`${server.origin}/desk/plan/`);
  await plain.type('#answer-plan-contender-0', 'Cedar');
  await plain.type('#answer-plan-contender-5', 'Dogwood');
  await plain.type('[name="answer.varied"]', 'ball');
  await plain.click('[name="answer.club"][value=iron]');
  await Promise.all([plain.waitForNavigation(), plain.click('button[value=work-out]')]);
  const text = await plain.$eval('.worked-out', ({ textContent }) => textContent);
  expect(text).toContain('43 shots with each.');
  await Promise.all([plain.waitForNavigation(), plain.click('button[value=record]')]);
  expect(readdirSync(join(folders.content, 'reports')).sort()).toEqual([
    'alder-and-birch',
    'cedar-and-dogwood',
  ]);
  await plain.close();
});

test('the sheet of two dozen shots prints on one page of A4 and of Letter, and the page of a plan fits a phone', async () => {
  const sheet = await browser.newPage();
  const order = plannedOrder({
    contenders: ['Alder 9°', 'Birch 9°, used'],
    shotsEach: 12,
    turns: { kind: 'rotation' },
    seed: 'a seed',
  });
  await sheet.setContent(
    hittingSheet({
      title: 'Alder 9° and Birch 9°, used',
      date: '2026-05-09',
      varied: 'head',
      metric: 'carry',
      matters: '5 yd',
      shotsEach: 12,
      turns: 'random rotation',
      seed: 'a seed',
      warmUp: usualWarmUp,
      exclusionRule: usualExclusionRule,
      stoppingRule: usualStoppingRule(12),
      order: (order ?? []).map(({ shot, round, contender }) => ({ shot, round, label: contender })),
    }),
  );
  for (const format of ['a4', 'letter'] as const) {
    const pdf = Buffer.from(await sheet.pdf({ format })).toString('latin1');
    expect([format, pdf.match(/\/Type\s*\/Page\b/g)?.length]).toEqual([format, 1]);
  }
  await sheet.setViewport({ width: 390, height: 844 });
  for (const path of ['/desk/plan/', '/desk/', '/desk/plan/alder-and-birch/sheet/']) {
    await sheet.goto(`${server.origin}${path}`);
    expect([path, await sheet.evaluate(() => document.documentElement.scrollWidth)]).toEqual([path, 390]);
  }
  await sheet.close();
});

test('no page of a plan has an error by both runners, in either theme', async () => {
  const audit = (path: string, look: Parameters<typeof deskAudit>[2]): ReturnType<typeof deskAudit> =>
    deskAudit(browser, new URL(path, server.origin).href, look);
  expect(await audit('/desk/plan/', { pressed: ['form.plan summary'], there: 'form.plan' })).toEqual([]);
  expect(await audit('/desk/', { there: 'section[aria-labelledby="plans"] li' })).toEqual([]);
  expect(await audit('/desk/reports/alder-and-birch/', { there: '#planned' })).toEqual([]);
  // On the desk nothing can run in the sheet, the runners neither.
  const sheet = join(folders.content, 'reports/alder-and-birch/hitting-sheet.html');
  expect(await audit(pathToFileURL(sheet).href, { there: '.order' })).toEqual([]);
});
