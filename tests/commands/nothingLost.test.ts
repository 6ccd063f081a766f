import { spawn } from 'node:child_process';
import {
  chmodSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { draftCommand } from '../../src/commands/draft/draftCommand.ts';
import type { Asker } from '../../src/commands/plan/asker.ts';
import { planCommand } from '../../src/commands/plan/planCommand.ts';
import type { PlanOptions } from '../../src/commands/plan/planOptions.ts';
import { recordLedger } from '../../src/commands/recordLedger.ts';
import { realDisk, type Disk } from '../../src/commands/writing/disk.ts';
import { readOrderSheet } from '../../src/intake/plan/readOrderSheet.ts';
import { contentFolder, shop, twoHeadsCsv } from './contentFolder.ts';
import { systemError } from './failingDisk.ts';
import { listen } from './listen.ts';

const today = '2026-05-01';

const two: PlanOptions = {
  contender: ['Bär 9°', 'Birch'],
  varied: 'head',
  club: 'driver',
  hitter: 'staff fitter',
  shots: '12',
};

async function plan(
  contentDir: string,
  slug: string,
  asker: Asker | null = null,
  more: PlanOptions = {},
  disk: Disk = realDisk,
) {
  const { terminal, said } = listen();
  const options = { ...two, slug, ...more };
  const status = await planCommand({ contentDir, options, asker, today, time: '09:00', terminal, disk });
  return { status, said: said() };
}

function draft(contentDir: string, names: readonly string[], warmUps = '0', slug: string | null = null) {
  const { terminal, said } = listen();
  const paths = names.map((name) => join(contentDir, name));
  const status = draftCommand({ contentDir, paths, slug, warmUps, dryRun: false, json: false, terminal });
  return { status, said: said() };
}

const read = (content: string, path: string): string => readFileSync(join(content, path), 'utf8');
const planned = (content: string): string[] =>
  JSON.parse(read(content, 'ledger.json'))
    .plans.map(({ slug }: { slug: string }) => slug)
    .sort();
const windows = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0));
const wide = (text: string): Uint8Array => new Uint8Array(Buffer.from(`\ufeff${text}`, 'utf16le'));
const shots = (count: number): string =>
  [
    'Shot,Carry (yd)',
    ...Array.from({ length: count }, (_, i) => `${i + 1},${230 + ((i * 37) % 23)}`),
    '',
  ].join('\n');

async function withPlan(): Promise<string> {
  const content = contentFolder({ 'shop.yaml': shop, 'x.csv': shots(24), 'y.csv': shots(34) });
  const { status, said } = await plan(content, 'two');
  expect(status, said).toBe(0);
  return content;
}

