import {
  chmodSync,
  existsSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { realDisk, type Disk } from '../../src/commands/writing/disk.ts';
import { prepareNewFile, prepareReplacement } from '../../src/commands/writing/wholeFile.ts';
import { FolderTaken, prepareFolder } from '../../src/commands/writing/wholeFolder.ts';
import { systemError } from './failingDisk.ts';

let folder = '';
let file = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'straightface-whole-'));
  file = join(folder, 'text');
});

const modeOf = (path: string): number => statSync(path).mode & 0o777;

/** A disk that notes what is asked of it. */
function noting(): { readonly disk: Disk; readonly asked: string[] } {
  const asked: string[] = [];
  const names = ['openSync', 'writeSync', 'fsyncSync', 'closeSync', 'renameSync', 'linkSync'] as const;
  const noted = Object.fromEntries(
    names.map((name) => [
      name,
      (...given: unknown[]) => {
        asked.push(name);
        return (realDisk[name] as (...all: unknown[]) => unknown)(...given);
      },
    ]),
  );
  return { disk: { ...realDisk, ...noted }, asked };
}

describe('a file that is replaced', () => {
  test('is synced before the rename, and its folder after it', () => {
    const { disk, asked } = noting();
    prepareReplacement(disk, file, 'new').put();
    expect(asked.join(' ')).toBe(
      'openSync writeSync fsyncSync closeSync renameSync openSync fsyncSync closeSync',
    );
  });

  test('is the old one until it is put, and the old one for good where it is discarded', () => {
    writeFileSync(file, 'old');
    const prepared = prepareReplacement(realDisk, file, 'new');
    expect(readFileSync(file, 'utf8')).toBe('old');
    expect(readdirSync(folder)).toHaveLength(2);
    prepared.discard();
    expect(readdirSync(folder)).toEqual(['text']);
    prepareReplacement(realDisk, file, 'new').put();
    expect(readFileSync(file, 'utf8')).toBe('new');
    expect(readdirSync(folder)).toEqual(['text']);
  });

  test('keeps its mode; a new one has the mode that the system gives', () => {
    writeFileSync(file, 'old');
    chmodSync(file, 0o640);
    prepareReplacement(realDisk, file, 'new').put();
    expect(modeOf(file)).toBe(0o640);
    prepareReplacement(realDisk, join(folder, 'other'), 'new').put();
    expect(modeOf(join(folder, 'other'))).toBe(0o666 & ~process.umask());
  });

  test('is written where its link leads, also through a second link to what is not there yet', () => {
    mkdirSync(join(folder, 'kept'));
    symlinkSync('kept/second', file);
    symlinkSync('target', join(folder, 'kept/second'));
    prepareReplacement(realDisk, file, 'new').put();
    expect(lstatSync(file).isSymbolicLink()).toBe(true);
    expect(lstatSync(join(folder, 'kept/second')).isSymbolicLink()).toBe(true);
    expect(readFileSync(join(folder, 'kept/target'), 'utf8')).toBe('new');
    expect(readdirSync(join(folder, 'kept')).sort()).toEqual(['second', 'target']);
  });

  test('a disk that takes a few bytes at a time gets all of them', () => {
    const few: Disk = {
      ...realDisk,
      writeSync: ((opened: number, bytes: Uint8Array, at: number, length: number) =>
        realDisk.writeSync(opened, bytes, at, Math.min(length, 3))) as Disk['writeSync'],
    };
    prepareReplacement(few, file, 'größer als drei').put();
    expect(readFileSync(file, 'utf8')).toBe('größer als drei');
  });

  test('a system that syncs no folders, or knows no owners and modes, is no fault', () => {
    writeFileSync(file, 'old');
    const plain: Disk = {
      ...realDisk,
      openSync: ((path: string, flags: string, mode?: number) => {
        if (flags === 'r') throw systemError('EPERM', 'open');
        return realDisk.openSync(path, flags, mode);
      }) as Disk['openSync'],
      fchmodSync: () => {
        throw systemError('EPERM', 'fchmod');
      },
    };
    prepareReplacement(plain, file, 'new').put();
    expect(readFileSync(file, 'utf8')).toBe('new');
  });
});

describe('a new file', () => {
  test('never takes the place of another, however late that came', () => {
    const prepared = prepareNewFile(realDisk, file, 'mine');
    writeFileSync(file, 'theirs');
    expect(prepared.put).toThrow('EEXIST');
    prepared.discard();
    expect(readFileSync(file, 'utf8')).toBe('theirs');
    expect(readdirSync(folder)).toEqual(['text']);
  });

  test('is whole on a disk where a file has one name only, and overwrites nothing there either', () => {
    const noLinks: Disk = {
      ...realDisk,
      linkSync: () => {
        throw systemError('EPERM', 'link');
      },
    };
    prepareNewFile(noLinks, file, 'mine').put();
    expect(readFileSync(file, 'utf8')).toBe('mine');
    expect(readdirSync(folder)).toEqual(['text']);
    const prepared = prepareNewFile(noLinks, file, 'other');
    expect(prepared.put).toThrow('EEXIST');
    prepared.discard();
    expect(readFileSync(file, 'utf8')).toBe('mine');
  });

  test.each(['ENOSPC', 'EMFILE', 'EIO'])('of another nothing is lost where this fails: %s', (code) => {
    writeFileSync(file, 'theirs');
    const fails = (call: string) => (): never => {
      throw systemError(code, call);
    };
    const failing: Disk = { ...realDisk, linkSync: fails('link') };
    const prepared = prepareNewFile(failing, file, 'mine');
    vi.spyOn(failing, 'openSync').mockImplementation(fails('open'));
    expect(prepared.put).toThrow(code);
    prepared.discard();
    expect(readFileSync(file, 'utf8')).toBe('theirs');
    expect(readdirSync(folder)).toEqual(['text']);
  });

  test('is not there where it could not be written whole', () => {
    const noRoom: Disk = {
      ...realDisk,
      linkSync: () => {
        throw systemError('EPERM', 'link');
      },
    };
    const prepared = prepareNewFile(noRoom, file, 'mine');
    vi.spyOn(noRoom, 'fsyncSync').mockImplementation(() => {
      throw systemError('ENOSPC', 'fsync');
    });
    expect(prepared.put).toThrow('ENOSPC');
    prepared.discard();
    expect(readdirSync(folder)).toEqual([]);
  });
});

describe('a new folder', () => {
  test('comes with all its files, readable as the system gives it', () => {
    const target = join(folder, 'reports/two');
    const prepared = prepareFolder(realDisk, target, {
      'a.csv': new Uint8Array([1, 2]),
      'report.md': 'text',
    });
    expect(existsSync(target)).toBe(false);
    prepared.put();
    expect(readdirSync(target)).toEqual(['a.csv', 'report.md']);
    expect(modeOf(target)).toBe(0o777 & ~process.umask());
    expect(readdirSync(join(folder, 'reports'))).toEqual(['two']);
  });

  test('never takes the place of another, not even of an empty one', () => {
    const target = join(folder, 'two');
    const prepared = prepareFolder(realDisk, target, { a: 'b' });
    mkdirSync(target);
    expect(prepared.put).toThrow(FolderTaken);
    prepared.discard();
    expect(readdirSync(folder)).toEqual(['two']);
    expect(readdirSync(target)).toEqual([]);
  });
});
