import { appendFileSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, test } from 'vitest';
import { reportKey } from '../../src/site/cacheKey.ts';
import { openContentFolder } from '../../src/site/contentFiles.ts';
import { rememberedFiles } from '../../src/site/rememberedFiles.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';

let root = '';
beforeEach(() => {
  root = contentFolder({
    'shop.yaml': shop,
    'reports/two/report.md': twoHeads((front) =>
      front.replace('session: shots.csv', 'session: morning shots.dat'),
    ),
    'reports/two/morning shots.dat': twoHeadsCsv,
  });
});

const key = (): string | null =>
  reportKey(openContentFolder(root), 'two', { code: 'x', shop: null, sheets: new Map(), ledger: null });
const at = (name: string): string => join(root, 'reports/two', name);

describe('the key of a report', () => {
  test.each([
    ['report.md', 'the report itself'],
    ['morning shots.dat', 'a session, whatever its ending'],
    ['bay.png', 'a picture'],
    ['other.csv', 'a table that might be a session by another name'],
  ])('%s: %s changes it, byte by byte', (name) => {
    appendFileSync(at(name), 'one');
    const before = key();
    expect(before).not.toBeNull();
    expect(key()).toBe(before);
    const bytes = Buffer.from('two');
    writeFileSync(at(name), Buffer.concat([readBut(at(name), 3), bytes]));
    expect(key()).not.toBe(before);
  });

  test('what it is not made of counts by name and size', () => {
    writeFileSync(at('notes.mp4'), 'one');
    const before = key();
    writeFileSync(at('notes.mp4'), 'two');
    expect(key()).toBe(before);
    writeFileSync(at('notes.mp4'), 'three');
    expect(key()).not.toBe(before);
  });

  test('three gigabytes beside a report are neither read nor held', () => {
    for (const name of ['film.mp4', 'film.csv', 'film.png']) {
      writeFileSync(at(name), '');
      truncateSync(at(name), 3 * 2 ** 30);
    }
    const asked: string[] = [];
    const folder = openContentFolder(root);
    const watched = rememberedFiles({
      ...folder,
      bytes: (path) => (asked.push(path), folder.bytes(path)),
      hash: (path) => (asked.push(path), folder.hash(path)),
    });
    const shared = { code: 'x', shop: null, sheets: new Map(), ledger: null };
    expect(reportKey(watched, 'two', shared)).not.toBeNull();
    expect([...new Set(asked)].sort()).toEqual(['reports/two/morning shots.dat', 'reports/two/report.md']);
  });

  test('pictures are hashed in pieces and not held', () => {
    writeFileSync(at('bay.png'), Buffer.alloc(3_000_000, 7));
    const held: string[] = [];
    const folder = openContentFolder(root);
    const watched = { ...folder, bytes: (path: string) => (held.push(path), folder.bytes(path)) };
    reportKey(watched, 'two', { code: 'x', shop: null, sheets: new Map(), ledger: null });
    expect(held).not.toContain('reports/two/bay.png');
  });

  test('a name written with an escape, or with letters put together otherwise, is found', () => {
    const front = (session: string): string =>
      twoHeads((text) => text.replace('session: shots.csv', `session: ${session}`));
    for (const [typed, name] of [
      [`'it''s.dat'`, "it's.dat"],
      ['"s\\u00e9ance.dat"', 's\u00e9ance.dat'],
      ['s\u00e9ance.dat', 'se\u0301ance.dat'],
    ] as const) {
      writeFileSync(at('report.md'), front(typed));
      writeFileSync(at(name), 'one');
      const before = key();
      writeFileSync(at(name), 'two');
      expect(key(), typed).not.toBe(before);
    }
  });

  test('a link that leads elsewhere: it cannot be told', () => {
    symlinkSync('/etc/hostname', at('other.csv'));
    expect(key()).toBeNull();
  });
});

function readBut(file: string, last: number): Buffer {
  const whole = openContentFolder(root).bytes(file.slice(root.length + 1)).content ?? new Uint8Array();
  return Buffer.from(whole.subarray(0, whole.length - last));
}
