import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkContent } from '../../src/commands/checkContent.ts';
import { draftCommand } from '../../src/commands/draft/draftCommand.ts';
import { answered } from '../intake/draft/answered.ts';
import { contentFolder, shop, twoHeadsCsv } from './contentFolder.ts';
import { listen } from './listen.ts';

const fixtures = resolve('tests/fixtures/csv');
const fixture = (name: string): string => join(fixtures, name);

interface Options {
  readonly slug?: string;
  readonly dryRun?: boolean;
  readonly json?: boolean;
}

function draft(
  contentDir: string,
  paths: readonly string[],
  { slug, dryRun = false, json = false }: Options = {},
) {
  const { terminal, said, saidPlainly } = listen();
  const status = draftCommand({ contentDir, paths, slug: slug ?? null, dryRun, json, terminal });
  return { status, said: said(), saidPlainly: saidPlainly() };
}

function check(contentDir: string) {
  const { terminal, said } = listen();
  const status = checkContent({ contentDir, only: [], json: false, terminal });
  return { status, said: said() };
}

const freshFolder = (): string => contentFolder({ 'shop.yaml': shop });
const inside = (folder: string): readonly string[] => (existsSync(folder) ? readdirSync(folder).sort() : []);

function fill(contentDir: string, slug: string): void {
  const path = join(contentDir, 'reports', slug, 'report.md');
  // Two heads whose names look the same to every reader need names of their own.
  const text = readFileSync(path, 'utf8').replace('label: Head \u0410', 'label: Second head A');
  writeFileSync(path, answered(`reports/${slug}/report.md`, text));
}

function leaveOut(contentDir: string, slug: string, exclusion: string): void {
  const path = join(contentDir, 'reports', slug, 'report.md');
  const text = readFileSync(path, 'utf8');
  writeFileSync(path, text.replace(/^exclusions:.*$/m, `exclusions: [${exclusion}]`));
}

describe('every session file that can be used becomes a draft which passes check once its blanks are filled in', () => {
  const names = readdirSync(fixtures).filter((name) => name.endsWith('.csv'));
  // A report may state the unit that a file does not, and leave out a shot that was misread; whatever else is wrong
  // must be mended in the file.
  const askedFor = new Set(['unit-missing', 'unit-ambiguous', 'not-a-number', 'implausible-value']);

  test.each(names)('%s', (name) => {
    const expected = JSON.parse(readFileSync(fixture(name.replace('.csv', '.expected.json')), 'utf8'));
    const kinds: string[] = (expected.errors ?? []).map(({ kind }: { kind: string }) => kind);
    const usable = expected.outcome !== 'reject' || kinds.every((kind) => askedFor.has(kind));
    const content = freshFolder();
    const run = draft(content, [fixture(name)], { slug: 'a-test' });
    expect(run.status, run.said).toBe(usable ? 0 : 1);
    if (!usable) {
      expect(inside(join(content, 'reports'))).toEqual([]);
      expect(run.said).toMatch(/No draft: the file must be mended first\. Nothing was written\./);
      return;
    }
    expect(readFileSync(join(content, 'reports/a-test', name))).toEqual(readFileSync(fixture(name)));
    expect(check(content).status).toBe(1);
    fill(content, 'a-test');
    if (kinds.includes('implausible-value')) {
      expect(check(content).said).toContain('with "misread" as its rule');
      leaveOut(
        content,
        'a-test',
        '{contender: head-b, shot: 7, rule: misread, reason: the ball speed lacks a digit}',
      );
    }
    const checked = check(content);
    expect(checked.status, checked.said).toBe(0);
  });
});

describe('what draft prints', () => {
  test('is what it understood, and where it wrote', () => {
    const content = freshFolder();
    const { said } = draft(content, [fixture('two-hitters.csv')]);
    expect(said).toContain(
      [
        'two-hitters.csv',
        '  shots     12',
        '  compared  Head A 6, Head B 6',
        '  columns   club speed in mph, ball speed in mph, carry in yd, side in yd',
        '  hitters   Hitter 1 6, Hitter 2 6',
        '  order     one after another',
      ].join('\n'),
    );
    // The draft lists both, so nothing is left to warn of.
    expect(said).not.toContain('More than one hitter');
    expect(said).toContain(`Wrote ${join(content, 'reports/two-hitters/report.md')}`);
  });

  test('names order and days where rows tell them', () => {
    const content = contentFolder({ 'shop.yaml': shop, 'turns.csv': twoHeadsCsv });
    const { said } = draft(content, [join(content, 'turns.csv')]);
    expect(said).toContain('in turn, 6 complete rounds, always in the same order');
    expect(draft(content, [fixture('duplicate-shots.csv')]).said).toContain('hit on    2026-05-04');
  });
});