describe('the ledger is written as it is by now', () => {
  test('a plan of a second terminal, while the first is still being asked, is kept', async () => {
    const content = contentFolder({ 'shop.yaml': shop });
    let asked = 0;
    const person: Asker = {
      close: () => undefined,
      ask: async () => {
        asked += 1;
        if (asked === 1) expect((await plan(content, 'second')).status).toBe(0);
        return '';
      },
    };
    const first = await plan(content, 'first', person);
    expect(first.status, first.said).toBe(0);
    expect(asked).toBeGreaterThan(0);
    expect(planned(content)).toEqual(['first', 'second']);
  });

  test('a ledger that became unreadable meanwhile is said and left alone, and no plan is written', async () => {
    const content = contentFolder({ 'shop.yaml': shop });
    const spoiling: Asker = {
      close: () => undefined,
      ask: async () => {
        writeFileSync(join(content, 'ledger.json'), '<<<<<<< HEAD');
        return '';
      },
    };
    const { status, said } = await plan(content, 'first', spoiling);
    expect(status).toBe(1);
    expect(said).toContain('ledger-invalid');
    expect(said).toContain('The plan could not be put on record.\nNothing was written.\n');
    expect(read(content, 'ledger.json')).toBe('<<<<<<< HEAD');
    expect(readdirSync(content)).toEqual(['ledger.json', 'shop.yaml']);
  });

  test('ten plans at once, each a process of its own: ten entries, ten reports', async () => {
    const content = contentFolder({ 'shop.yaml': shop });
    const words = ['plan.ts', '--contender', 'Alder', '--contender', 'Birch', '--varied', 'head', '--club'];
    const more = ['driver', '--hitter', 'staff fitter', '--shots', '12', '--yes'];
    const started = Array.from({ length: 10 }, (_, index) => {
      const [command = '', ...rest] = words;
      // Half of them want the same name, and find another one.
      const slug = index % 2 === 0 ? ['--slug', `plan-${index}`] : [];
      return new Promise<string>((done) => {
        const running = spawn(
          process.execPath,
          [resolve('src/commands', command), ...rest, ...more, ...slug],
          {
            env: { ...process.env, CONTENT_DIR: content, NO_COLOR: '1' },
          },
        );
        let said = '';
        running.stderr.on('data', (text) => (said += String(text)));
        running.on('exit', (status) => done(`${status ?? 'killed'} ${said}`));
      });
    });
    expect(await Promise.all(started)).toEqual(Array.from({ length: 10 }, () => '0 '));
    const names = readdirSync(join(content, 'reports')).sort();
    expect(names).toHaveLength(10);
    expect(planned(content)).toEqual(names);
    expect(readdirSync(content).sort()).toEqual(['.schema', 'ledger.json', 'reports', 'shop.yaml']);
  });
});

describe('a report that is not UTF-8 keeps every letter when a session is put into it', () => {
  test.each([
    ['Windows-1252', windows],
    ['UTF-16', wide],
  ])('%s: it is UTF-8 afterwards, and that is said', async (encoding, encoded) => {
    const content = await withPlan();
    const path = join(content, 'reports/two/report.md');
    const text = `${read(content, 'reports/two/report.md')}\nIn zwölf Bällen, 9° und mehr.\n`;
    writeFileSync(path, encoded(text));
    const { status, said } = draft(content, ['x.csv']);
    expect(status, said).toBe(0);
    expect(said).toContain(`report.md was saved as ${encoding} and is UTF-8 now, every letter as it was.\n`);
    const after = read(content, 'reports/two/report.md');
    expect(after).toContain('Bär 9°');
    expect(after).toContain('In zwölf Bällen, 9° und mehr.\n');
    expect(after).toMatch(/^session: x\.csv$/m);
    expect(after).not.toContain('\ufffd');
  });

  test('with a broken letter it is refused at its place, and stays byte for byte', async () => {
    const content = await withPlan();
    const path = join(content, 'reports/two/report.md');
    const bytes = Buffer.from(`${read(content, 'reports/two/report.md')}\nzwölf Bälle, X\n`);
    bytes[bytes.lastIndexOf('X')] = 0xb0;
    writeFileSync(path, bytes);
    const { status, said } = draft(content, ['x.csv']);
    expect(status).toBe(1);
    const line = bytes.toString('latin1').split('\n').length - 1;
    expect(said).toContain(`reports/two/report.md:${line}\n  error     Some bytes are no characters`);
    expect(said).toContain('Not put into the planned test two: reports/two/report.md must be mended first.');
    expect(readFileSync(path).equals(bytes)).toBe(true);
    expect(readdirSync(join(content, 'reports/two'))).not.toContain('x.csv');
  });

  test('a report that somebody saves while the session is read is left as saved', async () => {
    const content = await withPlan();
    const path = join(content, 'reports/two/report.md');
    const disk: Disk = {
      ...realDisk,
      openSync: ((file: string, flags: string, mode?: number) => {
        // The first that is written in the folder of the report.
        if (file.includes('reports/two/.straightface')) writeFileSync(path, 'saved meanwhile');
        return realDisk.openSync(file, flags, mode);
      }) as Disk['openSync'],
    };
    const { terminal, said } = listen();
    const typed = { contentDir: content, paths: [join(content, 'x.csv')], slug: null, dryRun: false };
    expect(draftCommand({ ...typed, json: false, terminal, disk })).toBe(1);
    expect(said()).toContain(
      'report.md in two was saved by somebody meanwhile: run it again. Nothing was written.',
    );
    expect(read(content, 'reports/two/report.md')).toBe('saved meanwhile');
    expect(readdirSync(join(content, 'reports/two')).sort()).toEqual([
      'hitting-sheet.html',
      'order.csv',
      'report.md',
    ]);
  });
});

