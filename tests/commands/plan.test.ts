import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkContent } from '../../src/commands/checkContent.ts';
import { AnswersEnded, type Asker } from '../../src/commands/plan/asker.ts';
import { planCommand } from '../../src/commands/plan/planCommand.ts';
import type { PlanOptions } from '../../src/commands/plan/planOptions.ts';
import { recordLedger } from '../../src/commands/recordLedger.ts';
import { readOrderSheet } from '../../src/intake/plan/readOrderSheet.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { answered } from '../intake/draft/answered.ts';
import { contentFolder, shop } from './contentFolder.ts';
import { listen } from './listen.ts';

const today = '2026-05-01';

/** Whoever sits at the terminal: gives these answers in turn, then leaves. */
function person(...answers: readonly string[]): Asker & { readonly heard: string[] } {
  const heard: string[] = [];
  const left = [...answers];
  return {
    heard,
    close: () => undefined,
    ask: async (question) => {
      heard.push(question);
      const next = left.shift();
      if (next === undefined) throw new AnswersEnded('no further answers');
      return next;
    },
  };
}

async function plan(contentDir: string, options: PlanOptions, asker: Asker | null = null) {
  const { terminal, said } = listen();
  const status = await planCommand({ contentDir, options, asker, today, time: '09:00', terminal });
  return { status, said: said() };
}

const three: PlanOptions = {
  contender: ['Alder 9°', 'Birch, 9°', 'Cedar 9°'],
  varied: 'head',
  club: 'driver',
  hitter: 'staff fitter',
  slug: 'three-heads',
};

const folderOf = (content: string, slug: string): string => join(content, 'reports', slug);
const read = (content: string, path: string): string => readFileSync(join(content, path), 'utf8');
const fresh = (): string => contentFolder({ 'shop.yaml': shop });
const entries = (content: string, slug: string) =>
  readOrderSheet('order.csv', readFileSync(join(folderOf(content, slug), 'order.csv'))).entries;

