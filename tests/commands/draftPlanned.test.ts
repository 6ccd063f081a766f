import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkContent } from '../../src/commands/checkContent.ts';
import { draftCommand } from '../../src/commands/draft/draftCommand.ts';
import { planCommand } from '../../src/commands/plan/planCommand.ts';
import { readOrderSheet } from '../../src/intake/plan/readOrderSheet.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { answered } from '../intake/draft/answered.ts';
import { contentFolder, shop } from './contentFolder.ts';
import { listen } from './listen.ts';

const today = '2026-05-01';

/** A content folder with a planned test of two heads, twelve shots each, and files to be dropped beside it. */
async function planned(files: Readonly<Record<string, string>> = {}, slugs = ['two-heads']): Promise<string> {
  const content = contentFolder({ 'shop.yaml': shop, ...files });
  for (const slug of slugs) {
    const options = {
      contender: ['Alder', 'Birch'],
      varied: 'head',
      club: 'driver',
      hitter: 'staff fitter',
      question: 'Does either carry farther?',
      shots: '12',
      slug,
    };
    const { terminal, said } = listen();
    const status = await planCommand({
      contentDir: content,
      options,
      asker: null,
      today,
      time: '09:00',
      terminal,
    });
    expect(status, said()).toBe(0);
  }
  return content;
}

function draft(contentDir: string, names: readonly string[] = [], slug: string | null = null, warmUps = '0') {
  const { terminal, said } = listen();
  const paths = names.map((name) => join(contentDir, name));
  const status = draftCommand({ contentDir, paths, slug, warmUps, dryRun: false, json: false, terminal });
  return { status, said: said() };
}

const read = (content: string, path: string): string => readFileSync(join(content, path), 'utf8');
const inside = (content: string, path: string): readonly string[] => readdirSync(join(content, path)).sort();
const entries = (content: string, slug = 'two-heads') =>
  readOrderSheet('order.csv', readFileSync(join(content, 'reports', slug, 'order.csv'))).entries;

function fill(content: string, slug = 'two-heads'): void {
  const file = `reports/${slug}/report.md`;
  writeFileSync(join(content, file), answered(file, read(content, file)));
}

/** Carries about 230 yards, invented; `columns` are put before it. */
const shots = (count: number, columns: Readonly<Record<string, (shot: number) => string>>): string =>
  [
    [...Object.keys(columns), 'Carry (yd)'].join(','),
    ...Array.from({ length: count }, (_, i) =>
      [...Object.values(columns).map((cell) => cell(i + 1)), 230 + ((i * 37) % 23) - 11].join(','),
    ),
    '',
  ].join('\n');

const number = { Shot: String };
const numbered = shots(24, number);

