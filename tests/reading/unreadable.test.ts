import * as fs from 'node:fs';
import { chmodSync, mkdirSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { openContentFolder, type ReadingDisk } from '../../src/site/contentFiles.ts';
import { readContent } from '../../src/site/contentList.ts';
import { checkedSite } from '../../src/site/checkedSite.ts';
import { ledgerOf } from '../../src/site/ledger.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';
import { systemError } from '../commands/failingDisk.ts';

const good = { 'reports/good/report.md': twoHeads(), 'reports/good/shots.csv': twoHeadsCsv };

/** A sound content folder with a second report that gets the harm. */
const content = (more: Readonly<Record<string, string | Uint8Array>> = {}): string =>
  contentFolder({
    'shop.yaml': shop,
    ...good,
    'reports/harmed/report.md': twoHeads(),
    'reports/harmed/shots.csv': twoHeadsCsv,
    ...more,
  });

const errors = (root: string): readonly string[] =>
  checkedSite(root)
    .problems.filter(({ severity }) => severity === 'error')
    .map(({ kind, file, found }) => `${kind} ${file}: ${found ?? ''}`);

/** The disk as it is, but for one path. */
const refusing = (path: string, code: string): ReadingDisk => {
  const refuse = <Work extends (...given: never[]) => unknown>(real: Work, syscall: string): Work =>
    ((...given: Parameters<Work>) => {
      if (String(given[0]).endsWith(path)) throw systemError(code, syscall);
      return real(...given);
    }) as Work;
  return {
    ...fs,
    readFileSync: refuse(fs.readFileSync, 'open'),
    readdirSync: refuse(fs.readdirSync, 'scandir'),
  };
};

describe('a file that cannot be read', () => {
  test.each([
    ['reports/harmed/report.md', 'EACCES', 'there is no permission (EACCES)'],
    ['reports/harmed/shots.csv', 'EIO', 'the disk reports a fault (EIO)'],
    ['shop.yaml', 'EACCES', 'there is no permission (EACCES)'],
    ['shop.yaml', 'ESTALE', 'the system says ESTALE'],
  ])('%s, %s: a problem at its place, and the other report is shown', (path, code, found) => {
    const folder = openContentFolder(content(), refusing(path, code));
    const { reports, problems } = readContent(folder);
    const all = [...problems, ...reports.flatMap((report) => report.problems)];
    expect(all.filter(({ kind }) => kind === 'file-unreadable')).toMatchObject([
      {
        file: path,
        severity: 'error',
        expected: 'a file that can be read',
        found,
        cure: 'Give whoever runs the command the right to read it, or put a good copy of the file in its place.',
      },
    ]);
    expect(all.filter(({ kind }) => kind.endsWith('-missing'))).toEqual([]);
    expect(reports.find(({ slug }) => slug === 'good')?.source).not.toBeNull();
  });

  test('the ledger: an error, and not the ledger of a shop that keeps none', () => {
    const folder = openContentFolder(content({ 'ledger.json': '{}' }), refusing('ledger.json', 'EACCES'));
    expect(ledgerOf(folder)).toMatchObject({ ledger: null, problems: [{ kind: 'file-unreadable' }] });
  });

  test('a folder: its reports are not taken for none', () => {
    const folder = openContentFolder(content(), refusing('reports', 'EACCES'));
    expect(readContent(folder).problems).toMatchObject([
      {
        kind: 'folder-unreadable',
        file: 'reports',
        expected: 'a folder that can be read',
        found: 'there is no permission (EACCES)',
        cure: 'Give whoever runs the command the right to read it, or put a good copy of the folder in its place.',
      },
    ]);
  });

  test('without permission, on the disk itself', () => {
    const root = content({ 'contenders/cedar.yaml': 'label: Cedar\n' });
    chmodSync(root, 0o755);
    for (const path of ['reports/harmed/shots.csv', 'contenders/cedar.yaml']) chmodSync(join(root, path), 0);
    expect(asOrdinaryUser(() => errors(root))).toEqual([
      'file-unreadable contenders/cedar.yaml: there is no permission (EACCES)',
      'file-unreadable reports/harmed/shots.csv: there is no permission (EACCES)',
    ]);
  });

  test('a link in a circle', () => {
    const root = content();
    fs.rmSync(join(root, 'reports/harmed/shots.csv'));
    symlinkSync('shots.csv', join(root, 'reports/harmed/shots.csv'));
    expect(errors(root)).toEqual([
      'file-unreadable reports/harmed/shots.csv: it is a link that leads in a circle (ELOOP)',
    ]);
  });

  test('a file in the place of the content folder, or of a folder in it', () => {
    const root = content();
    expect(errors(join(root, 'shop.yaml'))).toEqual([
      `folder-unreadable ${join(root, 'shop.yaml')}: there is a file where a folder should be (ENOTDIR)`,
    ]);
    writeFileSync(join(root, 'inbox'), '');
    expect(errors(root)).toEqual([
      'folder-unreadable inbox: there is a file where a folder should be (ENOTDIR)',
    ]);
  });

  test('a ledger that is a link elsewhere, or a folder, is not taken for none', () => {
    const root = content();
    symlinkSync('/etc/hostname', join(root, 'ledger.json'));
    expect(errors(root)).toEqual(['folder-is-link ledger.json: a link that leads elsewhere, or no file']);
  });
});

describe('a file far too large is not read', () => {
  test.each([
    [
      'reports/harmed/report.md',
      'at most 5 MB',
      'Take out what is no text, such as pictures pasted into it.',
    ],
    ['reports/harmed/shots.csv', 'at most 50 MB', 'Split the session over several files.'],
    ['shop.yaml', 'at most 2 MB', 'Take out what is no answer; notes go into a file of their own.'],
    ['ledger.json', 'at most 50 MB', 'Nobody edits this file by hand: take back its last good version.'],
  ])('%s', (path, expected, cure) => {
    const root = content({ 'ledger.json': '' });
    // A sparse file: three gigabytes by its size, none on the disk.
    truncateSync(join(root, path), 3 * 2 ** 30);
    const { problems } = checkedSite(root);
    expect(problems.filter(({ kind }) => kind === 'file-too-large')).toMatchObject([
      { file: path, severity: 'error', expected, found: '3221.2 MB', cure },
    ]);
    expect(loadSite(root).reports.map(({ source }) => source.slug)).toContain('good');
  });
});

describe('text that is not UTF-8', () => {
  const windows = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

  test('front matter, shop and sheets keep their letters, each with a warning', () => {
    const front = twoHeads((text) =>
      text
        .replace('title: Two heads', 'title: D\u00e9p\u00f4t heads')
        .replace(/ {2}alder: .*\n {2}birch: .*/, '  - alder\n  - birch'),
    );
    const sheet = (label: string): string => `label: ${label}\nsupplied_by: our stock\nsold_here: new\n`;
    const root = contentFolder({
      'shop.yaml': windows('name: Gr\u00fcnwald\n'),
      'contenders/alder.yaml': windows(sheet('Alder 9\u00b0')),
      'contenders/birch.yaml': sheet('Birch'),
      'reports/two/report.md': new Uint8Array(Buffer.from(`\ufeff${front}`, 'utf16le')),
      'reports/two/shots.csv': twoHeadsCsv.replaceAll('Alder', 'Alder 9\u00b0'),
    });
    const site = loadSite(root);
    expect(
      site.problems
        .filter(({ kind }) => kind === 'not-utf-8')
        .map(({ file, found }) => `${file} ${found ?? ''}`),
    ).toEqual([
      'shop.yaml Windows-1252',
      'contenders/alder.yaml Windows-1252',
      'reports/two/report.md UTF-16',
    ]);
    expect(site.problems.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(site.publisher).toBe('Gr\u00fcnwald');
    expect(site.reports[0]?.source.front.title).toBe('D\u00e9p\u00f4t heads');
    expect(site.reports[0]?.source.front.contenders.map(({ label }) => label)).toEqual([
      'Alder 9\u00b0',
      'Birch',
    ]);
  });

  test('broken UTF-8 in a report: an error at its line', () => {
    const root = content();
    const text = Buffer.from(
      twoHeads((front) => front.replace('title: Two heads', 'title: D\u00e9p\u00f4t X heads')),
    );
    text[text.indexOf('X')] = 0xe9;
    writeFileSync(join(root, 'reports/harmed/report.md'), text);
    expect(errors(root)).toEqual(['encoding-broken reports/harmed/report.md: bytes that are no characters']);
    expect(checkedSite(root).problems.find(({ kind }) => kind === 'encoding-broken')?.line).toBe(2);
  });
});

test('files that commands leave half written are no content', () => {
  const root = content();
  mkdirSync(join(root, 'reports/.straightface-1-1.new'));
  for (const path of [
    '.straightface-lock',
    'reports/.straightface-1-1.new/shots.csv',
    'reports/good/.straightface-1-2.new',
  ])
    writeFileSync(join(root, path), '');
  expect(errors(root)).toEqual([]);
});

/** Whoever runs the tests as the administrator may read everything; then as somebody who may not. */
function asOrdinaryUser<Value>(work: () => Value): Value {
  if (process.geteuid?.() !== 0) return work();
  process.seteuid?.(65534);
  try {
    return work();
  } finally {
    process.seteuid?.(0);
  }
}
