import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { homedir, hostname, tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { benchShots, writeBenchContent, writeBenchReport } from '../bench/content.ts';
import { build, foldersFor, hashes, newFolder } from './builds.ts';

function benchContent(count: number): string {
  const folder = newFolder('content');
  writeBenchContent(folder, count);
  return folder;
}

const elsewhere = { TZ: 'Pacific/Auckland', LANG: 'de_DE.UTF-8', LC_ALL: 'tr_TR.UTF-8' };

/** What a cold build of the same content gives, in another time zone and language: nothing of an earlier one is at hand. */
function coldHashes(content: string): Readonly<Record<string, string>> {
  const folders = foldersFor(content);
  const run = build(folders, elsewhere);
  expect(run.status, run.said).toBe(0);
  return hashes(folders.out);
}

const shotsOfFirst = (content: string): string => join(content, 'reports/four-heads-0001/shots.csv');

describe('building again', () => {
  const content = benchContent(4);
  const folders = foldersFor(content);
  const first = build(folders);
  const built = hashes(folders.out);

  test('the first build is whole', () => {
    expect(first, first.said).toMatchObject({ status: 0 });
    expect(Object.keys(built).filter((path) => path.endsWith('.png')).length).toBeGreaterThan(30);
  });

  test('nothing changed: the same bytes', () => {
    expect(build(folders).status).toBe(0);
    expect(hashes(folders.out)).toEqual(built);
  });

  test('one report changed: what a build from nothing gives, also elsewhere; then put back', () => {
    const before = readFileSync(shotsOfFirst(content));
    writeFileSync(shotsOfFirst(content), benchShots('another morning'));
    expect(build(folders).status).toBe(0);
    const changed = hashes(folders.out);
    expect(changed).toEqual(coldHashes(content));
    expect(changed['reports/four-heads-0001/index.html']).not.toBe(
      built['reports/four-heads-0001/index.html'],
    );
    writeFileSync(shotsOfFirst(content), before);
    expect(build(folders).status).toBe(0);
    expect(hashes(folders.out)).toEqual(built);
  });

  test('a report added: no page of another report changes', () => {
    writeBenchReport(content, 4);
    expect(build(folders).status).toBe(0);
    const now = hashes(folders.out);
    const ofReports = Object.entries(built).filter(([path]) => path.startsWith('reports/'));
    expect(ofReports.length).toBeGreaterThan(150);
    expect(ofReports.filter(([path, hash]) => now[path] !== hash)).toEqual([]);
    expect(now).toEqual(coldHashes(content));
  });

  test('a report taken out: nothing of it stays', () => {
    rmSync(join(content, 'reports/four-heads-0005'), { recursive: true });
    expect(build(folders).status).toBe(0);
    expect(hashes(folders.out)).toEqual(built);
  });

  test('no file names a folder or the machine it was built on', () => {
    const paths = [resolve('.'), content, folders.out, folders.cache, tmpdir(), homedir(), hostname()].filter(
      (path) => path.length > 4,
    );
    expect(paths).toContain(resolve('.'));
    const naming = Object.keys(built).filter((path) => {
      const text = readFileSync(join(folders.out, path), 'latin1');
      return paths.some((folder) => text.includes(folder));
    });
    expect(naming).toEqual([]);
  });
});
