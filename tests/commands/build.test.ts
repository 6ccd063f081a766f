import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, writeFileSync, mkdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { siteMark, siteMarkName } from '../../src/site/siteMark.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from './contentFolder.ts';

import { hashes, type Run } from './builds.ts';

/** `npm run build` as a person runs it: a process of its own. */
function build(contentDir: string, outDir: string): Run {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['src/commands/build.ts'], {
    cwd: resolve('.'),
    encoding: 'utf8',
    env: { ...process.env, CONTENT_DIR: contentDir, OUT_DIR: outDir, NO_COLOR: '1' },
  });
  return { status, said: stdout + stderr };
}

const freshFolder = (): string => join(mkdtempSync(join(tmpdir(), 'straightface-out-')), 'site');

describe('building a content folder that lies elsewhere', () => {
  const content = contentFolder({
    'shop.yaml': `${shop}address: https://example.test/fittings/\n`,
    'reports/two-heads/report.md': twoHeads(),
    'reports/two-heads/shots.csv': twoHeadsCsv,
    'reports/not-yet/report.md': twoHeads((front) => front.replace('status: published', 'status: draft')),
    'reports/not-yet/shots.csv': twoHeadsCsv,
  });
  const out = freshFolder();
  const first = build(content, out);

  test('says what it is at before anything takes long', () => {
    // Whether the two are in the cache already depends on earlier runs.
    expect(first.said).toMatch(
      /^(?:2 reports are new or changed; working out what the shots say\.\n)?Writing the pages\.\n/,
    );
  });

  test('writes its pages and findings, drafts left out', () => {
    expect(first).toMatchObject({ status: 0 });
    expect(existsSync(join(out, 'reports/two-heads/index.html'))).toBe(true);
    expect(existsSync(join(out, 'reports/not-yet'))).toBe(false);
    const findings = JSON.parse(readFileSync(join(out, 'reports/two-heads/findings.json'), 'utf8'));
    expect(findings).toMatchObject({ version: 2, slug: 'two-heads', units: 'SI' });
    expect(findings.metrics[0].pairs[0]).toMatchObject({ a: 'alder', b: 'birch', method: 'welch' });
  });

  test('every address of a page stands under the base path of the shop', () => {
    const page = readFileSync(join(out, 'reports/two-heads/index.html'), 'utf8');
    const addresses = [...page.matchAll(/(?:href|src)="(\/[^"]*)"/g)].map((match) => match[1] ?? '');
    expect(addresses.length).toBeGreaterThan(5);
    expect(addresses.filter((address) => !address.startsWith('/fittings/'))).toEqual([]);
  });

  test('two builds of the same content are the same, byte for byte', () => {
    const again = freshFolder();
    expect(build(content, again).status).toBe(0);
    expect(hashes(again)).toEqual(hashes(out));
  });
});

describe('building from another working folder', () => {
  test('writes the same site to the folder as named there, and leaves only the cache beside it', () => {
    const content = contentFolder({
      'content/shop.yaml': shop,
      'content/reports/two-heads/report.md': twoHeads(),
      'content/reports/two-heads/shots.csv': twoHeadsCsv,
    });
    const run = spawnSync(process.execPath, [resolve('src/commands/build.ts')], {
      cwd: content,
      encoding: 'utf8',
      env: { ...process.env, OUT_DIR: 'site', NO_COLOR: '1' },
    });
    expect(run.status, run.stdout + run.stderr).toBe(0);
    expect(readdirSync(content).sort()).toEqual(['.cache', 'content', 'site']);
    const here = freshFolder();
    expect(build(join(content, 'content'), here).status).toBe(0);
    expect(hashes(join(content, 'site'))).toEqual(hashes(here));
  });
});

describe('content with faults', () => {
  const faulty = contentFolder({
    'shop.yaml': shop,
    'reports/unknown-key/report.md': twoHeads((front) => front.replace('question:', 'quesion: x\nquestion:')),
    'reports/unknown-key/shots.csv': twoHeadsCsv,
    'reports/no-interests/report.md': twoHeads((front) => front.replace(/^interests:.*\n/m, '')),
    'reports/no-interests/shots.csv': twoHeadsCsv,
    'reports/no-unit/report.md': twoHeads(),
    'reports/no-unit/shots.csv': twoHeadsCsv.replace('Carry (yd)', 'Carry'),
    'reports/no-column/report.md': twoHeads((front) =>
      front.replace('primary: carry', 'primary: ball_speed'),
    ),
    'reports/no-column/shots.csv': twoHeadsCsv,
    'reports/stranger/report.md': twoHeads(),
    'reports/stranger/shots.csv': twoHeadsCsv.replaceAll('Birch', 'Cedar'),
  });
  const out = freshFolder();
  mkdirSync(out, { recursive: true });
  writeFileSync(join(out, 'index.html'), 'the site as it was');
  writeFileSync(join(out, siteMarkName), siteMark(['index.html']));
  const run = build(faulty, out);

  test('stops with status 1 and leaves the previous site as it was', () => {
    expect(run.status).toBe(1);
    expect(readdirSync(out)).toEqual([siteMarkName, 'index.html']);
    expect(readFileSync(join(out, 'index.html'), 'utf8')).toBe('the site as it was');
  });

  test.each([
    [
      'an unknown key, with what was meant',
      'reports/unknown-key/report.md:4:1  quesion',
      'Did you mean "question"?',
    ],
    ['missing interests', 'reports/no-interests/report.md:', '(interests-missing)'],
    ['a distance without unit', 'reports/no-unit/shots.csv:1:3  Carry', '(unit-missing)'],
    ['a missing column', 'reports/no-column/report.md:9:10  primary', '(primary-column-missing)'],
    ['a contender that only the CSV has', 'reports/stranger/shots.csv:3', 'Cedar (6 shots)'],
    [
      'a contender that only the report has',
      'reports/stranger/report.md:8:3  contenders.birch',
      '(contender-not-in-csv)',
    ],
  ])('names %s with its place', (_what, place, words) => {
    const block = run.said.split('\n\n').filter((text) => text.includes(place) && text.includes(words));
    expect(block, run.said).toHaveLength(1);
    expect(block[0]).toMatch(/expected .+\n.*found .+\n(.*\n)*.*to do /);
  });

  test('shows no stack trace', () => {
    expect(run.said).not.toMatch(/^\s+at .+:\d+:\d+\)?$/m);
    expect(run.said).not.toContain('node:internal');
  });
});