describe('a session that was planned goes into the draft of its plan', () => {
  test('plan, hit, drop the CSV of a monitor that records no club: the page has what was hit by shot number', async () => {
    const csv = shots(24, { ...number, Time: (shot) => `2026-05-02 10:${10 + shot}:00` });
    const content = await planned({ 'inbox/export 7.csv': csv });
    const run = draft(content);
    expect(run.status, run.said).toBe(0);
    expect(inside(content, 'reports')).toEqual(['two-heads']);
    expect(inside(content, 'reports/two-heads')).toEqual([
      'export 7.csv',
      'hitting-sheet.html',
      'order.csv',
      'report.md',
    ]);
    expect(inside(content, 'inbox')).toEqual([]);
    expect(run.said).toMatch(/compared {2}(Alder 12, Birch 12|Birch 12, Alder 12)\n/);
    expect(run.said).toContain(
      'This is the session of the planned test two-heads. What was hit with each shot is taken from order.csv.',
    );
    expect(run.said).toContain('filled in there: session, date.');
    fill(content);
    const { terminal, said } = listen();
    expect(checkContent({ contentDir: content, only: [], json: false, terminal }), said()).toBe(0);
    const [report] = loadSite(content).reports;
    expect(report?.session.shots.map(({ shotNo, contender }) => [shotNo, contender])).toEqual(
      entries(content).map(({ shot, contender }) => [shot, contender?.toLowerCase()]),
    );
    expect(report?.source.front.date).toBe('2026-05-02');
    // The ledger has the plan from the day before, and its seed gives this very order.
    expect(report?.findings.design).toMatchObject({ plan: 'on-record', order: 'planned-random' });
  });

  test('one name for every shot, such as the kind of club, says nothing of what was compared', async () => {
    const content = await planned({
      'x.csv': shots(24, { ...number, Club: () => 'Driver', Player: () => 'Player 1' }),
    });
    const run = draft(content, ['x.csv']);
    expect(run.status, run.said).toBe(0);
    expect(run.said).toContain('24 shots all named Driver');
    expect(run.said).toContain('filled in there: session, hitters.golfer-two-heads.match.');
    fill(content);
    const [report] = loadSite(content).reports;
    expect(report?.session.shots.map(({ contender }) => contender)).toEqual(
      entries(content).map(({ contender }) => contender?.toLowerCase()),
    );
  });

  test('warm-up swings that the monitor counted are put before the order', async () => {
    const content = await planned({ 'x.csv': shots(34, number), 'y.csv': shots(34, number) });
    const sheet = join(content, 'reports/two-heads/order.csv');
    // As a spreadsheet with commas in its numbers saves it, with a note.
    writeFileSync(
      sheet,
      readFileSync(sheet, 'utf8')
        .replaceAll(',', ';')
        .replace(/^(3;.*;);/m, '$1;"ball; split"'),
    );
    const before = entries(content);
    expect(draft(content, ['x.csv']).said).toContain(
      'has 34 shots; the order sheet lists 24 (if the first 10 were warm-up swings, add --warm-ups 10)',
    );
    expect(draft(content, ['x.csv'], null, 'ten').said).toContain('--warm-ups ten: a whole number up to 99.');
    expect(draft(content, ['x.csv'], 'another', '10').said).toContain('this is none. Nothing was written.');
    const run = draft(content, ['x.csv'], null, '10');
    expect(run.status, run.said).toBe(0);
    expect(run.said).toContain('shots     24 (10 warm-up swings not counted)');
    const after = entries(content);
    expect(after.slice(0, 10).map(({ shot, contender }) => [shot, contender])).toEqual(
      Array.from({ length: 10 }, (_, index) => [index + 1, null]),
    );
    expect(after.slice(10).map(({ shot, contender, note }) => [shot, contender, note])).toEqual(
      before.map(({ shot, contender, note }) => [shot + 10, contender, note]),
    );
    fill(content);
    const { terminal, said } = listen();
    expect(checkContent({ contentDir: content, only: [], json: false, terminal }), said()).toBe(0);
    const [report] = loadSite(content).reports;
    expect(report?.session.warmUps).toBe(10);
    expect(report?.session.shots.map(({ shotNo, contender }) => [shotNo, contender])).toEqual(
      before.map(({ shot, contender }) => [shot + 10, contender?.toLowerCase()]),
    );
    expect(report?.findings.design.order).toBe('planned-random');
  });

  test('a file that names the contenders needs no order sheet where it has more shots than that', async () => {
    const content = await planned({
      'x.csv': shots(26, { ...number, Head: (shot) => (shot % 2 === 0 ? 'ALDER' : 'birch') }),
    });
    const run = draft(content, ['x.csv']);
    expect(run.said).toContain(
      'The file names what was hit, and order.csv lists other shots: it is not used.',
    );
    expect(read(content, 'reports/two-heads/report.md')).not.toMatch(/order_sheet|Tells what was hit/);
    fill(content);
    const { terminal, said } = listen();
    expect(checkContent({ contentDir: content, only: [], json: false, terminal }), said()).toBe(0);
  });

  test('what was answered before stays, and only open lines are filled', async () => {
    const content = await planned({ 'two_heads-2026-05-03.csv': numbered });
    const file = join(content, 'reports/two-heads/report.md');
    const own = readFileSync(file, 'utf8')
      .replace(/^( {4}supplied_by:)$/m, '$1 our stock # mine')
      .replaceAll('\n', '\r\n');
    writeFileSync(file, own);
    expect(draft(content, ['two_heads-2026-05-03.csv']).status).toBe(0);
    const before = own.split('\r\n');
    const after = readFileSync(file, 'utf8').split('\r\n');
    expect(before.filter((line) => !after.includes(line))).toEqual(['date:', 'session:']);
    expect(after).toContain('date: 2026-05-03');
    expect(after).toContain('session: two_heads-2026-05-03.csv');
    expect(after).toContain('    supplied_by: our stock # mine');
  });

  test('a file that lies beside the plan already is named there, and not copied', async () => {
    const content = await planned();
    writeFileSync(join(content, 'reports/two-heads/shots.csv'), numbered);
    expect(draft(content, ['reports/two-heads/shots.csv']).status).toBe(0);
    expect(inside(content, 'reports/two-heads')).toEqual([
      'hitting-sheet.html',
      'order.csv',
      'report.md',
      'shots.csv',
    ]);
    expect(read(content, 'reports/two-heads/report.md')).toContain('\nsession: shots.csv\n');
  });

  test('a file named as the order sheet is gets another name', async () => {
    const content = await planned({ 'out/order.csv': numbered });
    const sheet = read(content, 'reports/two-heads/order.csv');
    expect(draft(content, ['out/order.csv']).status).toBe(0);
    expect(read(content, 'reports/two-heads/order.csv')).toBe(sheet);
    expect(read(content, 'reports/two-heads/report.md')).toContain('\nsession: order-2.csv\n');
  });

  test('a unit that the file lacks is asked for in the planned draft', async () => {
    const content = await planned({ 'x.csv': numbered.replace('Carry (yd)', 'Carry') });
    expect(draft(content, ['x.csv']).status).toBe(0);
    expect(read(content, 'reports/two-heads/report.md')).toMatch(
      /\ncolumns:\n {2}carry:\n {4}heading: Carry\n/,
    );
    fill(content);
    const { terminal, said } = listen();
    expect(checkContent({ contentDir: content, only: [], json: false, terminal }), said()).toBe(0);
  });
});