describe('an order sheet that a spreadsheet saved keeps every letter when warm-up swings are put into it', () => {
  test.each([
    ['Windows-1252', windows],
    ['UTF-16', wide],
  ])('%s: it is UTF-8 with its mark afterwards, so that a spreadsheet knows', async (encoding, encoded) => {
    const content = await withPlan();
    const path = join(content, 'reports/two/order.csv');
    writeFileSync(path, encoded(read(content, 'reports/two/order.csv')));
    const { status, said } = draft(content, ['y.csv'], '10');
    expect(status, said).toBe(0);
    expect(said).toContain(`order.csv was saved as ${encoding} and is UTF-8 now, every letter as it was.\n`);
    const bytes = readFileSync(path);
    expect(bytes.toString('utf8').startsWith('\ufeffShot,')).toBe(true);
    expect(bytes.toString('utf8')).not.toContain('\ufffd');
    const { entries, problems } = readOrderSheet('order.csv', bytes);
    expect(problems).toEqual([]);
    expect(entries.slice(0, 10).every(({ contender }) => contender === null)).toBe(true);
    expect(new Set(entries.slice(10).map(({ contender }) => contender))).toEqual(
      new Set(['Bär 9°', 'Birch']),
    );
  });

  test('letters broken in it: refused, and it stays byte for byte', async () => {
    const content = await withPlan();
    const path = join(content, 'reports/two/order.csv');
    const bytes = readFileSync(path);
    bytes[bytes.indexOf('°') + 1] = 0x20;
    writeFileSync(path, bytes);
    const { status, said } = draft(content, ['y.csv'], '10', 'two');
    expect(status).toBe(1);
    expect(said).toMatch(/reports\/two\/order\.csv:\d+\n {2}error {5}Some bytes are no characters/);
    expect(said).toContain('Not put into the planned test two: reports/two/order.csv must be mended first.');
    expect(readFileSync(path).equals(bytes)).toBe(true);
  });
});

describe('a draft', () => {
  test('of a file that a report has already is not made twice from the inbox', () => {
    const content = contentFolder({ 'shop.yaml': shop, 'inbox/two.csv': twoHeadsCsv });
    expect(draft(content, []).status).toBe(0);
    writeFileSync(join(content, 'inbox/two.csv'), twoHeadsCsv);
    const { status, said } = draft(content, []);
    expect(status).toBe(0);
    expect(said).toContain(
      'reports/two has two.csv with the same shots already, so no second draft is made.',
    );
    expect(readdirSync(join(content, 'inbox'))).toEqual([]);
    expect(readdirSync(join(content, 'reports'))).toEqual(['two']);
    // Other shots under the same name are another test.
    writeFileSync(join(content, 'inbox/two.csv'), twoHeadsCsv.replace('231.2', '231.3'));
    expect(draft(content, []).status).toBe(0);
    expect(readdirSync(join(content, 'reports'))).toEqual(['two', 'two-2']);
  });

  test('takes a file out of the inbox only once the disk has said that it keeps the copy', () => {
    const content = contentFolder({ 'shop.yaml': shop, 'inbox/two.csv': twoHeadsCsv });
    const folders = new Set<number>();
    const disk: Disk = {
      ...realDisk,
      openSync: ((file: string, flags: string, mode?: number) => {
        const opened = realDisk.openSync(file, flags, mode);
        // Numbers of open files come again.
        if (flags === 'r') folders.add(opened);
        else folders.delete(opened);
        return opened;
      }) as Disk['openSync'],
      fsyncSync: (opened) => {
        if (folders.has(opened)) throw systemError('EIO', 'fsync');
        realDisk.fsyncSync(opened);
      },
    };
    const { terminal, said } = listen();
    draftCommand({ contentDir: content, paths: [], slug: null, dryRun: false, json: false, terminal, disk });
    expect(said()).toContain('stays in the inbox: the disk does not say that it has kept the copy.');
    expect(read(content, 'inbox/two.csv')).toBe(twoHeadsCsv);
    expect(read(content, 'reports/two/two.csv')).toBe(twoHeadsCsv);
  });

  test('does not read what is far too large', () => {
    const content = contentFolder({ 'shop.yaml': shop, 'film.csv': '' });
    truncateSync(join(content, 'film.csv'), 3 * 2 ** 30);
    const { status, said } = draft(content, ['film.csv']);
    expect(status).toBe(1);
    expect(said).toContain(
      'film.csv is too large: 3221.2 MB, and at most 50 MB are read. Split the session over several files.\nNothing was written.\n',
    );
  });
});

