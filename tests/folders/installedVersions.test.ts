import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { installedVersions } from '../../src/site/installedVersions.ts';
import { folderOf } from './folderOf.ts';

describe('what the installed versions are told by', () => {
  test('a checkout: its manifest and its lock, whatever lies above it', () => {
    const root = folderOf({
      'yarn.lock': 'others',
      'program/package.json': '{}',
      'program/package-lock.json': 'a',
    });
    const program = join(root, 'program');
    expect(installedVersions(program)).toBe('{}a');
    writeFileSync(join(root, 'yarn.lock'), 'other');
    expect(installedVersions(program)).toBe('{}a');
    rmSync(join(program, 'package-lock.json'));
    expect(installedVersions(program)).toBe('{}');
  });

  test.each(['package-lock.json', 'pnpm-lock.yaml', 'yarn.lock', 'node_modules/.package-lock.json'])(
    'a package: its manifest and the %s of the project that it is installed into',
    (lock) => {
      const root = folderOf({ [lock]: 'a', 'node_modules/straightface/package.json': '{}' });
      const program = join(root, 'node_modules/straightface');
      expect(installedVersions(program)).toBe('{}a');
      writeFileSync(join(root, lock), 'b');
      expect(installedVersions(program)).toBe('{}b');
    },
  );

  test('a package in the store of its manager: the lock of the project above', () => {
    const inStore = 'node_modules/.store/straightface@1/node_modules/straightface';
    const root = folderOf({ 'pnpm-lock.yaml': 'a', [`${inStore}/package.json`]: '{}' });
    expect(installedVersions(join(root, inStore))).toBe('{}a');
  });

  test('a package without any lock: nothing, so that no old result is believed', () => {
    const root = folderOf({ 'node_modules/straightface/package.json': '{}' });
    const program = join(root, 'node_modules/straightface');
    const told = [installedVersions(program), installedVersions(program)];
    expect(new Set(told).size).toBe(2);
    for (const one of told) expect(one.startsWith('{}')).toBe(true);
  });
});
