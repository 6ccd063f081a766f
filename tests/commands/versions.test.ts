import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import { recordLedger } from '../../src/commands/recordLedger.ts';
import { checkedSite } from '../../src/site/checkedSite.ts';
import { currentStamp } from '../../src/site/keptVersions.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { build, foldersFor, newFolder } from './builds.ts';
import { contentFolder, twoHeads, twoHeadsCsv } from './contentFolder.ts';
import { listen } from './listen.ts';

const shop = 'name: Example Golf Workshop\naddress: https://golf.example/tests/\n';
const published = (): string =>
  contentFolder({
    'shop.yaml': shop,
    'reports/heads/report.md': twoHeads(),
    'reports/heads/shots.csv': twoHeadsCsv,
  });
const corrected = (...days: readonly string[]): string =>
  twoHeads((front) =>
    front
      .replace('title: Two heads', 'title: Two heads, corrected')
      .replace(
        'status: published',
        `status: published\ncorrections: [${days.map((day) => `{date: ${day}, what: the title, was: Two heads, now: another}`).join(', ')}]`,
      ),
  );
const put = (content: string, path: string, text: string): void => {
  mkdirSync(dirname(join(content, path)), { recursive: true });
  writeFileSync(join(content, path), text);
};
const kinds = (content: string): readonly string[] => checkedSite(content).problems.map(({ kind }) => kind);
function record(content: string, outDir: string): string {
  const { terminal, said } = listen();
  expect(recordLedger({ contentDir: content, outDir, today: '2026-06-01', terminal }), said()).toBe(true);
  return said();
}
/** A built site that holds nothing but this report in one file, as it stands now. */
function builtAs(content: string): string {
  const out = newFolder('site');
  const [report] = loadSite(content).reports;
  if (report === undefined) throw new Error('no report');
  put(
    out,
    'reports/heads/report.html',
    `<meta name="straightface-edition" content="${currentStamp(report.source)}"><main id="main">${report.source.front.title}</main>`,
  );
  return out;
}
const kept = 'reports/heads/versions/2026-05-20.html';

test('a corrected report is kept as it was, and linked beside its correction', { timeout: 300_000 }, () => {
  const folders = foldersFor(published());
  const { content, out } = folders;
  expect(record(content, out)).toBe(
    'heads: published report recorded\nheads: "published: 2026-06-01" written into report.md\n',
  );
  expect(build(folders).status).toBe(0);
  const before = readFileSync(join(out, 'reports/heads/report.html'));
  put(content, 'reports/heads/report.md', corrected('2026-05-20'));
  expect(checkedSite(content).problems).toMatchObject([
    {
      kind: 'version-not-kept',
      severity: 'warning',
      line: 16,
      expected: 'the report as it was before 2026-05-20, in versions/2026-05-20.html',
      cure: 'Run "npm run record" before the next build: it keeps the version that stands in dist/ until then.',
    },
  ]);
  expect(record(content, out)).toBe(
    `heads: correction recorded\nheads: the version before the correction of 2026-05-20 is kept in ${kept}\n`,
  );
  expect(readFileSync(join(content, kept)).equals(before)).toBe(true);
  expect(kinds(content)).toEqual([]);
  expect(record(content, out)).toBe('Nothing new to record.\n');

  const run = build(folders);
  expect(run.status, run.said).toBe(0);
  const page = parseHTML(readFileSync(join(out, 'reports/heads/index.html'), 'utf8')).document;
  const link = [...page.querySelectorAll('#corrections a')].find((a) =>
    /as it was before/.test(a.textContent),
  );
  expect(link?.getAttribute('href')).toBe('/tests/reports/heads/versions/2026-05-20/report.html');
  const file = join(out, 'reports/heads/versions/2026-05-20/report.html');
  const older = parseHTML(readFileSync(file, 'utf8')).document;
  expect(older.querySelector('main > .notice')?.textContent).toBe(
    'This is the report as it was before the correction of 20 May 2026. The report as it stands',
  );
  expect(older.querySelector('main > .notice a')?.getAttribute('href')).toBe('/tests/reports/heads/');
  expect(older.querySelector('meta[name="robots"]')?.getAttribute('content')).toBe('noindex');
  expect(older.querySelector('h1')?.textContent).toBe('Two heads');
  expect(page.querySelector('h1')?.textContent).toBe('Two heads, corrected');
  // All else is as it was, byte for byte.
  const notice = older.querySelector('main > .notice')?.outerHTML ?? '?';
  expect(readFileSync(file, 'utf8').replace(notice, '')).toBe(before.toString('utf8'));
  const map = readFileSync(join(out, 'sitemap-0.xml'), 'utf8');
  expect(map).not.toContain('/versions/');
});

test('only what was on record is kept, nothing is written over, and what is missing is said once', () => {
  const content = published();
  const asPublished = builtAs(content);
  record(content, asPublished);
  put(content, 'reports/heads/report.md', corrected('2026-05-20'));
  const afterwards = builtAs(content);
  // The site was built first: what stood before is gone.
  expect(record(content, afterwards)).toContain(
    `heads: the version before the correction of 2026-05-20 is not kept, as ${afterwards} does not have it\n`,
  );
  expect(existsSync(join(content, kept))).toBe(false);
  expect(record(content, afterwards)).toBe('Nothing new to record.\n');
  // A site of before may still turn up.
  expect(record(content, asPublished)).toContain(`is kept in ${kept}`);
  const bytes = readFileSync(join(content, kept), 'utf8');
  put(asPublished, 'reports/heads/report.html', bytes.replace('Two heads', 'Three heads'));
  expect(record(content, asPublished)).toBe('Nothing new to record.\n');
  expect(readFileSync(join(content, kept), 'utf8')).toBe(bytes);

  // The next correction is of the version with one.
  put(
    content,
    'reports/heads/report.md',
    corrected('2026-05-20', '2026-05-25').replace('corrected', 'again'),
  );
  expect(kinds(content)).toEqual(['version-not-kept']);
  expect(record(content, asPublished)).toContain(
    'the version before the correction of 2026-05-25 is not kept',
  );
  expect(record(content, afterwards)).toContain('is kept in reports/heads/versions/2026-05-25.html');
});

test('what lies among the versions and is none is not published, and is told', () => {
  const content = published();
  put(content, 'reports/heads/report.md', corrected('2026-05-20'));
  put(content, kept, '<script>alert(1)</script>');
  put(content, 'reports/heads/versions/2026-05-21.html', 'x');
  put(content, 'reports/heads/versions/notes.txt', 'x');
  expect(
    checkedSite(content).problems.map(({ kind, file, found, expected }) => [kind, file, expected, found]),
  ).toEqual([
    [
      'version-unreadable',
      kept,
      'the report in one file, as it was kept from the site when the correction was put on record',
      'another file',
    ],
    ...['2026-05-21.html', 'notes.txt'].map((name) => [
      'version-without-correction',
      'reports/heads/report.md',
      'in versions/ a file for the day of a correction, such as 2026-04-11.html',
      `versions/${name}; days of corrections: 2026-05-20`,
    ]),
  ]);
  expect(loadSite(content).reports[0]?.source.versions).toEqual([]);
  rmSync(join(content, 'reports/heads/versions'), { recursive: true });
  expect(kinds(content)).toEqual([]);
});