describe('by flags', () => {
  test('writes the order, the sheet, a draft with its plan and an entry in the ledger', async () => {
    const content = fresh();
    const run = await plan(content, three);
    expect(run.status, run.said).toBe(0);
    expect(readdirSync(folderOf(content, 'three-heads')).sort()).toEqual([
      'hitting-sheet.html',
      'order.csv',
      'report.md',
    ]);
    const report = read(content, 'reports/three-heads/report.md');
    expect(report).toContain(
      [
        'plan:',
        '  date: 2026-05-01',
        '  shots_per_contender: 20',
        '  order: random rotation',
        '  seed: three-heads-2026-05-01',
      ].join('\n'),
    );
    expect(report).toMatch(/^primary: carry$/m);
    expect(report).toMatch(/^ {2}carry: 5 yd$/m);
    expect(report).toMatch(/^ {4}role: staff fitter$/m);
    expect(entries(content, 'three-heads')).toHaveLength(60);
    const ledger = JSON.parse(read(content, 'ledger.json'));
    expect(ledger.plans).toEqual([
      { slug: 'three-heads', date: today, time: '09:00', hash: expect.stringMatching(/^[0-9a-f]{64}$/) },
    ]);
  });

  test('says what the shots can and cannot find', async () => {
    // Typical spread 12 yd, for a gap of 5 yd. Two groups: power.t.test of R asks for 92 and gives the rest at n = 30.
    const { said } = await plan(fresh(), { ...three, contender: ['Alder', 'Birch'], shots: '30' });
    expect(said).toContain(
      'standard deviation 12 yd, typical of a middle handicap with a driver. This is common practice, no source',
    );
    expect(said).toContain('For a true gap of 5 yd to be found 4 times in 5: 93 shots with each.');
    expect(said).toMatch(/may miss {5}a true gap of 5 yd: found in 34 of 100 such tests/);
    expect(said).toMatch(/can find {5}a true gap of 9 yd or more, 4 times in 5/);
    expect(said).toMatch(
      /luck alone {3}2 equal heads come about 2\.5 yd apart from best to worst, up to 6\.1 yd now and then/,
    );
    expect(said).toMatch(/level {8}cannot be shown: the range around any gap is 6\.3 yd either way/);
    expect(said).toContain('when they find a gap, usually find it too big');
    expect(said).toMatch(/warm up with a club outside the test and stop if anything hurts/);
  });

  test('recommends two or three where there are more', async () => {
    const four = await plan(fresh(), {
      ...three,
      contender: ['A', 'B', 'C', 'D'],
      spread: '8 yd',
      shots: '12',
    });
    expect(four.said).toMatch(
      /Two or three answer more than 4: .* Two would take 43 shots each, three \d+\./,
    );
    const two = await plan(fresh(), { ...three, spread: '8 yd', shots: '12' });
    expect(two.said).not.toMatch(/answer more than/);
  });

  test('says that mini-blocks take more shots, and promises what they find', async () => {
    const own = { ...three, spread: '8 yd', matters: '10 yd', shots: '12' };
    const rotation = await plan(fresh(), own);
    const visits = await plan(fresh(), { ...own, order: 'mini-blocks-3' });
    const promised = ({ said }: { readonly said: string }): number =>
      Number(/found in (\d+) of 100 such tests/.exec(said)?.[1]);
    expect(visits.said).toContain(
      'In mini-blocks of 3 that takes 18 shots with each: a gap must show from visit to visit too.',
    );
    expect(rotation.said).not.toContain('mini-blocks of 3 that takes');
    expect(promised(visits)).toBeLessThan(promised(rotation));
  });

  test('the same seed gives the same order; mini-blocks come in visits', async () => {
    const first = fresh();
    await plan(first, { ...three, seed: 'x', shots: '12' });
    const second = fresh();
    await plan(second, { ...three, slug: 'other', seed: 'x', shots: '12' });
    expect(read(first, 'reports/three-heads/order.csv')).toBe(read(second, 'reports/other/order.csv'));
    await plan(second, { ...three, slug: 'blocks', order: 'mini-blocks-3', shots: '12' });
    const visits = entries(second, 'blocks').map(({ contender }) => contender);
    for (let shot = 0; shot < visits.length; shot += 3) {
      expect(visits[shot + 1]).toBe(visits[shot]);
      expect(visits[shot + 2]).toBe(visits[shot]);
    }
  });

  test('never overwrites: a name that is taken is refused, and one that was not chosen gives way', async () => {
    const content = fresh();
    await plan(content, three);
    const before = read(content, 'reports/three-heads/report.md');
    const ledger = read(content, 'ledger.json');
    const again = await plan(content, { ...three, shots: '12' });
    expect(again.status).toBe(1);
    expect(again.said).toContain(
      'There is a report named three-heads already, and it is never overwritten. Use another name: --slug three-heads-2\nNothing was written.',
    );
    expect(read(content, 'reports/three-heads/report.md')).toBe(before);
    expect(read(content, 'ledger.json')).toBe(ledger);
    const { slug, ...unnamed } = three;
    await plan(content, { ...unnamed, title: 'Three heads' });
    expect(existsSync(folderOf(content, `${slug}-2`))).toBe(true);
  });

  test('says all that is missing or cannot be used in one go, and writes nothing', async () => {
    const content = fresh();
    const nothing = await plan(content, {});
    expect(nothing.status).toBe(1);
    expect(nothing.said).toMatch(/--contender is missing\..*\n--varied is missing\..*\n--club is missing\./);
    for (const [options, expected] of [
      [{ contender: ['Alder'] }, '--contender Alder: 2 to 6 names'],
      [{ contender: ['Alder', 'alder '] }, 'names that differ'],
      [{ metric: 'cary' }, '--metric cary: a metric such as carry or ball speed; did you mean carry?'],
      [{ matters: '5' }, '--matters 5: a number with a unit'],
      [{ spread: '8 mph' }, '--spread 8 mph: a distance in m, yd or ft'],
      [{ club: 'putter' }, '--club putter: driver, iron, wedge or other'],
      [{ order: 'any' }, '--order any: rotation, mini-blocks-2 or mini-blocks-3'],
      [{ order: 'mini-blocks-2', shots: '13' }, '--shots 13: a multiple of 2, to be hit in visits of 2'],
      [{ club: 'other' }, '--spread is missing.'],
      [{ slug: 'Three Heads' }, '--slug Three Heads: use small letters'],
    ] as const) {
      const run = await plan(content, { ...three, ...options });
      expect([run.status, run.said]).toEqual([1, expect.stringContaining(expected)]);
      expect(run.said).toMatch(/Nothing was written\.\n$/);
    }
    const { club: _, ...clubless } = three;
    const run = await plan(content, clubless);
    expect([run.status, run.said]).toEqual([
      1,
      expect.stringContaining('--club is missing. Which kind of club: driver, iron, wedge or other?'),
    ]);
    expect(readdirSync(content)).toEqual(['shop.yaml']);
  });

  test('--dry-run works it out and writes nothing', async () => {
    const content = fresh();
    const run = await plan(content, { ...three, 'dry-run': true });
    expect([run.status, readdirSync(content)]).toEqual([0, ['shop.yaml']]);
    expect(run.said).toMatch(/can find[\s\S]*Nothing was written\.\n$/);
  });

  test('a shop whose answers cannot be read is not passed over', async () => {
    const content = contentFolder({ 'shop.yaml': `${shop}defualts: {units: metres}\n` });
    expect((await plan(content, three)).said).toMatch(/^shop\.yaml has an error, so its units/);
  });

  test('a ledger that cannot be read is not written over', async () => {
    const content = contentFolder({ 'shop.yaml': shop, 'ledger.json': '{' });
    const run = await plan(content, three);
    expect([run.status, read(content, 'ledger.json')]).toEqual([1, '{']);
    expect(existsSync(folderOf(content, 'three-heads'))).toBe(false);
  });
});

