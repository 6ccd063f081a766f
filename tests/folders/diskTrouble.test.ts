import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { diskTrouble } from '../../src/site/diskTrouble.ts';
import { folderOf } from './folderOf.ts';

const failing = (code: string, more: Readonly<Record<string, string>> = {}): Error =>
  Object.assign(new Error(code), { code, syscall: 'write', ...more });

test.each([
  ['ENOSPC', 'the disk is full (ENOSPC): make room on it'],
  ['EDQUOT', 'no more room is granted on the disk (EDQUOT): make room on it'],
  ['EROFS', 'the disk can only be read (EROFS): name a folder on another one'],
  ['EACCES', 'there is no permission (EACCES): change the permissions there, or name another folder'],
  ['EPERM', 'there is no permission (EPERM): change the permissions there, or name another folder'],
])('%s in a sentence, with the place where it is known', (code, cause) => {
  expect(diskTrouble(failing(code, { path: '/a', dest: '/b' }))).toBe(
    `/b could not be written, since ${cause}.`,
  );
  expect(diskTrouble(failing(code, { path: '/a' }))).toBe(`/a could not be written, since ${cause}.`);
  expect(diskTrouble(failing(code))).toBe(
    `A file of the site or of the cache could not be written, since ${cause}.`,
  );
});

test('a folder that cannot be made within one that can only be read', () => {
  expect(diskTrouble(failing('ENOENT', { syscall: 'mkdir', path: '/a/b' }))).toBe(
    '/a/b could not be written, since no folder can be made there: name another one.',
  );
});

test('any other error is none of the disk', () => {
  const missing = (): void => writeFileSync(join(folderOf({}), 'none/file'), '');
  expect(missing).toThrow('ENOENT');
  expect(diskTrouble(failing('ENOENT', { syscall: 'open', path: '/a' }))).toBeNull();
  expect(diskTrouble(new Error('ERR_ASSERTION'))).toBeNull();
  expect(diskTrouble(new TypeError('x'))).toBeNull();
  expect(diskTrouble('x')).toBeNull();
});