describe('what the files tell is filled in', () => {
  const report = (content: string, slug: string): string =>
    readFileSync(join(content, 'reports', slug, 'report.md'), 'utf8');

  test('date from the times, title from the name, noun from the heading, metric from the columns; how they were read is asked', () => {
    const csv =
      'Head,Time,Carry (yd)\nAlder 9.0,2026-05-04 10:31:07,231.5\n"Birch, #2",2026-05-04 10:31:41,228.2\n';
    const content = contentFolder({ 'shop.yaml': shop, 'driver_heads.csv': csv });
    expect(draft(content, [join(content, 'driver_heads.csv')]).status).toBe(0);
    const lines = report(content, 'driver-heads').split('\n');
    for (const line of [
      'title: Driver heads',
      'date: 2026-05-04',
      'varied: head',
      '  alder-9-0:',
      '    label: Alder 9.0',
      "    label: 'Birch, #2'",
      "    match: ['Birch, #2']",
      'primary: carry',
      'session: driver_heads.csv',
      '      carry:',
      '  golfer-driver-heads:',
      '  # Who was it? A golfer who hit for another report has the same id here as there, in place of the',
      'status: draft',
    ])
      expect(lines).toContain(line);
  });

  test('the date that the file states above its headings, in one way only', () => {
    const rows = '\nHead,Time,Carry (yd)\nAlder,10:31,231.5\nBirch,10:32,228.2\n';
    const content = contentFolder({
      'shop.yaml': shop,
      'plain.csv': `Date: 4 May 2026\n${rows}`,
      'either-way.csv': `Date,04/05/2026\n${rows}`,
    });
    expect(draft(content, [join(content, 'plain.csv')]).said).toContain('hit on    2026-05-04');
    expect(report(content, 'plain')).toContain('\ndate: 2026-05-04\n');
    draft(content, [join(content, 'either-way.csv')]);
    expect(report(content, 'either-way')).toContain('\ndate:\n');
  });

  test.each([
    ['units: metres', 'takes: 4.6 m.\n  carry:\n'],
    ['units: yards', 'takes: 5 yd.\n  carry:\n'],
    ['matters: {carry: 7 yd}', '\n# The smallest gap in carry that matters is in shop.yaml: 7 yd.\n'],
  ])('the gap that matters, as the shop has it: %s', (line, expected) => {
    const content = contentFolder({ 'shop.yaml': `${shop}defaults: {${line}}\n`, 's.csv': twoHeadsCsv });
    draft(content, [join(content, 's.csv')]);
    expect(report(content, 's')).toContain(expected);
    expect(report(content, 's').includes('\nmatters:')).toBe(!line.startsWith('matters'));
  });

  test('a shop whose answers cannot be read is not passed over', () => {
    const content = contentFolder({
      'shop.yaml': `${shop}defualts: {units: metres}\n`,
      's.csv': twoHeadsCsv,
    });
    const { status, said } = draft(content, [join(content, 's.csv')]);
    expect(status).toBe(0);
    expect(said).toContain('shop.yaml has an error, so its units and defaults are not used here');
    expect(draft(freshFolder(), [fixture('two-hitters.csv')]).said).not.toContain('shop.yaml');
  });

  test('where one club is named throughout, a column of balls tells what was compared', () => {
    const rows = ['Wren', 'Heron', 'Wren', 'Heron'].map((ball, index) => `5 iron,${ball},${170 + index}.3`);
    const content = contentFolder({
      'shop.yaml': shop,
      's.csv': ['Club,Ball,Carry (yd)', ...rows, ''].join('\n'),
    });
    const { said } = draft(content, [join(content, 's.csv')]);
    expect(said).toContain('compared  Wren 2, Heron 2');
    expect(report(content, 's')).toContain('\nvaried: ball\n');
    fill(content, 's');
    expect(check(content)).toMatchObject({ status: 0 });
  });

  test('several files are one session: without a club column, each is named by its file', () => {
    const csv = 'Shot,Carry (yd)\n1,231.5\n2,228.2\n3,230.1\n';
    const content = contentFolder({
      'shop.yaml': shop,
      'a/alder.csv': csv,
      'b/alder.csv': csv,
      'b/Birch 2.csv': csv,
    });
    const paths = ['a/alder.csv', 'b/Birch 2.csv'].map((name) => join(content, name));
    expect(draft(content, paths).said).toContain('compared  alder 3, Birch 2 3');
    expect(inside(join(content, 'reports/alder-birch-2'))).toEqual(['Birch 2.csv', 'alder.csv', 'report.md']);
    // The draft says what was hit in each, so nobody need be asked to: not now, nor by any later check.
    expect(draft(content, paths, { slug: 'again' }).said).not.toContain('The file names no club');
    fill(content, 'alder-birch-2');
    expect(check(content).said).not.toContain('The file names no club');
    fill(content, 'again');
    expect(check(content)).toMatchObject({ status: 0 });
    // Two files of one name both find their place.
    draft(content, [join(content, 'a/alder.csv'), join(content, 'b/alder.csv')], { slug: 'same' });
    expect(inside(join(content, 'reports/same'))).toEqual(['alder-2.csv', 'alder.csv', 'report.md']);
  });
});

