import { existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { checkContent } from '../../src/commands/checkContent.ts';
import { launch, patience } from '../site/browser.ts';
import { foldersFor } from './builds.ts';
import { startDev, type DevServer } from './devServer.ts';
import { fiveHeadsCsv } from './fiveHeads.ts';
import { keyboard, mouse, mouseWithoutScript, type Hand } from './hands.ts';
import { listen } from './listen.ts';

const sessionFile = join(mkdtempSync(join(tmpdir(), 'straightface-desk-test-')), 'five_heads_2026-04-11.csv');
const slug = 'five-heads-2026-04-11';
writeFileSync(sessionFile, fiveHeadsCsv);

/** One server for all: it takes ten seconds of a processor to make its first page. Each finds an empty folder. */
const folders = foldersFor(mkdtempSync(join(tmpdir(), 'straightface-empty-')));
let server: DevServer;
let browser: Browser;
beforeAll(async () => {
  server = await startDev(folders);
  browser = await launch();
});
afterAll(async () => {
  await browser.close();
  await server.stop();
});

/** Addresses of the desk by which somebody came in. */
const used = new Set<string>();

/** Takes away all that somebody wrote and built before, and waits until the server knows nothing of it. */
async function emptied(): Promise<void> {
  for (const entry of readdirSync(folders.content)) rmSync(join(folders.content, entry), { recursive: true });
  rmSync(folders.out, { recursive: true, force: true });
  const found = async (): Promise<number> => (await fetch(`${server.origin}/reports/${slug}/`)).status;
  await expect.poll(found, { timeout: patience }).toBe(404);
}

describe.each([
  { by: 'by keyboard alone', handOf: keyboard, script: true },
  { by: 'by mouse', handOf: mouse, script: true },
  { by: 'by mouse, in a browser that runs no script', handOf: mouseWithoutScript, script: false },
])('from an empty folder to a published page, $by', ({ handOf, script }) => {
  let visit: BrowserContext;
  let page: Page;
  let hand: Hand;
  /** What was typed or chosen, one for each answer. */
  const answered: string[] = [];
  const reportFile = (): string => join(folders.content, 'reports', slug, 'report.md');

  beforeAll(async () => {
    // Without the cookie of whoever came before.
    visit = await browser.createBrowserContext();
    page = await visit.newPage();
    page.setDefaultTimeout(patience);
    await page.setViewport({ width: 1280, height: 900 });
    await page.setJavaScriptEnabled(script);
    hand = handOf(page);
  });
  afterAll(async () => {
    await visit.close();
  });

  const answer = async (name: string, text: string): Promise<void> => {
    await hand.type(`[name="answer.${name}"]`, text);
    answered.push(name);
  };
  const choose = async (name: string): Promise<void> => {
    await hand.choose(`[name="answer.${name}"]`);
    answered.push(name);
  };
  const text = (selector: string): Promise<string> =>
    page.$eval(selector, (element) => element.textContent?.replace(/\s+/g, ' ').trim() ?? '');

  test('the printed address opens the desk', async () => {
    await emptied();
    // An address lets one visitor in; a stranger at the door has the next one printed.
    await page.goto(`${server.origin}/desk/`);
    const unused = (): string =>
      [...server.said().matchAll(/http:\S+\/desk\/\?token=\S+/g)]
        .map(([printed]) => printed)
        .findLast((printed) => !used.has(printed)) ?? '';
    await expect.poll(unused, { timeout: patience }).not.toBe('');
    const address = unused();
    used.add(address);
    await page.goto(address);
    expect(page.url()).toBe(`${server.origin}/desk/`);
    expect(await text('h1')).toBe('Desk');
  });

  test('the shop says who it is', async () => {
    await hand.press('main a[href$="/desk/shop/"]');
    await answer('name', 'Example Golf Workshop');
    await answer('interests.paid_by', 'the shop');
    await answer('interests.commission_or_gifts', 'none');
    await answer('interests.seen_before', 'nobody outside the shop');
    await hand.press('main button[type=submit]');
    expect(await text('.notice')).toBe('Saved.');
    expect(readFileSync(join(folders.content, 'shop.yaml'), 'utf8')).toBe(
      '# yaml-language-server: $schema=.schema/shop.json\nschema: 1\nname: Example Golf Workshop\ninterests:\n  paid_by: the shop\n  commission_or_gifts: none\n  seen_before: nobody outside the shop\n',
    );
  });

  test('a session file is given, and what it says is told', async () => {
    await hand.press('.places a[href$="/desk/"]');
    await hand.giveFile(sessionFile, fiveHeadsCsv);
    await hand.press('form.drop button');
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
    // One head came from elsewhere; the others are answered in one go.
    await answer('same.supplied_by', 'our stock');
    await choose('same.sold_here');
    await answer('contenders.elm-9.supplied_by', 'lent by its distributor');
    const [golfer = ''] = open.flatMap((name) => /^answer\.(hitters\.[^.]+)\.role$/.exec(name)?.[1] ?? []);
    await answer(`${golfer}.role`, 'staff fitter');
    await answer(`${golfer}.consent`, 'yes');
    await hand.press('button[value=save]');
    expect(await text('.notice')).toBe('Saved.');
    expect(await text('#must')).toBe('Everything that must be answered is answered');
    expect(answered.length).toBeLessThanOrEqual(25);
    expect(answered.length).toBe(10);
  });

  test('a claim that the shots support is added from its page', async () => {
    await hand.press('.parts a[href$="/claims/"]');
    const claim = await text('section[aria-labelledby="supported"] .claim');
    expect(claim).toMatch(/^Elm 9 carr/);
    await hand.press('section[aria-labelledby="supported"] button[value="add"]');
    expect(await text('.notice')).toBe('Added. Your report prints it with what the shots make of it.');
    expect(readFileSync(reportFile(), 'utf8')).toContain(`say: ${claim.replace(/\.$/, '')}`);
    await hand.press('.parts a');
  });

  test('three sentences are written, one with a figure from the menu, and it is published', async () => {
    await hand.type('#narrative', 'All five heads went onto one shaft. The carry of the last one came to ');
    if (script) {
      await hand.open('details.menu summary');
      await hand.open('button[data-insert="{{ mean carry elm-9 }}"]');
      // The menu puts one back into the text, behind what was put there.
      expect(await page.evaluate(() => document.activeElement?.id)).toBe('narrative');
      await page.keyboard.type(' on average. We would hit them again on grass.');
    } else {
      // What the menu shows can be copied.
      expect(await text('details.menu')).toContain('{{ mean carry elm-9 }}');
      await page.keyboard.type('{{ mean carry elm-9 }} on average. We would hit them again on grass.');
    }
    await hand.press('button[value=publish]');
    expect(await text('.notice')).toContain('Published:');
    const written = readFileSync(reportFile(), 'utf8');
    expect(written).toMatch(/\npublished: \d{4}-\d{2}-\d{2}\n/);
    expect(written).toContain('\nstatus: published\n');
    expect(written).toContain('came to {{ mean carry elm-9 }} on average.');
    for (const head of ['alder-9', 'birch-9', 'cedar-9', 'dogwood-9', 'elm-9']) {
      const own = written.slice(written.indexOf(`\n  ${head}:\n`));
      expect(/\n {4}supplied_by: (.*)/.exec(own)?.[1]).toBe(
        head === 'elm-9' ? 'lent by its distributor' : 'our stock',
      );
    }
  });

  test('the page beside the form shows it, from the same place', async () => {
    const shown = async (): Promise<string> => {
      const frame = page.frames().find((each) => each.url() === `${server.origin}/reports/${slug}/`);
      return (await frame?.$eval('main', (main) => main.textContent).catch(() => null)) ?? '';
    };
    await expect.poll(shown, { timeout: patience }).toContain('hit them again on grass');
  });

  test('an answer that is given later changes its own line alone', async () => {
    const before = readFileSync(reportFile(), 'utf8').split('\n');
    await hand.open('#group-conditions summary');
    await answer('conditions.place', 'indoors');
    await hand.press('button[value=save]');
    const after = readFileSync(reportFile(), 'utf8').split('\n');
    expect(after.filter((line) => !before.includes(line))).toEqual(['  place: indoors']);
    expect(before.filter((line) => !after.includes(line)).length).toBeLessThanOrEqual(1);
    expect(after.filter((line) => before.includes(line))).toEqual(
      before.filter((line) => after.includes(line)),
    );
  });

  test('the site is built, and has the page; check finds nothing that stands in the way', async () => {
    await hand.press('.places a[href$="/desk/"]');
    await hand.press('form[action$="/desk/build/"] button', 300_000);
    expect(await text('.notice')).toBe(
      `Your site is built. It lies in ${folders.out}. See it as readers will.`,
    );
    await hand.press('.notice a');
    const { origin } = new URL(page.url());
    expect(origin).not.toBe(server.origin);
    await page.goto(`${origin}/reports/${slug}/`);
    expect(await text('h1')).toBe('Five heads');
    expect(await text('main')).toMatch(/The carry of the last one came to 23\d(?:\.\d+)? yards on average\./);
    const built = readdirSync(folders.out, { recursive: true, encoding: 'utf8' });
    expect(built.filter((path) => /desk/i.test(path))).toEqual([]);
    const { terminal } = listen();
    expect(checkContent({ contentDir: folders.content, only: [], json: false, terminal })).toBe(0);
    expect(existsSync(join(folders.content, '.straightface-lock'))).toBe(false);
  });
});
