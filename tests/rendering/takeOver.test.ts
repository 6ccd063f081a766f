import { mkdirSync, mkdtempSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { takeOver } from '../../src/commands/rendering/takeOver.ts';

function twoFolders(): { readonly from: string; readonly to: string } {
  const [from, to] = [mkdtempSync(join(tmpdir(), 'from-')), mkdtempSync(join(tmpdir(), 'to-'))];
  mkdirSync(join(from, 'reports/one'), { recursive: true });
  writeFileSync(join(from, 'reports/one/index.html'), 'a page');
  return { from, to };
}

const paths = ['reports/one/index.html'];

describe('files of the site of before', () => {
  test('get a second name, and stay the same file', () => {
    const { from, to } = twoFolders();
    takeOver(paths, from, to);
    expect(statSync(join(to, 'reports/one/index.html')).ino).toBe(
      statSync(join(from, 'reports/one/index.html')).ino,
    );
  });

  test('are copied where the disk gives no second name', () => {
    const { from, to } = twoFolders();
    takeOver(paths, from, to, () => {
      throw Object.assign(new Error('EXDEV: cross-device link not permitted'), { code: 'EXDEV' });
    });
    expect(readFileSync(join(to, 'reports/one/index.html'), 'utf8')).toBe('a page');
    expect(statSync(join(to, 'reports/one/index.html')).ino).not.toBe(
      statSync(join(from, 'reports/one/index.html')).ino,
    );
  });

  test('stop the build where one is gone', () => {
    const { from, to } = twoFolders();
    expect(() => takeOver(['reports/gone/index.html'], from, to)).toThrow('ENOENT');
  });
});