describe('draft never overwrites', () => {
  test('a report of the name is left as it is, and another name is proposed', () => {
    const content = contentFolder({ 'shop.yaml': shop, 'reports/two-hitters/report.md': 'mine' });
    const run = draft(content, [fixture('two-hitters.csv')]);
    expect(run.status).toBe(1);
    expect(run.said).toContain('There is a report named two-hitters already, and it is never overwritten.');
    expect(run.said).toContain('--slug two-hitters-2');
    expect(inside(join(content, 'reports/two-hitters'))).toEqual(['report.md']);
    expect(readFileSync(join(content, 'reports/two-hitters/report.md'), 'utf8')).toBe('mine');
  });

  test('nor does it write outside reports/, or without a file', () => {
    const content = freshFolder();
    expect(draft(content, [fixture('two-hitters.csv')], { slug: '../../x' }).said).toContain(
      'use small letters, digits and single hyphens, 40 characters at most, such as x.',
    );
    expect(draft(content, [join(content, 'nowhere.csv')]).said).toContain('There is no file');
    expect(draft(content, [content]).said).toContain('is not a file');
    expect(inside(join(content, 'reports'))).toEqual([]);
  });
});

describe('--dry-run', () => {
  test('with --json gives what the file alone says, and writes nothing', () => {
    const content = freshFolder();
    const run = draft(content, [fixture('two-hitters.csv')], { dryRun: true, json: true });
    const said = JSON.parse(run.saidPlainly);
    expect(Object.keys(said)).toEqual(['outcome', 'shots', 'problems']);
    expect(said.outcome).toBe('accept-with-warning');
    const expected = JSON.parse(readFileSync(fixture('two-hitters.expected.json'), 'utf8'));
    expect(said.shots).toHaveLength(expected.canonicalRows.length);
    expect(said.shots[0].carry).toBeCloseTo(expected.canonicalRows[0].carry, 4);
    expect(said.problems.map(({ kind }: { kind: string }) => kind)).toEqual(['multiple-hitters']);
    expect(inside(content)).toEqual(['shop.yaml']);
  });

  test('tells a file that is refused in the same way', () => {
    const run = draft(freshFolder(), [fixture('typo-decimal.csv')], { dryRun: true, json: true });
    expect(run.status).toBe(0);
    expect(JSON.parse(run.saidPlainly).outcome).toBe('reject');
  });

  test('without --json prints what was understood', () => {
    const content = freshFolder();
    const run = draft(content, [fixture('two-hitters.csv')], { dryRun: true });
    expect(run.said).toContain('compared  Head A 6, Head B 6');
    expect(run.said).toContain('Nothing was written.');
    expect(inside(content)).toEqual(['shop.yaml']);
  });
});

describe('the inbox', () => {
  const twoHitters = readFileSync(fixture('two-hitters.csv'));

  const damaged = 'Club,Carry (yd)\nAlder,23\0\nBirch,231\n';

  test('every file becomes a draft and leaves it; one that cannot be used stays, with its problems', () => {
    const content = contentFolder({
      'shop.yaml': shop,
      'inbox/two-hitters.csv': twoHitters,
      'inbox/Été (3).CSV': readFileSync(fixture('windows-1252.csv')),
      'inbox/damaged.csv': damaged,
      'inbox/notes.txt': 'mine',
    });
    const run = draft(content, []);
    expect(run.status).toBe(1);
    expect(inside(join(content, 'inbox'))).toEqual(['damaged.csv', 'notes.txt']);
    expect(inside(join(content, 'reports'))).toEqual(['ete-3', 'two-hitters']);
    expect(readFileSync(join(content, 'reports/two-hitters/two-hitters.csv'))).toEqual(twoHitters);
    expect(run.said).toContain('inbox/damaged.csv:2:2  Carry (yd)\n  error');
    expect(run.said).toContain('Still in the inbox: damaged.csv');
  });

  test('a name that is taken gets a number; nothing is overwritten', () => {
    const content = contentFolder({
      'shop.yaml': shop,
      'inbox/two-hitters.csv': twoHitters,
      'reports/two-hitters/report.md': 'mine',
    });
    expect(draft(content, []).status).toBe(0);
    expect(inside(join(content, 'reports'))).toEqual(['two-hitters', 'two-hitters-2']);
    expect(readFileSync(join(content, 'reports/two-hitters/report.md'), 'utf8')).toBe('mine');
    fill(content, 'two-hitters-2');
    expect(check(content).said).not.toContain('reports/two-hitters-2/report.md');
  });

  test('an empty or absent one is no fault', () => {
    const content = freshFolder();
    expect(draft(content, [])).toMatchObject({ status: 0 });
    mkdirSync(join(content, 'inbox'));
    expect(draft(content, []).said).toContain('No CSV file waits in');
  });
});

