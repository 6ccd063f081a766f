import { mkdirSync, mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { writeWhole } from '../../src/site/writeWhole.ts';

test('a file of a cache is there whole, or not at all', () => {
  const folder = mkdtempSync(join(tmpdir(), 'straightface-cache-'));
  writeWhole(join(folder, 'new/one'), 'whole');
  expect(readFileSync(join(folder, 'new/one'), 'utf8')).toBe('whole');
  // A folder of that name keeps it from its place.
  mkdirSync(join(folder, 'taken'));
  expect(() => writeWhole(join(folder, 'taken'), 'whole')).toThrow(/EISDIR|ENOTEMPTY|EEXIST|EPERM/);
  expect(readdirSync(folder).sort()).toEqual(['new', 'taken']);
});
