import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import pa11yCi from 'pa11y-ci';
import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { chromiumLaunch, launch } from '../site/browser.ts';
import { foldersFor } from './builds.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from './contentFolder.ts';
import { startDev, type DevServer } from './devServer.ts';

const slug = 'two-heads';
const folders = foldersFor(
  contentFolder({
    'shop.yaml': shop,
    [`reports/${slug}/report.md`]: twoHeads(),
    [`reports/${slug}/shots.csv`]: twoHeadsCsv,
  }),
);
const reportFile = join(folders.content, 'reports', slug, 'report.md');

let server: DevServer;
let browser: Browser;

beforeAll(async () => {
  server = await startDev(folders);
  browser = await launch();
  const page = await browser.newPage();
  await page.goto(/http:\S+\/desk\/\?token=\S+/.exec(server.said())?.[0] ?? '');
});

afterAll(async () => {
  await browser.close();
  await server.stop();
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
    const folds = ['brand', 'defaults', 'reuse', 'exports'].map((id) => `click element #group-${id} summary`);
    expect(await audit(['/desk/shop/'], [isThere('form.answers'), ...folds])).toEqual([]);
    expect(await audit(['/desk/reports/nowhere/'], [])).toEqual([]);
    const groups = ['test', 'compared', 'golfers', 'interests', 'conditions', 'plan'];
    const opened = groups.map((id) => `click element #group-${id} summary`);
    const place = `/desk/reports/${slug}/`;
    expect(await audit([place], [...opened, 'click element details.menu summary'])).toEqual([]);
    const withLines = (...lines: readonly string[]): string =>
      before.replace('\nstatus: published', `\n${lines.join('\n')}\nstatus: published`);
    // With a shot left out, and a limit.
    writeFileSync(
      reportFile,
      withLines(
        'exclusions:',
        '  - {contender: alder, shot: 1, rule: misreads, reason: no reading}',
        '  - {metric: carry, below: 100 yd, reason: topped}',
      ),
    );
    expect(await audit([`${place}shots/`], [isThere('.shots')])).toEqual([]);
    // With a claim that the shots do not show, and what they would support unfolded.
    writeFileSync(
      reportFile,
      withLines(
        'claims: [{say: Birch goes farther, metric: carry, more: birch, than: alder, allow_unproven: true}]',
      ),
    );
    expect(await audit([`${place}claims/`], [isThere('#supported')])).toEqual([]);
    // With a correction, a reply and an older address, and with a warning that was read.
    writeFileSync(
      reportFile,
      withLines(
        'corrections:',
        '  - {date: 2026-05-09, what: a slip, was: one, now: two}',
        'replies:',
        '  - {from: its maker, date: 2026-05-09, text: Thanks.}',
        'aliases: [heads]',
        'seen: [{warning: number-unmatched}]',
      ),
    );
    expect(await audit([`${place}after/`], [isThere('#correct ~ form .rows')])).toEqual([]);
    expect(await audit([place], ['click element .answered summary', isThere('#answered-0')])).toEqual([]);
    // With questions open, and with something wrong in an answer, in the narrative and in a file.
    writeFileSync(
      reportFile,
      `${before
        .replace('status: published', 'published: soon\nstatus: draft')
        .replace('consent: yes', 'consent:')
        .replace('date: 2026', 'date: 26')}\n{{ mean nothing at all }}\n`,
    );
    expect(await audit([place], [isThere('.problems')])).toEqual([]);
    writeFileSync(reportFile, before);
  });
});
