// Names of folders and files: accents that some disks keep apart from their letters, and names that become one address.
import { describe, expect, test } from 'vitest';
import type { Problem } from '../../src/problems/problem.ts';
import { checkedSite } from '../../src/site/checkedSite.ts';
import { composedNames } from '../../src/site/composedNames.ts';
import { openContentFolder } from '../../src/site/contentFiles.ts';
import { openContent } from '../../src/site/openContent.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';

const composed = 's\u00e9ance';
const apart = 'se\u0301ance';

const withSession = (name: string): string => twoHeads((front) => front.replace('shots.csv', name));
const line = ({ kind, severity, file, found, cure }: Problem): string =>
  [kind, severity, file, found ?? '-', cure].join(' | ');
const errors = (root: string, only: readonly string[] = []): readonly string[] =>
  checkedSite(root, only)
    .problems.filter(({ severity }) => severity === 'error')
    .map(line);

const reports = (slugs: readonly string[]): string =>
  contentFolder({
    'shop.yaml': shop,
    ...Object.fromEntries(
      slugs.flatMap((slug) => [
        [`reports/${slug}/report.md`, twoHeads()],
        [`reports/${slug}/shots.csv`, twoHeadsCsv],
      ]),
    ),
  });

describe('an accent kept apart from its letter', () => {
  test.each([
    [composed, apart],
    [apart, composed],
    [apart, apart],
  ])('is no other session file: %j on the disk, %j in the report', (onDisk, typed) => {
    const root = contentFolder({
      'shop.yaml': shop,
      'reports/one/report.md': withSession(`${typed}.csv`),
      [`reports/one/${onDisk}.csv`]: twoHeadsCsv,
    });
    expect(errors(root)).toEqual([]);
    const { report } = openContent(root, [], null).load('one');
    expect(report?.source.files.map(({ name }) => name)).toEqual([`${composed}.csv`]);
  });

  test('is composed in the name of a report, however it is asked for', () => {
    const root = reports([apart]);
    expect(openContent(root, [], null).slugs).toEqual([composed]);
    for (const asked of [composed, apart]) expect(errors(root, [asked])).toEqual([]);
    expect(openContent(root, [], null).load(composed).report?.session.shots).toHaveLength(12);
  });

  test('is told of where the file is not there', () => {
    const root = contentFolder({
      'shop.yaml': shop,
      'reports/one/report.md': withSession(`${apart}.csv`),
      [`reports/one/${apart}s.csv`]: twoHeadsCsv,
    });
    expect(errors(root)).toEqual([
      `session-file-missing | error | reports/one/report.md | files there: ${composed}s.csv | Did you mean "${composed}s.csv"? Else copy the session file into the folder of the report.`,
    ]);
  });

  test('keeps a file apart from one that has the name already', () => {
    const folder = composedNames(
      openContentFolder(contentFolder({ [`a/${composed}`]: 'composed', [`a/${apart}`]: 'apart' })),
    );
    expect(folder.text(`a/${composed}`).content).toBe('composed');
    expect(folder.files('a')).toEqual([composed, composed]);
    expect(folder.text('a/none-é').content).toBeNull();
  });
});

describe('two reports at one address', () => {
  test('are refused where only an accent is kept apart', () => {
    expect(errors(reports([composed, apart]))).toEqual([
      `duplicate-slug | error | reports/${composed} | two folders named ${composed}: in one of them an accent is kept apart from its letter | Rename one of the two folders.`,
    ]);
  });

  test('are refused where only capitals differ', () => {
    expect(errors(reports(['Heads', 'heads', 'shafts']))).toEqual([
      'duplicate-slug | error | reports/heads | Heads and heads, which differ in capital letters only; many hosts take them for one | Rename one of the two folders.',
    ]);
  });

  test('are seen too where one of them alone is checked', () => {
    expect(errors(reports(['Heads', 'heads']), ['heads'])).toHaveLength(1);
    expect(errors(reports(['heads', 'shafts']))).toEqual([]);
  });
});

describe('the name of a report', () => {
  test.each([
    ['index.html', 'index-html'],
    ['INDEX.HTM', 'index-htm'],
    ['heads.', 'heads'],
    ['a b', 'a-b'],
    ['-heads', 'heads'],
    ['heads#1', 'heads-1'],
    ['+', 'three-heads-one-shaft'],
  ])('is not %j', (slug, better) => {
    expect(errors(reports([slug]))).toEqual([
      `folder-name | error | reports/${slug} | ${slug} | Rename the folder, for example to ${better}.`,
    ]);
  });

  test.each(['größe', 'ヘッド', 'v2.1', '_tried', 'index', 'my.index.html'])('may be %j', (slug) => {
    expect(errors(reports([slug]))).toEqual([]);
  });
});
