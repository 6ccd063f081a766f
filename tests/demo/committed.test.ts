import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { reports } from '../kit/content.ts';

const here = import.meta.dirname;
const helpers = ['csv.ts', 'flown.ts', 'random.ts', 'readings.ts'];
const generators = readdirSync(here).filter(
  (file) => file.endsWith('.ts') && !file.endsWith('.test.ts') && !helpers.includes(file),
);
const folder = mkdtempSync(join(tmpdir(), 'demo-'));

beforeAll(() => {
  for (const generator of generators) {
    const { status, stderr } = spawnSync(process.execPath, [join(here, generator)], {
      cwd: folder,
      encoding: 'utf8',
    });
    expect(status, `${generator}: ${stderr}`).toBe(0);
  }
  // Nine sessions are flown shot by shot, and the machine may be slow.
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true }));

/** Session files under a content folder, as `report/file`. */
const sessionsIn = (content: string): readonly string[] =>
  readdirSync(join(content, 'reports'), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.csv'))
    .map((file) => file.replaceAll('\\', '/'))
    .toSorted();

test('every session of the demo reports is invented by a generator, shot by shot', () => {
  const committed = resolve('content');
  const invented = join(folder, 'content');
  expect(sessionsIn(invented)).toEqual(sessionsIn(committed));
  for (const file of sessionsIn(committed))
    expect(readFileSync(join(committed, 'reports', file), 'utf8'), file).toBe(
      readFileSync(join(invented, 'reports', file), 'utf8'),
    );
});

test('every demo report says that its data are invented', () => {
  expect(reports.length).toBeGreaterThan(5);
  for (const { source } of reports) expect(source.front.inventedData, source.slug).toBe(true);
});
