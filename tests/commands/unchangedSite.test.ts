import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { benchShots, writeBenchContent } from '../bench/content.ts';
import { build, foldersFor, hashes, newFolder } from './builds.ts';

const content = newFolder('content');
writeBenchContent(content, 2);
const folders = foldersFor(content);
const { out } = folders;

const changed = join(content, 'reports/four-heads-0001/shots.csv');
const chart = join(out, 'reports/four-heads-0002/charts/apart.png');
const page = join(out, 'reports/four-heads-0001/index.html');
const identity = (file: string): bigint => statSync(file, { bigint: true }).ino;

/** What a build writes that has nothing to begin with. */
function madeOfNothing(): Readonly<Record<string, string>> {
  const fresh = foldersFor(content);
  const run = build(fresh);
  expect(run.status, run.said).toBe(0);
  return hashes(fresh.out);
}

describe('a site that was built before', () => {
  test('is left alone, down to the folder itself, where nothing was changed, and that is said', () => {
    expect(build(folders).status).toBe(0);
    const before = [identity(out), identity(chart), statSync(chart, { bigint: true }).ctimeNs];
    const run = build(folders);
    expect(run.status, run.said).toBe(0);
    expect(run.said).toMatch(/^Nothing has changed since the last build\.$[^]*^Built into /m);
    expect([identity(out), identity(chart), statSync(chart, { bigint: true }).ctimeNs]).toEqual(before);
  });

  test('has the pages of one report anew where its shots are others, and the files of the rest as they were', () => {
    const [own, other] = [identity(page), identity(chart)];
    writeFileSync(changed, benchShots('another morning'));
    expect(build(folders).status).toBe(0);
    expect(identity(page)).not.toBe(own);
    expect(identity(chart)).toBe(other);
    expect(hashes(out)).toEqual(madeOfNothing());
  });

  test('gets a file back that somebody changed, though its size and time say nothing', () => {
    const whole = readFileSync(chart);
    const { mtimeNs } = statSync(chart, { bigint: true });
    const twin = newFolder('twin');
    // To the nanosecond, as Node does not.
    execFileSync('touch', ['-r', chart, twin]);
    const spoilt = Buffer.from(whole);
    spoilt[100] = (spoilt[100] ?? 0) ^ 1;
    writeFileSync(chart, spoilt);
    execFileSync('touch', ['-r', twin, chart]);
    expect(statSync(chart, { bigint: true }).mtimeNs).toBe(mtimeNs);
    expect(build(folders).status).toBe(0);
    expect(readFileSync(chart).equals(whole)).toBe(true);
  });

  test.each(['reports/four-heads-0001/kit.zip', 'index.html', 'icon.svg', 'sitemap-index.xml'])(
    'gets %s back that was deleted',
    (path) => {
      const before = hashes(out);
      rmSync(join(out, path));
      expect(build(folders).status).toBe(0);
      expect(hashes(out)).toEqual(before);
    },
  );

  test('loses the files of a report that is no longer there, and pages about it', () => {
    rmSync(join(content, 'reports/four-heads-0002'), { recursive: true });
    expect(build(folders).status).toBe(0);
    expect(readdirSync(join(out, 'reports'))).toEqual(['four-heads-0001']);
    expect(hashes(out)).toEqual(madeOfNothing());
  });

  test('is written anew where its address is another', () => {
    const file = join(content, 'shop.yaml');
    writeFileSync(
      file,
      readFileSync(file, 'utf8').replace('https://example.test/', 'https://example.test/tests/'),
    );
    expect(build(folders).status).toBe(0);
    expect(readFileSync(page, 'utf8')).toContain('href="/tests/');
    expect(hashes(out)).toEqual(madeOfNothing());
  });
});
