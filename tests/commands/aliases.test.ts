import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import { readLedger, type Ledger } from '../../src/intake/ledger.ts';
import { recordLedger } from '../../src/commands/recordLedger.ts';
import { checkedSite } from '../../src/site/checkedSite.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { build, foldersFor } from './builds.ts';
import { contentFolder, twoHeads, twoHeadsCsv } from './contentFolder.ts';
import { listen } from './listen.ts';

const named = (aliases: string) => (front: string) =>
  front.replace('status: published', `status: published\naliases: ${aliases}`);
const site = (aliases: Readonly<Record<string, string>>): string =>
  contentFolder({
    'shop.yaml': 'name: Example Golf Workshop\naddress: https://golf.example/tests/\n',
    ...Object.fromEntries(
      Object.entries(aliases).flatMap(([slug, own]) => [
        [`reports/${slug}/report.md`, twoHeads(own === '' ? undefined : named(own))],
        [`reports/${slug}/shots.csv`, twoHeadsCsv],
      ]),
    ),
  });
const problemsOf = (content: string): readonly string[] =>
  checkedSite(content)
    .problems.filter(({ kind }) => kind === 'alias-taken' || kind === 'value-invalid')
    .map(({ kind, file, line, found, cure }) => `${file}:${line} ${kind}: ${found}. ${cure}`);

test('an older address that belongs to another report, or to nobody, is an error where it stands', () => {
  const content = site({
    a: '[first, First]',
    b: '[a, first]',
    c: '[old/er, index.html]',
    d: '[d]',
    e: '[e-2, été]',
  });
  const cure = 'Take it out here, or there; one address can lead to one report only.';
  expect(problemsOf(content)).toEqual([
    'reports/c/report.md:16 value-invalid: old/er. Write the name alone, without slashes: for https://shop.example/reports/two-heads/ write two-heads.',
    'reports/c/report.md:16 value-invalid: index.html. Write the name alone, without slashes: for https://shop.example/reports/two-heads/ write two-heads.',
    `reports/a/report.md:16 alias-taken: First, which is an older name of a. ${cure}`,
    `reports/b/report.md:16 alias-taken: a, which is the report a itself. ${cure}`,
    `reports/b/report.md:16 alias-taken: first, which is an older name of a. ${cure}`,
    `reports/d/report.md:16 alias-taken: d, which is the report d itself. ${cure}`,
  ]);
  const built = loadSite(content).problems.filter(({ kind }) => kind === 'alias-taken');
  expect(built).toHaveLength(4);
});

test(
  'older addresses lead to where the report stands, by themselves and by a link',
  { timeout: 240_000 },
  () => {
    const folders = foldersFor(site({ heads: '[two-heads, köpfe]', other: '' }));
    const run = build(folders);
    expect(run.status, run.said).toBe(0);
    const at = (path: string): Document =>
      parseHTML(readFileSync(join(folders.out, path), 'utf8')).document as unknown as Document;
    for (const old of ['two-heads', 'köpfe']) {
      for (const page of ['', 'kit/', 'sheet/', 'embed/apart/']) {
        const document = at(`reports/${old}/${page}index.html`);
        const to = `/tests/reports/heads/${page}`;
        expect(document.querySelector('meta[http-equiv="refresh"]')?.getAttribute('content')).toBe(
          `0; url=${to}`,
        );
        expect(document.querySelector('main a')?.getAttribute('href')).toBe(to);
        expect(document.querySelector('link[rel="canonical"]')?.getAttribute('href')).toBe(
          `https://golf.example${to}`,
        );
        expect(document.querySelector('meta[name="robots"]')?.getAttribute('content')).toBe('noindex');
        expect(document.querySelector('main')?.textContent).toContain(
          'This report has another address now: Two heads',
        );
        expect(existsSync(join(folders.out, `reports/heads/${page}index.html`))).toBe(true);
      }
      expect(existsSync(join(folders.out, `reports/${old}/report.html`))).toBe(false);
    }
    const map = readFileSync(join(folders.out, 'sitemap-0.xml'), 'utf8');
    expect(map).toContain('/reports/heads/');
    expect(map).not.toMatch(/two-heads|pfe\//);

    // Every page says which address is its own; the whole report in one file is not to be found in its place.
    for (const page of ['', 'about/', 'method/', 'reports/heads/', 'reports/heads/kit/'])
      expect(at(`${page}index.html`).querySelector('link[rel="canonical"]')?.getAttribute('href')).toBe(
        `https://golf.example/tests/${page}`,
      );
    expect(at('404.html').querySelector('link[rel="canonical"]')).toBeNull();
    const file = at('reports/heads/report.html');
    expect(file.querySelector('meta[name="robots"]')?.getAttribute('content')).toBe('noindex');
    expect(file.querySelector('link[rel="canonical"]')?.getAttribute('href')).toBe(
      'https://golf.example/tests/reports/heads/',
    );
    const page = at('reports/heads/index.html');
    expect(page.querySelector('meta[name="robots"]')).toBeNull();
    const shared = (name: string): string | null | undefined =>
      page.querySelector(`meta[property="${name}"], meta[name="${name}"]`)?.getAttribute('content');
    expect(shared('twitter:card')).toBe('summary_large_image');
    expect(shared('og:image')).toBe('https://golf.example/tests/reports/heads/share.png');
    expect([shared('og:image:width'), shared('og:image:height')]).toEqual(['1200', '630']);
    expect(shared('og:title')).toMatch(/^Carry of heads, one golfer: /);
    expect(page.querySelector('title')?.textContent).toBe(`${shared('og:title')} | Example Golf Workshop`);
    const png = readFileSync(join(folders.out, 'reports/heads/share.png'));
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([1200, 630]);
    const about = at('about/index.html');
    expect(about.querySelector('meta[property="og:title"]')?.getAttribute('content')).not.toBe('');
    expect(about.querySelector('meta[name="twitter:card"]')?.getAttribute('content')).toBe('summary');
  },
);

test('what is on record of a report stays its own under another name, and is written under that', () => {
  const content = site({ 'two-heads': '' });
  const record = (): string => {
    const { terminal, said } = listen();
    expect(recordLedger({ contentDir: content, today: '2026-06-01', terminal })).toBe(true);
    return said();
  };
  const ledger = (): Ledger | null =>
    readLedger('ledger.json', readFileSync(join(content, 'ledger.json'), 'utf8')).ledger;
  expect(record()).toContain('two-heads: published report recorded');
  renameSync(join(content, 'reports/two-heads'), join(content, 'reports/heads'));
  const report = join(content, 'reports/heads/report.md');
  const changed = readFileSync(report, 'utf8').replace(
    'status: published',
    'status: published\naliases: [two-heads]',
  );
  const write = (text: string): void => writeFileSync(report, text);
  write(changed);
  expect(checkedSite(content).problems.map(({ kind }) => kind)).not.toContain('changed-without-correction');
  write(changed.replace('Two heads', 'Two other heads'));
  expect(checkedSite(content).problems.map(({ kind }) => kind)).toContain('changed-without-correction');
  write(changed);
  expect(record()).not.toContain('published report recorded');
  expect(ledger()?.reports.map(({ slug, records }) => [slug, records.length])).toEqual([['heads', 1]]);
});