describe('a file name with the name of a hitter in it', () => {
  const named = (player: string): string =>
    twoHeadsCsv.replace('Carry (yd)', 'Carry (yd),Player').replaceAll(/(\.\d)\n/g, `$1,${player}\n`);

  test('goes into no address, no title and no name beside the report', () => {
    const content = contentFolder({
      'shop.yaml': shop,
      'inbox/John Smith driver 2026-04-11.csv': named('John Smith'),
    });
    const run = draft(content, [join(content, 'inbox/John Smith driver 2026-04-11.csv')]);
    expect(run.status, run.said).toBe(0);
    expect(run.saidPlainly).toContain(
      'Names of files are published, and what may be the name of a person stood in one: it goes beside the report as driver-2026-04-11.csv.',
    );
    expect(inside(join(content, 'reports'))).toEqual(['driver-2026-04-11']);
    const folder = join(content, 'reports/driver-2026-04-11');
    expect(inside(folder)).toEqual(['driver-2026-04-11.csv', 'report.md']);
    expect(inside(join(content, 'inbox'))).toEqual([]);
    const text = readFileSync(join(folder, 'report.md'), 'utf8');
    // Only where the report says who it is, which is never printed.
    expect(text.split('\n').filter((line) => /smith/i.test(line))).toEqual(['    match: [John Smith]']);
    expect(text).toContain('title: Driver\n');
    expect(text).toContain('date: 2026-04-11\n');
  });

  test('leaves session.csv where nothing else is in it', () => {
    const content = contentFolder({ 'shop.yaml': shop, 'inbox/smith.csv': named('John Smith') });
    expect(draft(content, [join(content, 'inbox/smith.csv')]).status).toBe(0);
    expect(inside(join(content, 'reports'))).toEqual(['session']);
    expect(inside(join(content, 'reports/session'))).toEqual(['report.md', 'session.csv']);
  });

  test('that only looks like one goes nowhere either', () => {
    const content = contentFolder({ 'shop.yaml': shop, 'inbox/Anna Meier drivers.csv': twoHeadsCsv });
    const run = draft(content, [join(content, 'inbox/Anna Meier drivers.csv')]);
    expect(run.status).toBe(0);
    expect(run.saidPlainly).not.toMatch(/Anna|Meier/);
    expect(inside(join(content, 'reports/drivers'))).toEqual(['drivers.csv', 'report.md']);
    expect(readFileSync(join(content, 'reports/drivers/report.md'), 'utf8')).not.toMatch(/Anna|Meier/);
  });

  test('as two contenders that lend their names is none', () => {
    const content = contentFolder({ 'shop.yaml': shop, 'inbox/Alder Birch.csv': twoHeadsCsv });
    expect(draft(content, [join(content, 'inbox/Alder Birch.csv')]).status).toBe(0);
    expect(inside(join(content, 'reports/alder-birch'))).toEqual(['Alder Birch.csv', 'report.md']);
  });
});

describe('five shots each, one after another', () => {
  const rows = ['A', 'B'].flatMap((club, second) =>
    [201, 205, 199, 203, 207].map(
      (carry, turn) => `Head ${club},${5 * second + turn + 1},${carry + 12 * second}`,
    ),
  );
  const csv = ['Club,Shot,Carry (yd)', ...rows, ''].join('\n');

  test('are told at once to credit nothing, and where a better order comes from', () => {
    const content = contentFolder({ 'shop.yaml': shop, 'inbox/few.csv': csv });
    const { status, said } = draft(content, [join(content, 'inbox', 'few.csv')], { slug: 'few' });
    expect(status).toBe(0);
    expect(said).toContain('Few shots, one after another, can credit nothing');
    expect(said.replace(/\s+/g, ' ')).toContain('npm run plan writes one');
  });

  test('in turns are not', () => {
    const turned = [
      'Club,Shot,Carry (yd)',
      ...rows.toSorted((x, y) => (Number(x.split(',')[1]) % 5) - (Number(y.split(',')[1]) % 5)),
      '',
    ];
    const content = contentFolder({
      'shop.yaml': shop,
      'inbox/few.csv': turned.join('\n').replace(/,\d+,/g, ',,'),
    });
    expect(draft(content, [join(content, 'inbox', 'few.csv')], { slug: 'few' }).said).not.toContain(
      'can credit nothing',
    );
  });
});