describe('where nothing can be written, a sentence and exit 1', () => {
  const refusing = (code: string): Disk => ({
    ...realDisk,
    openSync: ((_file: string, flags: string) => {
      throw systemError(code, `open ${flags}`);
    }) as Disk['openSync'],
  });

  test.each([
    ['EACCES', 'there is no permission (EACCES)'],
    ['EROFS', 'the disk can only be read (EROFS)'],
    ['ENOSPC', 'the disk is full (ENOSPC)'],
  ])('%s: plan, draft and record', async (code, words) => {
    const content = contentFolder({ 'shop.yaml': shop, 'inbox/two.csv': twoHeadsCsv });
    const disk = refusing(code);
    const why = `Nothing can be written in ${content}: ${words}.`;
    const planning = await plan(content, 'first', null, {}, disk);
    expect(planning.status).toBe(1);
    expect(planning.said).toContain(`The plan cannot be written. ${why}\nNothing was written.\n`);
    const { terminal, said } = listen();
    const drafting = {
      contentDir: content,
      paths: [],
      slug: null,
      dryRun: false,
      json: false,
      terminal,
      disk,
    };
    expect(draftCommand(drafting)).toBe(1);
    expect(said()).toBe(
      `The draft cannot be written. ${why} Nothing was written.\nStill in the inbox: two.csv\n`,
    );
    const recording = listen();
    expect(recordLedger({ contentDir: content, today, terminal: recording.terminal, disk })).toBe(false);
    expect(recording.said()).toBe(`Not recorded. ${why} The ledger is as it was.\n`);
    expect(readdirSync(content).sort()).toEqual(['inbox', 'shop.yaml']);
  });

  test('a file in the place of the content folder', async () => {
    const file = join(contentFolder({ 'shop.yaml': shop }), 'shop.yaml');
    const { terminal, said } = listen();
    expect(recordLedger({ contentDir: file, today, terminal })).toBe(false);
    expect(said()).toBe(`There is no folder ${file}. Nothing was written.\n`);
    expect((await plan(file, 'first')).status).toBe(1);
    expect(readFileSync(file, 'utf8')).toBe(shop);
  });

  test('no folder at all', () => {
    const folder = join(contentFolder({}), 'none');
    const { terminal, said } = listen();
    expect(recordLedger({ contentDir: folder, today, terminal })).toBe(false);
    expect(said()).toBe(`There is no folder ${folder}. Nothing was written.\n`);
  });
});

test('a ledger that is a link inside the content folder is written where it leads, with its mode', async () => {
  const content = contentFolder({ 'shop.yaml': shop });
  await plan(content, 'first');
  mkdirSync(join(content, 'records'));
  writeFileSync(join(content, 'records/all.json'), read(content, 'ledger.json'));
  chmodSync(join(content, 'records/all.json'), 0o600);
  realDisk.rmSync(join(content, 'ledger.json'));
  symlinkSync('records/all.json', join(content, 'ledger.json'));
  expect((await plan(content, 'second')).status).toBe(0);
  expect(JSON.parse(read(content, 'records/all.json')).plans).toHaveLength(2);
});
