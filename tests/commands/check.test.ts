import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkContent } from '../../src/commands/checkContent.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from './contentFolder.ts';
import { listen } from './listen.ts';

const sound = {
  'reports/one/report.md': twoHeads(),
  'reports/one/shots.csv': twoHeadsCsv,
};
const faulty = {
  'reports/two/report.md': twoHeads((front) => front.replace('varied: head\n', '')),
  'reports/two/shots.csv': twoHeadsCsv.replace('Carry (yd)', 'Carry'),
};

function check(contentDir: string, only: readonly string[] = [], json = false) {
  const { terminal, said } = listen();
  const status = checkContent({ contentDir, only, json, terminal });
  const lines = said().trimEnd().split('\n');
  return { status, said: said(), last: lines.at(-1) };
}

describe('the last line and the status', () => {
  test.each([
    ['nothing', { 'shop.yaml': shop, ...sound }, [], 0, 'Checked 1 report: nothing wrong.'],
    ['a warning', sound, [], 0, 'Checked 1 report: 1 warning.'],
    ['errors', { ...sound, ...faulty }, [], 1, 'Checked 2 reports: 2 errors and 1 warning.'],
    [
      'a session file that is not there, and nothing that follows from it',
      { 'shop.yaml': shop, 'reports/one/report.md': twoHeads() },
      [],
      1,
      'Checked 1 report: 1 error.',
    ],
    ['a report by its name', { ...sound, ...faulty }, ['one'], 0, 'Checked 1 report: 1 warning.'],
    ['a report that is not there', { 'shop.yaml': shop, ...sound }, ['x'], 1, 'Checked 0 reports: 1 error.'],
    ['no report', { 'shop.yaml': shop }, [], 1, 'Checked 0 reports: 1 error.'],
  ])('with %s', (_what, files, only, status, last) => {
    expect(check(contentFolder(files), only)).toMatchObject({ status, last });
  });
});

test('what is wrong with a session is said together with what is missing in its report', () => {
  const { said } = check(contentFolder({ 'shop.yaml': shop, ...faulty }));
  expect(said).toContain('reports/two/report.md');
  expect(said).toContain('reports/two/shots.csv:1:3  Carry');
});

test('--strict fails on a warning, unless the report has answered it', () => {
  const strict = (seen: string): number =>
    checkContent({
      contentDir: contentFolder({
        'shop.yaml': shop,
        'reports/one/report.md': `${twoHeads((front) => front.replace('status:', `${seen}status:`))}\nIt was 300 yards.\n`,
        'reports/one/shots.csv': twoHeadsCsv,
      }),
      only: [],
      json: false,
      strict: true,
      terminal: listen().terminal,
    });
  expect(strict('')).toBe(1);
  expect(strict('seen: [{warning: number-unmatched}]\n')).toBe(0);
});

test('--json gives all problems and nothing else', () => {
  const { said, status } = check(contentFolder({ ...sound, ...faulty }), [], true);
  expect(JSON.parse(said)).toMatchObject({ errors: 2, warnings: 1 });
  expect(status).toBe(1);
});

describe('as a process', () => {
  const run = (command: string, contentDir: string) =>
    spawnSync('sh', ['-c', command], {
      cwd: resolve('.'),
      encoding: 'utf8',
      env: { ...process.env, CONTENT_DIR: contentDir, NODE: process.execPath },
    });

  test('a reader that stops listening is no fault', () => {
    const many = Object.fromEntries(
      Array.from({ length: 40 }, (_, index) => [`reports/r${index}/report.md`, 'x'.repeat(20_000)]),
    );
    const { stderr } = run(
      '"$NODE" src/commands/check.ts --json | head -c 1 >/dev/null',
      contentFolder(many),
    );
    expect(stderr).toBe('');
  });

  test('an argument that is not known is answered with how to use the command', () => {
    const { status, stderr } = run('"$NODE" src/commands/check.ts --jsno', contentFolder(sound));
    expect(status).toBe(1);
    expect(stderr).toContain(
      "Unknown option '--jsno'.\nUse: npm run check -- [name of a report ...] [--json] [--strict]\n",
    );
    expect(stderr).not.toContain(' at ');
  });

  test.each(['build', 'check', 'draft', 'dev', 'plan', 'preview', 'record', 'start'])(
    '%s --help says how to use it',
    (name) => {
      const { status, stdout, stderr } = run(`"$NODE" src/commands/${name}.ts --help`, contentFolder(sound));
      expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
      expect(stdout).toMatch(new RegExp(`^npm run ${name}\\b`));
    },
  );

  test('build takes no name, and does not build as if it had', () => {
    const { status, stderr } = run('"$NODE" src/commands/build.ts two-heads', contentFolder(sound));
    expect(status).toBe(1);
    expect(stderr).toBe('All reports are built together. Use: npm run build\n');
  });

  test('nor is an unknown argument of record a crash', () => {
    const { status, stderr } = run('"$NODE" src/commands/record.ts --dorp x', contentFolder(sound));
    expect(status).toBe(1);
    expect(stderr).toBe(`Unknown option '--dorp'.\nUse: npm run record [-- --drop NAME --reason "why"]\n`);
  });
});

describe('a question of the file is not asked again once the report has answered it', () => {
  const withColumn = (heading: string, cell: (shot: number) => string): string =>
    twoHeadsCsv
      .split('\n')
      .map((line, index) => (line === '' ? line : `${line},${index === 0 ? heading : cell(index)}`))
      .join('\n');

  test('by which rule the shots marked in it are left out', () => {
    const marked = withColumn('Use', (shot) => (shot === 3 || shot === 8 ? 'no' : 'yes'));
    const folder = (exclusions: string): string =>
      contentFolder({
        'shop.yaml': shop,
        'reports/one/report.md': twoHeads((front) => front.replace('session:', `${exclusions}session:`)),
        'reports/one/shots.csv': marked,
      });
    expect(check(folder('')).said).toContain('found     2 shots marked, in lines 4, 9');
    const one = '{contender: alder, shot: 3, rule: outside event, reason: the tee fell}';
    expect(check(folder(`exclusions: [${one}]\n`)).said).toContain('Shots marked as not to be used');
    const both = folder(
      `exclusions: [${one}, {contender: birch, shot: 8, rule: misread, reason: no spin}]\n`,
    );
    expect(check(both).last).toBe('Checked 1 report: nothing wrong.');
    const [report] = loadSite(both).reports;
    expect(report?.session.shots.flatMap(({ excluded }) => excluded ?? [])).toEqual([
      { rule: 'outside event', reason: 'the tee fell' },
      { rule: 'misread', reason: 'no spin' },
    ]);
  });

  test('what day it was', () => {
    const folder = (date: string): string =>
      contentFolder({
        'shop.yaml': shop,
        'reports/one/report.md': twoHeads((front) => front.replace('date: 2026-05-02', date)),
        'reports/one/shots.csv': withColumn('Date', () => '02/05/2026'),
      });
    expect(check(folder('date:')).said).toContain('Day and month cannot be told apart');
    expect(check(folder('date: 2026-05-02')).last).toBe('Checked 1 report: nothing wrong.');
  });
});