describe('a file that may or may not belong to a plan is for the fitter to place', () => {
  test.each([
    ['a shot too few', shots(23, number), 'has 23 shots; the order sheet lists 24'],
    [
      'one contender of two',
      shots(12, { ...number, Head: () => 'Alder' }),
      'the file has no shots with Birch',
    ],
    [
      'a contender more',
      shots(24, { ...number, Head: (shot) => ['Alder', 'Birch', 'Cedar'][shot % 3] ?? '' }),
      'the file also names Cedar, which the plan does not',
    ],
  ])('%s', async (_, csv, why) => {
    const content = await planned({ 'inbox/x.csv': csv });
    const run = draft(content);
    expect(run.status).toBe(1);
    expect(run.said).toContain(why);
    expect(run.said).toContain(`--slug two-heads\n`);
    expect(run.said).toContain('If it is a test of its own: npm run draft --');
    expect(run.said).toContain('Nothing was written.');
    expect(inside(content, 'inbox')).toEqual(['x.csv']);
    expect(inside(content, 'reports/two-heads')).not.toContain('x.csv');
    // Either answer is done as it was given.
    const own = draft(content, ['inbox/x.csv'], 'another');
    expect(own.status, own.said).toBe(0);
    expect(inside(content, 'reports')).toEqual(['another', 'two-heads']);
    writeFileSync(join(content, 'inbox/x.csv'), csv);
    const joined = draft(content, ['inbox/x.csv'], 'two-heads');
    expect(joined.status, joined.said).toBe(0);
    expect(inside(content, 'inbox')).toEqual([]);
    expect(inside(content, 'reports/two-heads')).toContain('x.csv');
  });

  test('put there all the same, a shot too few is said with the line of the sheet', async () => {
    const content = await planned({ 'x.csv': shots(23, number) });
    const run = draft(content, ['x.csv'], 'two-heads');
    expect(run.said).toContain('reports/two-heads/order.csv:25\n  error');
    expect(run.said).toContain('correct order.csv to the shots that were hit');
  });

  test('two plans that it fits', async () => {
    const content = await planned({ 'x.csv': numbered }, ['one', 'two']);
    const run = draft(content, ['x.csv']);
    expect(run.status).toBe(1);
    expect(run.said).toMatch(/--slug one\n[\s\S]*--slug two\n/);
  });
});

describe('other sessions are not taken for planned ones', () => {
  test.each([
    ['other contenders', shots(24, { Head: (shot) => (shot % 2 === 0 ? 'Oak' : 'Yew') })],
    [
      'hit before the plan',
      shots(24, { ...number, Time: (shot) => `2026-04-30 10:${10 + shot}:00`, Head: () => 'Alder' }),
    ],
  ])('%s', async (_, csv) => {
    const content = await planned({ 'x.csv': csv });
    expect(draft(content, ['x.csv']).status).toBe(0);
    expect(inside(content, 'reports')).toEqual(['two-heads', 'x']);
    expect(inside(content, 'reports/two-heads')).not.toContain('x.csv');
  });

  test('nor does a plan that has its session take another', async () => {
    const content = await planned({ 'x.csv': numbered, 'y.csv': numbered });
    draft(content, ['x.csv']);
    expect(draft(content, ['y.csv']).status).toBe(0);
    expect(existsSync(join(content, 'reports/y/y.csv'))).toBe(true);
    expect(draft(content, ['y.csv'], 'two-heads').said).toContain('never overwritten');
  });

  test('a misread cell keeps no session from its plan: its shot is left out in the report', async () => {
    const content = await planned({ 'inbox/x.csv': numbered.replace('230', '2x0') });
    const run = draft(content);
    expect(run.status).toBe(0);
    expect(run.said).toContain('Leave the shot out');
    expect(inside(content, 'inbox')).toEqual([]);
    expect(read(content, 'reports/two-heads/report.md')).toContain('session: x.csv');
  });

  test('a file that must be mended stays where it is', async () => {
    const content = await planned({ 'inbox/x.csv': numbered.replace('230', '23\0') });
    const before = read(content, 'reports/two-heads/report.md');
    const run = draft(content);
    expect(run.status).toBe(1);
    expect(inside(content, 'inbox')).toEqual(['x.csv']);
    expect(read(content, 'reports/two-heads/report.md')).toBe(before);
  });
});
