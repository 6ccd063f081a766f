import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmdirSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { markBuild, unmarkBuild } from '../../src/commands/buildMark.ts';
import { longestBuild, newWorkFolder, removeLeftBehind } from '../../src/commands/workFolders.ts';
import { folderOf } from './folderOf.ts';

const gone = 2 ** 22 + 1;

describe('work folders', () => {
  test('are empty, of their own name, and as readable as the umask says', () => {
    const inside = join(folderOf({}), '.cache');
    const [first, second] = [newWorkFolder(inside), newWorkFolder(inside)];
    expect(first).not.toBe(second);
    // Deleted or not: a second build of one process would be shown the pages of the first.
    rmdirSync(first);
    expect(newWorkFolder(inside)).not.toBe(first);
    mkdirSync(first);
    expect(readdirSync(first)).toEqual([]);
    expect(statSync(first).mode & 0o777).toBe(0o777 & ~process.umask());
  });

  test('of builds that are gone are deleted, those of builds at work and of others left', () => {
    const inside = folderOf({});
    const old = ['new-aB3xYz', 'new-aB3xYz-astro', `new-${process.ppid}-0123456789ab`];
    const gonePids = [`new-${gone}-0123456789ab`, `new-${gone}-0123456789ab-astro`];
    const kept = [
      `new-${process.ppid}-ba9876543210`,
      'new-Q1w2E3',
      'new-photographs',
      'reports',
      'test-site',
    ];
    for (const name of [...old, ...gonePids, ...kept]) {
      mkdirSync(join(inside, name));
      writeFileSync(join(inside, name, 'index.html'), '');
    }
    const now = Date.now();
    const longAgo = new Date(now - longestBuild - 1000);
    for (const name of [...old, 'new-photographs', 'reports'])
      utimesSync(join(inside, name), longAgo, longAgo);
    removeLeftBehind(inside, now);
    expect(readdirSync(inside).sort()).toEqual(kept.sort());
  });

  test('where there is no folder nothing is left behind', () => {
    expect(() => removeLeftBehind(join(folderOf({}), 'none'), Date.now())).not.toThrow();
  });
});

describe('the copies of pages', () => {
  test('belong to one build at a time', () => {
    const file = join(folderOf({}), 'cache/building');
    expect(markBuild(file, Date.now())).toBe(true);
    writeFileSync(file, String(process.ppid));
    expect(markBuild(file, Date.now())).toBe(false);
    expect(readFileSync(file, 'utf8')).toBe(String(process.ppid));
    unmarkBuild(file);
    expect(existsSync(file)).toBe(false);
  });

  test.each([
    ['a killed build', String(gone)],
    ['a mark that was damaged', 'x'],
    ['an empty mark', ''],
  ])('are free after %s', (_what, text) => {
    const file = join(folderOf({ building: text }), 'building');
    expect(markBuild(file, Date.now())).toBe(true);
    expect(readFileSync(file, 'utf8')).toBe(String(process.pid));
  });

  test('are free after a day, whoever has that number now', () => {
    const file = join(folderOf({ building: String(process.ppid) }), 'building');
    expect(markBuild(file, Date.now() + longestBuild + 1000)).toBe(true);
  });
});
