import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launch, patience } from '../site/browser.ts';
import { foldersFor } from './builds.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from './contentFolder.ts';
import { deskAudit } from './deskAudit.ts';
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
  page.setDefaultTimeout(patience);
  await page.goto(/http:\S+\/desk\/\?token=\S+/.exec(server.said())?.[0] ?? '');
});

afterAll(async () => {
  await browser.close();
  await server.stop();
});

test('no page of the desk has an error by both runners, in either theme', async () => {
  const before = readFileSync(reportFile, 'utf8');
  const audit = (path: string, look: Parameters<typeof deskAudit>[2]): ReturnType<typeof deskAudit> =>
    deskAudit(browser, server.origin + path, look);
  expect(await audit('/desk/', { there: '.rows' })).toEqual([]);
  const folds = ['brand', 'defaults', 'reuse', 'exports'].map((id) => `#group-${id} summary`);
  expect(await audit('/desk/shop/', { there: 'form.answers', pressed: folds })).toEqual([]);
  expect(await audit('/desk/reports/nowhere/', {})).toEqual([]);
  const groups = ['test', 'compared', 'golfers', 'interests', 'conditions', 'plan'];
  const opened = groups.map((id) => `#group-${id} summary`);
  const place = `/desk/reports/${slug}/`;
  expect(await audit(place, { pressed: [...opened, 'details.menu summary'] })).toEqual([]);
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
  expect(await audit(`${place}shots/`, { there: '.shots' })).toEqual([]);
  // With a claim that the shots do not show, and what they would support unfolded.
  writeFileSync(
    reportFile,
    withLines(
      'claims: [{say: Birch goes farther, metric: carry, more: birch, than: alder, allow_unproven: true}]',
    ),
  );
  expect(await audit(`${place}claims/`, { there: '#supported' })).toEqual([]);
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
  expect(await audit(`${place}after/`, { there: '#correct ~ form .rows' })).toEqual([]);
  expect(await audit(place, { pressed: ['.answered summary'], there: '#answered-0' })).toEqual([]);
  // With questions open, and with something wrong in an answer, in the narrative and in a file.
  writeFileSync(
    reportFile,
    `${before
      .replace('status: published', 'published: soon\nstatus: draft')
      .replace('consent: yes', 'consent:')
      .replace('date: 2026', 'date: 26')}\n{{ mean nothing at all }}\n`,
  );
  expect(await audit(place, { there: '.problems' })).toEqual([]);
  writeFileSync(reportFile, before);
});