describe('at the terminal', () => {
  test('asks for what the flags leave open, again where an answer cannot be used, Enter takes the proposal', async () => {
    const content = fresh();
    const asker = person(
      'Alder, Birch',
      '',
      'head',
      '',
      '',
      'driver',
      '',
      '',
      '',
      '',
      '2',
      '12',
      'Alder a little farther',
    );
    const run = await plan(content, { slug: 'asked' }, asker);
    expect(run.status, run.said).toBe(0);
    expect(asker.heard.map((question) => question.split(/[?:(]/)[0])).toEqual([
      'What is compared',
      'The one thing that differs',
      'The one thing that differs',
      'The one metric to judge by',
      'The smallest gap in carry that a customer should care about',
      'Which kind of club',
      'Who hits, as a role and never a name',
      'A good player, or one of a middle handicap',
      'The spread of carry to plan with, as a standard deviation with its unit',
      'The order',
      'How many shots with each',
      'How many shots with each',
      'What do you expect to see',
    ]);
    expect(run.said).toContain('Expected: a whole number from 3 to 200');
    const report = read(content, 'reports/asked/report.md');
    expect(report).toContain('  shots_per_contender: 12\n');
    expect(report).toContain('  expectation: Alder a little farther\n');
  });

  test('a club without a usual spread is not asked for a kind of player, and Enter is no answer to its kind', async () => {
    const asker = person('Alder, Birch', 'head', '', '', '', 'other', '', '8 yd', '', '12', '');
    const run = await plan(fresh(), { slug: 'asked' }, asker);
    expect(run.status, run.said).toBe(0);
    expect(run.said).toContain('Expected: driver, iron, wedge or other');
    expect(asker.heard.filter((question) => /A good player/.test(question))).toEqual([]);
    expect(asker.heard.find((question) => /The spread/.test(question))).toContain(
      'No usual one is known for such a club.',
    );
  });

  test('--yes asks nothing', async () => {
    const asker = person();
    expect((await plan(fresh(), { ...three, yes: true }, asker)).status).toBe(0);
    expect(asker.heard).toEqual([]);
  });

  test('whoever leaves leaves nothing behind', async () => {
    const content = fresh();
    const run = await plan(content, {}, person('Alder, Birch'));
    expect([run.status, readdirSync(content)]).toEqual([1, ['shop.yaml']]);
    expect(run.said).toMatch(/No plan\.\nNothing was written\.\n$/);
  });
});

/** Carries about 230 yards, invented, two heads alike; without a column that names the head. */
const shots = (count: number): string =>
  [
    'Shot,Carry (yd)',
    ...Array.from({ length: count }, (_, i) => `${i + 1},${230 + ((i * 37) % 23) - 11}`),
    '',
  ].join('\n');

async function planned(): Promise<string> {
  const content = fresh();
  await plan(content, { ...three, contender: ['Alder', 'Birch'], shots: '12', question: 'Does it?' });
  return content;
}

function hit(content: string, csv: string): void {
  const file = 'reports/three-heads/report.md';
  writeFileSync(join(content, 'reports/three-heads/shots.csv'), csv);
  const text = read(content, file).replace(/^session:$/m, 'session: shots.csv');
  writeFileSync(join(content, file), answered(file, text).replace('2026-05-04', '2026-05-02'));
}

function check(content: string) {
  const { terminal, said } = listen();
  const status = checkContent({ contentDir: content, only: [], json: true, terminal });
  const read: {
    readonly problems: readonly { kind: string; file: string; line: number | null; found: string | null }[];
  } = JSON.parse(said());
  return { status, problems: read.problems };
}

describe('after hitting', () => {
  test('a plan does not keep other reports from being built, and its order sheet is no session', async () => {
    const content = await planned();
    const site = loadSite(content);
    expect(site.blocked.map(({ slug, unfinished }) => [slug, unfinished])).toEqual([['three-heads', true]]);
    expect([...new Set(site.problems.map(({ kind }) => kind))].sort()).toEqual([
      'interests-missing',
      'key-missing',
    ]);
  });

  test('the order sheet tells what was hit, and the plan stands as made in advance', async () => {
    const content = await planned();
    hit(content, shots(24));
    const { status, problems } = check(content);
    expect(problems.map(({ kind }) => kind).filter((kind) => !/^carry-/.test(kind))).toEqual([
      'club-from-order-sheet',
    ]);
    expect(status).toBe(0);
    const [report] = loadSite(content).reports;
    expect(report?.session.shots.map(({ contender }) => contender)).toEqual(
      entries(content, 'three-heads').map(({ contender }) => contender?.toLowerCase()),
    );
    expect(report?.source.files.map(({ name }) => name)).toEqual(['shots.csv', 'order.csv']);
    expect(report?.findings.design.plan).toBe('on-record');
    // The seed of the plan gives this very order, so it is known to be random.
    expect(report?.findings.design.order).toBe('planned-random');
    const { terminal, said } = listen();
    recordLedger({ contentDir: content, today: '2026-05-03', terminal });
    expect(said()).toBe('Nothing new to record.\n');
  });

  test('a shot too few is one problem, at the shot that is missing', async () => {
    const content = await planned();
    const csv = shots(24)
      .split('\n')
      .filter((line) => !line.startsWith('7,'))
      .join('\n');
    hit(content, csv);
    const { status, problems } = check(content);
    expect(status).toBe(1);
    expect(problems.map(({ kind, file, line, found }) => ({ kind, file, line, found }))).toEqual([
      {
        kind: 'order-sheet-mismatch',
        file: 'reports/three-heads/order.csv',
        line: 8,
        found: '23 shots in the session; the session lacks 7',
      },
    ]);
  });

  test('an order sheet that is not there is a problem at the line that names it', async () => {
    const content = await planned();
    hit(content, shots(24));
    const file = join(content, 'reports/three-heads/report.md');
    writeFileSync(
      file,
      readFileSync(file, 'utf8').replace('order_sheet: order.csv', 'order_sheet: gone.csv'),
    );
    const found = check(content).problems.find(({ kind }) => kind === 'order-sheet-missing');
    expect(found?.file).toBe('reports/three-heads/report.md');
    expect(found?.line).toBeGreaterThan(1);
  });

  test('the next plan learns the spread from it', async () => {
    const content = await planned();
    hit(content, shots(24));
    const { said } = await plan(content, { ...three, slug: 'next', title: 'A driver' });
    expect(said).toMatch(/standard deviation 12 yd, typical/);
    const file = join(content, 'reports/three-heads/report.md');
    writeFileSync(file, readFileSync(file, 'utf8').replace(/^title: .*$/m, 'title: Two driver heads'));
    const own = await plan(content, { ...three, slug: 'after' });
    expect(own.said).toMatch(
      /standard deviation [\d.]+ yd, from your own sessions with a driver: 24 shots of hitters who are staff fitter in one report\./,
    );
    expect(own.said).toMatch(/shots with each \(\d+ to \d+, as the spread itself is not known exactly\)/);
    const typed = await plan(content, { ...three, slug: 'typed', spread: '9 yd' });
    expect(typed.said).toMatch(
      /standard deviation 9 yd, as you typed it\.\nYour own sessions show [\d.]+ yd\./,
    );
  });
});
