import { mkdirSync, mkdtempSync, openSync, readFileSync, rmdirSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { once } from 'node:events';
import { describe, expect, test } from 'vitest';
import { ReportsFailed } from '../../src/commands/reportsFailed.ts';
import { failureOf, failureText } from '../../src/commands/failureText.ts';

const folder = mkdtempSync(join(tmpdir(), 'straightface-failure-'));
const file = join(folder, 'file');
writeFileSync(file, 'x');

function thrownBy(work: () => unknown): unknown {
  try {
    work();
  } catch (error) {
    return error;
  }
  throw new Error('did not fail');
}

/** As the system makes it. */
const ofSystem = (code: string, message: string): Error =>
  Object.assign(new Error(`${code}: ${message}, open '${file}'`), { code, path: file });

describe('what the system says becomes what failed and what to do', () => {
  test.each<readonly [string, () => unknown, string, string]>([
    [
      'a disk that is full',
      () => thrownBy(() => writeFileSync('/dev/full', 'x')),
      'The disk is full (ENOSPC: no space left on device, write)',
      'Make room on it, then start the command again.',
    ],
    [
      'a file that is not there',
      () => thrownBy(() => readFileSync(join(folder, 'none'))),
      `${folder}/none is not there (ENOENT: no such file or directory, open '${folder}/none')`,
      'Put it there, or name another place, and start the command again.',
    ],
    [
      'a file on the way to a folder',
      () => thrownBy(() => mkdirSync(join(file, 'deeper'))),
      `${file}/deeper was to be a folder, and it or a part of its path is a file (ENOTDIR: not a directory, mkdir '${file}/deeper')`,
      'Name a folder, or give the file another name.',
    ],
    [
      'a folder in place of a file',
      () => thrownBy(() => openSync(folder, 'w')),
      `${folder} was to be a file and is a folder (EISDIR: illegal operation on a directory, open '${folder}')`,
      'Move the folder away, or give it another name.',
    ],
    [
      'a name too long',
      () => thrownBy(() => writeFileSync(join(folder, 'x'.repeat(300)), '')),
      `is too long for the disk (ENAMETOOLONG`,
      'Use a shorter name.',
    ],
    [
      'no right',
      () => ofSystem('EACCES', 'permission denied'),
      `This user may not use ${file} (EACCES: permission denied, open '${file}')`,
      'Give the user the right to it, or name another place: CONTENT_DIR, OUT_DIR or CACHE_DIR.',
    ],
    [
      'a disk that can only be read',
      () => ofSystem('EROFS', 'read-only file system'),
      `${file} lies on a disk that can only be read (EROFS: read-only file system, open '${file}')`,
      'Name a folder on another disk: CONTENT_DIR, OUT_DIR or CACHE_DIR.',
    ],
    [
      'too many open files',
      () => ofSystem('EMFILE', 'too many open files'),
      'More files are open than the system allows (EMFILE: too many open files',
      'Close other programs, or allow more: ulimit -n 4096 in the same terminal.',
    ],
    [
      'a disk that fails',
      () => ofSystem('EIO', 'i/o error'),
      `The disk failed at ${file} (EIO: i/o error`,
      'Copy what lies on it to another disk, and work there.',
    ],
    [
      'a package',
      () => thrownBy(() => process.getBuiltinModule('module').createRequire(file)('no-such-package')),
      "A package is missing: Cannot find module 'no-such-package'",
      'Run npm ci in the folder of the project, then start the command again.',
    ],
    [
      'what nobody foresaw',
      () => thrownBy(() => new Array(-1)),
      'Something failed that was not foreseen: RangeError: Invalid array length',
      'This is a fault of the program and not of what you wrote: please tell those who keep it.',
    ],
  ])('%s', (_what, make, what, toDo) => {
    const failure = failureOf(make());
    expect(failure.what).toContain(what);
    expect(failure.toDo).toBe(toDo);
  });

  test('a port that another program has', async () => {
    const first = createServer().listen(0, '127.0.0.1');
    await once(first, 'listening');
    const address = first.address();
    const port = typeof address === 'object' && address !== null ? address.port : 0;
    const second = createServer().listen(port, '127.0.0.1');
    const [error] = await once(second, 'error');
    first.close();
    expect(failureOf(error)).toEqual({
      what: `The port cannot be used (listen EADDRINUSE: address already in use 127.0.0.1:${port})`,
      toDo: 'Name another one from 1024 on, such as --port 4400, or end the program that uses it.',
    });
  });
});

test('the trail is shown where it is asked for, and only there', () => {
  const error = thrownBy(() => rmdirSync(join(folder, 'none')));
  const plain = failureText(error, { trail: false });
  expect(plain).toMatch(/^.*\n.*\nDEBUG=1 before the command shows where in the code it happened\.\n$/);
  expect(plain).not.toMatch(/\n\s+at /);
  const debug = failureText(error, { trail: true });
  expect(debug).toMatch(/\n\s+at .*failureText\.test\.ts/);
  expect(debug).not.toContain('DEBUG=1');
});

test('names cannot act on the terminal', () => {
  const name = join(folder, 'a\u001b[2Jb');
  expect(
    failureText(
      thrownBy(() => readFileSync(name)),
      { trail: false },
    ),
  ).not.toContain('\u001b');
});

describe('reports that could not be worked out', () => {
  const full = new Error('ENOSPC: no space left on device, write');
  const failed = new ReportsFailed([
    { slug: 'three-heads', error: full },
    { slug: 'two-balls', error: new TypeError('x is not a function\nand more') },
  ]);

  test('are told one by one, with what to do about the first', () => {
    expect(failureText(failed, { trail: false })).toBe(
      'three-heads could not be worked out. The disk is full (ENOSPC: no space left on device, write).\n' +
        'two-balls could not be worked out. Something failed that was not foreseen: TypeError: x is not a function.\n' +
        'Make room on it, then start the command again.\n' +
        'DEBUG=1 before the command shows where in the code it happened.\n',
    );
  });

  test('show their own trails', () => {
    const trails = failureText(failed, { trail: true });
    expect(trails).toMatch(/^three-heads: Error: ENOSPC.*\n\s+at /m);
    expect(trails).toMatch(/^two-balls: TypeError: x is not a function$/m);
  });

  test('keep the place that the system named, whatever came through of the error', () => {
    const alone = structuredClone(thrownBy(() => readFileSync(join(folder, 'none'))));
    expect(failureOf(alone).what).toMatch(/^\S+\/none is not there/);
  });
});
