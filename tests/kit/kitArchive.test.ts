import { execFileSync, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { crc32, inflateRawSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { kitArchive, type ArchiveFile } from '../../src/kit/kitArchive.ts';

const text = (words: string): Uint8Array => new TextEncoder().encode(words);
const noise = Uint8Array.from({ length: 5000 }, (_, at) => (at * at * 31 + at * 7) % 251);
const files: readonly ArchiveFile[] = [
  { path: 'README.txt', bytes: text('Credit: Example Golf Workshop\n') },
  { path: 'charts/apart.png', bytes: noise },
  { path: 'charts/apart.svg', bytes: text('<svg>'.padEnd(20_000, ' ')) },
  { path: 'notes é.txt', bytes: text('é') },
];
const zip = kitArchive('two-heads', files, '2026-05-02');

/** Every entry as the central directory of a zip names it (APPNOTE 6.3.10, 4.3.12), unpacked by another inflate than wrote it. */
function entries(bytes: Uint8Array) {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = bytes.byteLength - 22;
  expect(view.getUint32(end, true), 'end of central directory').toBe(0x06054b50);
  let at = view.getUint32(end + 16, true);
  return Array.from({ length: view.getUint16(end + 10, true) }, () => {
    expect(view.getUint32(at, true), 'central header').toBe(0x02014b50);
    const [method, time, day] = [10, 12, 14].map((offset) => view.getUint16(at + offset, true));
    const [crc, packed, size] = [16, 20, 24].map((offset) => view.getUint32(at + offset, true));
    const [name, extra, comment] = [28, 30, 32].map((offset) => view.getUint16(at + offset, true));
    const local = view.getUint32(at + 42, true);
    const path = new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + (name ?? 0)));
    at += 46 + (name ?? 0) + (extra ?? 0) + (comment ?? 0);
    const from = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
    const raw = bytes.subarray(from, from + (packed ?? 0));
    return { path, method, time, day, crc, size, content: method === 0 ? raw : inflateRawSync(raw) };
  });
}

test('holds every file byte for byte, in one folder, with its checksum', () => {
  const found = entries(zip);
  expect(found.map(({ path }) => path)).toEqual([
    'two-heads/README.txt',
    'two-heads/charts/apart.png',
    'two-heads/charts/apart.svg',
    'two-heads/notes é.txt',
  ]);
  for (const [at, { content, crc, size }] of found.entries()) {
    const bytes = files[at]?.bytes ?? new Uint8Array();
    expect(Buffer.compare(content, bytes)).toBe(0);
    expect(crc).toBe(crc32(bytes));
    expect(size).toBe(bytes.length);
  }
});

test('stores pictures as they are and packs text', () => {
  const method = Object.fromEntries(
    entries(zip).map((entry) => [entry.path.split('/').at(-1), entry.method]),
  );
  expect(method).toMatchObject({ 'apart.png': 0, 'apart.svg': 8 });
  expect(zip.length).toBeLessThan(7000);
});

test('dates every file from the day that it is given', () => {
  // MS-DOS: years since 1980, month, day; hours, minutes, seconds by two.
  for (const { day, time } of entries(zip))
    expect([day, time]).toEqual([((2026 - 1980) << 9) | (5 << 5) | 2, 12 << 11]);
});

test('is the same whatever order the files come in, and wherever it is made', () => {
  expect(Buffer.compare(kitArchive('two-heads', files.toReversed(), '2026-05-02'), zip)).toBe(0);
  const module = JSON.stringify(resolve('src/kit/kitArchive.ts'));
  const code = `import { kitArchive } from ${module}; import { createHash } from 'node:crypto';
    console.log(createHash('sha256').update(kitArchive('a', [{ path: 'b.txt', bytes: new Uint8Array(9) }], '2026-03-29')).digest('hex'));`;
  const hashes = ['UTC', 'Pacific/Auckland', 'America/Los_Angeles', 'Europe/London'].map((TZ) =>
    execFileSync(process.execPath, ['--input-type=module', '-e', code], {
      env: { ...process.env, TZ },
      encoding: 'utf8',
    }).trim(),
  );
  const [first = ''] = hashes;
  expect(first).toMatch(/^[0-9a-f]{64}$/);
  expect(new Set(hashes).size).toBe(1);
  const here = kitArchive('a', [{ path: 'b.txt', bytes: new Uint8Array(9) }], '2026-03-29');
  expect(createHash('sha256').update(here).digest('hex')).toBe(first);
});

const reads = (command: string): boolean => spawnSync(command, ['--help']).status === 0;

describe('readers of others', () => {
  const folder = mkdtempSync(join(tmpdir(), 'straightface-zip-'));
  const file = join(folder, 'kit.zip');
  writeFileSync(file, zip);

  test.skipIf(!reads('unzip'))('unzip finds nothing wrong, and takes out what was put in', () => {
    const told = execFileSync('unzip', ['-t', file], { encoding: 'utf8' });
    expect(told).toContain('No errors detected');
    execFileSync('unzip', ['-q', file, '-d', folder]);
    expect(readFileSync(join(folder, 'two-heads/charts/apart.png')).equals(Buffer.from(noise))).toBe(true);
  });

  test.skipIf(!reads('python3'))('zipfile of Python finds nothing wrong', () => {
    const code =
      'import sys, zipfile; z = zipfile.ZipFile(sys.argv[1]); print(z.testzip(), len(z.namelist()))';
    expect(execFileSync('python3', ['-c', code, file], { encoding: 'utf8' }).trim()).toBe('None 4');
  });
});
