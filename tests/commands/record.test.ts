import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { recordLedger } from '../../src/commands/recordLedger.ts';
import { readLedger, type Ledger } from '../../src/intake/ledger.ts';
import { changedWithoutCorrection } from '../../src/site/ledger.ts';
import { ledgerLine } from '../../src/prose/english/ledger.ts';
import { movedAnswers } from '../../src/prose/movedAnswers.ts';
import { checkedSite } from '../../src/site/checkedSite.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { around, csvOf, reportText, threeHeads } from '../findings/reportOf.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'record-'));
  writeFileSync(join(folder, 'shop.yaml'), 'name: Example Shop\n');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const plan = '{date: 2026-04-01, stopping_rule: twelve each}';

function write(
  slug: string,
  front: Readonly<Record<string, string | null>>,
  csv: string | null = csvOf(threeHeads ?? {}),
): void {
  const own = join(folder, 'reports', slug);
  mkdirSync(own, { recursive: true });
  writeFileSync(join(own, 'report.md'), reportText({ front: { published: '2026-04-12', ...front } }));
  if (csv !== null) writeFileSync(join(own, 'shots.csv'), csv);
}

function record(
  today: string,
  drop?: { slug: string; reason: string },
  time?: string,
): { done: boolean; said: string; wrong: string } {
  let said = '';
  let wrong = '';
  const done = recordLedger({
    contentDir: folder,
    today,
    terminal: {
      write: (text) => void (said += text),
      writeError: (text) => void (wrong += text),
      colour: false,
      live: false,
      width: 100,
    },
    ...(drop === undefined ? {} : { drop }),
    ...(time === undefined ? {} : { time }),
  });
  return { done, said, wrong };
}

function ledger(): Ledger {
  const read = readLedger('ledger.json', readFileSync(join(folder, 'ledger.json'), 'utf8')).ledger;
  if (read === null) throw new Error('the ledger cannot be read');
  return read;
}

const kinds = (): string[] => loadSite(folder).problems.map(({ kind }) => kind);

describe('putting plans and reports on record', () => {
  test('a plan before its shots, then the report; only then was it planned in advance', () => {
    write('heads', { plan, status: 'draft' }, null);
    expect(record('2026-04-05')).toEqual({ done: true, said: 'heads: plan recorded\n', wrong: '' });
    write('heads', { plan });
    expect(loadSite(folder).reports[0]?.findings.design.plan).toBe('on-record');
    expect(record('2026-04-12').said).toBe('heads: published report recorded\n');
    expect(record('2026-04-13').said).toBe('Nothing new to record.\n');
    expect(ledger().plans.map(({ slug, date }) => [slug, date])).toEqual([['heads', '2026-04-05']]);
    expect(ledger().reports[0]?.records.map(({ date }) => date)).toEqual(['2026-04-12']);
  });

  test('what is put on record after the session was no plan', () => {
    write('heads', { plan });
    expect(record('2026-04-12').said).toBe('heads: published report recorded\n');
    expect(ledger().plans).toEqual([]);
    expect(loadSite(folder).reports[0]?.findings.design.plan).toBe('stated');
  });

  test.each([
    ['10:40', '2026-04-11T10:41:07', 'on-record-that-day'],
    ['10:40', '10:41', 'on-record-that-day'],
    ['10:41', '2026-04-11T10:41:07', 'stated'],
    ['10:40', '2026-04-11T10:41:07Z', 'stated'],
    ['10:40', '2026-04-12T10:41:07', 'stated'],
    [null, '2026-04-11T10:41:07', 'stated'],
    ['10:40', null, 'stated'],
  ])('a plan put on record that day at %s, the first shot at %s: %s', (recorded, first, standing) => {
    const [head = '', ...rows] = csvOf(threeHeads ?? {})
      .trimEnd()
      .split('\n');
    const timed = [
      `${head},Time`,
      ...rows.map(
        (row, at) => `${row},${first === null ? '' : at === 0 ? first : first.replace('10:41', '11:02')}`,
      ),
    ];
    write('heads', { date: '2026-04-11', plan }, first === null ? null : `${timed.join('\n')}\n`);
    if (first === null) write('heads', { date: '2026-04-11', plan });
    record('2026-04-11', undefined, recorded ?? undefined);
    expect(ledger().plans.map(({ date, time }) => [date, time ?? null])).toEqual([['2026-04-11', recorded]]);
    const [report] = loadSite(folder).reports;
    expect(report?.findings.design).toMatchObject({
      plan: standing,
      plannedInAdvance: standing === 'on-record-that-day',
    });
  });

  test('a plan changed after it was put on record is another plan', () => {
    write('heads', { plan }, null);
    record('2026-04-05');
    write(
      'heads',
      { plan, primary: '[carry, ball_speed]' },
      csvOf({ ...threeHeads, 'Ball Speed (mph)': threeHeads?.['Carry (yd)'] ?? {} }).replace(
        /,2(\d\d\.\d)$/gm,
        ',1$1',
      ),
    );
    expect(loadSite(folder).reports[0]?.findings.design.plan).toBe('changed');
  });

  test('drafts and withdrawn reports are not published', () => {
    write('one', { status: 'draft' });
    write('two', { status: 'withdrawn', withdrawn: '{date: 2026-04-20, reason: wrong ball}' });
    expect(record('2026-04-21').said).toBe('Nothing new to record.\n');
  });

  test('two records of the same content are the same bytes', () => {
    write('heads', {});
    record('2026-04-12');
    const bytes = readFileSync(join(folder, 'ledger.json'), 'utf8');
    record('2026-04-13');
    expect(readFileSync(join(folder, 'ledger.json'), 'utf8')).toBe(bytes);
  });

  test('a build only reads: loading the site leaves the folder as it was', () => {
    write('heads', { plan });
    loadSite(folder);
    expect(existsSync(join(folder, 'ledger.json'))).toBe(false);
  });
});

describe('a published report that was changed', () => {
  const other = csvOf({ 'Carry (yd)': { ...threeHeads?.['Carry (yd)'], cedar: around(236) } });

  test('other shots without a correction: a warning, and no record that would make it vanish', () => {
    write('heads', {});
    record('2026-04-12');
    write('heads', {}, other);
    const [problem] = loadSite(folder).problems;
    expect([problem?.kind, problem?.severity, problem?.found]).toEqual([
      'changed-without-correction',
      'warning',
      'changed since: shots.csv',
    ]);
    expect(problem?.forReader).toBe(
      'Since 2026-04-12 this report was changed without a correction: shots.csv.',
    );
    const again = record('2026-04-13');
    expect(again.done).toBe(false);
    expect(again.wrong).toContain(
      'Add an entry to "corrections" with date, what, was and now, then run "npm run',
    );
    expect(again.wrong).toContain('Not recorded: 1 thing stands in the way.');
    expect(ledger().reports[0]?.records).toHaveLength(1);
  });

  test('with a correction it goes on record, and the answers that moved can be told', () => {
    write('heads', {});
    record('2026-04-12');
    const corrections = '[{date: 2026-04-14, what: shots of Cedar, was: of another day, now: of this day}]';
    write('heads', { corrections }, other);
    // Until it is on record: the built site still has what stood before.
    expect(kinds()).toEqual(['version-not-kept']);
    expect(record('2026-04-14').said).toBe('heads: correction recorded\n');
    const { telling } = loadSite(folder).reports[0] ?? {};
    if (telling === undefined) throw new Error('no report');
    const records = ledger().reports[0]?.records ?? [];
    expect(movedAnswers(records, telling)).toContainEqual({
      since: '2026-04-12',
      then: 'Alder carried farther than Cedar: about 12 yards, likely 7 to 17.',
      now: 'Alder and Cedar were within about 5 yards of each other in carry; we cannot say which carried farther.',
    });
    // The same correction does not cover the next change.
    write('heads', { corrections, title: 'Another title' }, other);
    expect(kinds()).toEqual(['changed-without-correction']);
  });

  test('an answer of the front matter, or a default of the shop behind it', () => {
    write('heads', {});
    record('2026-04-12');
    write('heads', { conditions: '{place: indoors}' });
    expect(loadSite(folder).problems[0]?.found).toBe('changed since: front matter');
    write('heads', {});
    writeFileSync(join(folder, 'shop.yaml'), 'name: Example Shop\ndefaults: {place: indoors}\n');
    expect(loadSite(folder).problems[0]?.found).toBe('changed since: front matter');
  });

  test('a reply, or the order of the answers, is no change', () => {
    write('heads', {});
    record('2026-04-12');
    write('heads', {
      title: null,
      replies: '[{from: a supplier, date: 2026-04-20, text: We disagree.}]',
      status: null,
    });
    const path = join(folder, 'reports/heads/report.md');
    const text = readFileSync(path, 'utf8').replace(
      /\n---\n/,
      '\nstatus: published\ntitle: Three driver heads, one shaft\n---\n',
    );
    writeFileSync(path, text);
    expect(kinds()).toEqual([]);
  });
});

describe('answers as typed are what a report is held to', () => {
  const path = (): string => join(folder, 'reports/heads/report.md');
  const typedAnew = (change: (text: string) => string): string[] => {
    writeFileSync(path(), change(readFileSync(path(), 'utf8')));
    return loadSite(folder).problems.map(({ kind, found }) => `${kind}: ${found ?? ''}`);
  };

  test('comments, spacing, quotes and keys without an answer are no change', () => {
    write('heads', {});
    record('2026-04-12');
    expect(
      typedAnew((text) =>
        text
          .replace('primary: carry', 'primary:   "carry" # as planned\nsummary:')
          .replace('consent: yes}', 'consent: "yes",   expectation: not recorded}'),
      ),
    ).toEqual([]);
    expect(typedAnew((text) => text.replace('summary:', 'summary: Told anew.'))).toEqual([
      'changed-without-correction: changed since: front matter',
    ]);
  });

  test('a build sheet that the report names is part of it; the shop’s units are not', () => {
    mkdirSync(join(folder, 'contenders'));
    const sheet = (id: string, loft: string): void =>
      writeFileSync(
        join(folder, `contenders/${id}.yaml`),
        `label: ${id} head\nsupplied_by: our stock\nsold_here: new\nbuild: {loft: ${loft}}\n`,
      );
    for (const id of ['alder', 'birch', 'cedar', 'dogwood']) sheet(id, '9°');
    write('heads', { contenders: '[alder, birch, cedar]' });
    record('2026-04-12');
    sheet('dogwood', '10°');
    writeFileSync(join(folder, 'shop.yaml'), 'name: Example Shop\ndefaults: {units: metres}\n');
    expect(kinds()).not.toContain('changed-without-correction');
    sheet('birch', '10°');
    expect(kinds()).toContain('changed-without-correction');
  });

  test('a key that a later version of the code adds accuses nobody', () => {
    write('heads', {});
    record('2026-04-12');
    const [report] = loadSite(folder).reports;
    if (report === undefined) throw new Error('no report');
    const { source } = report;
    const later = { ...source, front: { ...source.front, weather: null, hitters: [] } };
    expect(changedWithoutCorrection(later, ledger())).toEqual([]);
    expect(changedWithoutCorrection({ ...later, typed: { report: 'other answers' } }, ledger())).toHaveLength(
      1,
    );
  });
});

describe('a ledger of version 1', () => {
  const old = 'tests/fixtures/ledgers/version-1';
  beforeEach(() => cpSync(old, folder, { recursive: true }));

  test('accuses nobody, and keeps its plan on record', () => {
    const { reports, problems } = loadSite(folder);
    expect(problems).toEqual([]);
    expect(reports[0]?.findings.design.plan).toBe('on-record');
    expect(ledger().version).toBe(3);
    expect(ledger().reports[0]?.records.map(({ date, typed }) => [date, typed])).toEqual([
      ['2026-04-12', null],
    ]);
  });

  test('still knows its session files', () => {
    const shots = join(folder, 'reports/heads/shots.csv');
    writeFileSync(shots, readFileSync(shots, 'utf8').replace('230.0', '231.0'));
    expect(loadSite(folder).problems.map(({ found }) => found)).toEqual(['changed since: shots.csv']);
  });

  test('is taken over once, as typed; from then on every answer counts', () => {
    expect(record('2026-12-01').said).toBe('heads: recorded again, as typed\n');
    expect(record('2026-12-02').said).toBe('Nothing new to record.\n');
    expect(ledger().reports[0]?.records.map(({ date, typed }) => [date, typed === null])).toEqual([
      ['2026-04-12', true],
      ['2026-12-01', false],
    ]);
    const path = join(folder, 'reports/heads/report.md');
    writeFileSync(path, readFileSync(path, 'utf8').replace('paid_by: the shop', 'paid_by: a maker'));
    expect(loadSite(folder).problems.map(({ found }) => found)).toEqual(['changed since: front matter']);
  });
});

describe('the day of publication', () => {
  const path = (): string => join(folder, 'reports/heads/report.md');

  test('is written into a report that has none, and nothing else is', () => {
    write('heads', { published: null });
    const before = readFileSync(path(), 'utf8');
    expect(record('2026-04-13').said).toBe(
      'heads: published report recorded\nheads: "published: 2026-04-13" written into report.md\n',
    );
    const after = readFileSync(path(), 'utf8');
    expect(after.split('\n').filter((line) => line !== 'published: 2026-04-13')).toEqual(before.split('\n'));
    expect(loadSite(folder).reports[0]?.source.front.published).toBe('2026-04-13');
    expect(record('2026-04-14').said).toBe('Nothing new to record.\n');
  });

  test('is asked for where the file cannot be written as it was', () => {
    write('heads', { published: null });
    writeFileSync(
      path(),
      Buffer.from(readFileSync(path(), 'utf8').replace('title: ', 'title: Caf\u00e9 '), 'latin1'),
    );
    const before = readFileSync(path());
    expect(record('2026-04-13').said).toBe(
      'heads: published report recorded\nheads: add "published: 2026-04-13" to report.md, the day of publication\n',
    );
    expect(readFileSync(path()).equals(before)).toBe(true);
  });

  test.each([
    ['2026-04-12', '2026-04-10', '2026-05-01', ['published-before-hit']],
    ['2062-04-01', null, '2026-05-01', ['day-ahead']],
    ['2026-04-10', '2062-04-12', '2026-05-01', ['day-ahead']],
    ['2026-04-10', '2026-04-12', '2026-05-01', []],
  ])('hit %s, published %s, looked at %s: %j', (date, published, today, expected) => {
    write('heads', { date, published });
    const found = loadSite(folder, [], null, today).problems;
    expect(found.map(({ kind, severity }) => [kind, severity])).toEqual(
      expected.map((kind) => [kind, 'warning']),
    );
    expect(checkedSite(folder, [], today).problems).toEqual(found);
    expect(loadSite(folder).problems.filter(({ kind }) => kind === 'day-ahead')).toEqual([]);
  });
});

describe('the narrative of a published report', () => {
  const mend = (from: string, to: string): void => {
    const path = join(folder, 'reports/heads/report.md');
    const text = readFileSync(path, 'utf8');
    expect(text).toContain(from);
    writeFileSync(path, text.replace(from, to));
  };
  const addTo = (words: string): void => {
    const path = join(folder, 'reports/heads/report.md');
    writeFileSync(path, `${readFileSync(path, 'utf8')}\n${words}\n`);
  };

  test('is noticed when it changes, until it is corrected or recorded again', () => {
    write('heads', {});
    addTo('It rained for ten minutes.');
    record('2026-04-12');
    expect(kinds()).toEqual([]);
    mend('for ten minutes', 'for an hour');
    expect(loadSite(folder).problems).toMatchObject([
      {
        kind: 'narrative-changed',
        severity: 'warning',
        file: 'reports/heads/report.md',
        expected: 'the narrative that was put on record on 2026-04-12',
        cure: 'If it says something else now, add an entry to "corrections" with date, what, was and now. Then, or if only the wording was mended, run "npm run record".',
        forReader: null,
      },
    ]);
    expect(record('2026-04-15').said).toBe('heads: narrative recorded again\n');
    expect(kinds()).toEqual([]);
  });

  test('may be spaced in another way', () => {
    write('heads', {});
    addTo('It rained for ten minutes.');
    record('2026-04-12');
    mend('It rained for ten minutes.', 'It rained\nfor  ten minutes.\n\n');
    expect(kinds()).toEqual([]);
  });

  test('of a record of before is not known', () => {
    write('heads', {});
    record('2026-04-12');
    const file = join(folder, 'ledger.json');
    const old = JSON.parse(readFileSync(file, 'utf8'), (key, value: unknown) =>
      key === 'narrative' ? undefined : key === 'version' ? 2 : value,
    );
    writeFileSync(file, JSON.stringify(old));
    addTo('New.');
    expect(kinds()).toEqual([]);
    expect(record('2026-04-15').said).toBe('heads: narrative recorded again\n');
  });
});

describe('a published report whose folder is gone', () => {
  const published = (): void => {
    write('heads', {});
    write('irons', {});
    record('2026-04-12');
  };

  test('is an error that says what to do; a look at one report alone does not ask', () => {
    published();
    rmSync(join(folder, 'reports/irons'), { recursive: true });
    const problems = loadSite(folder).problems;
    expect(problems).toMatchObject([
      {
        kind: 'published-report-gone',
        severity: 'error',
        file: 'ledger.json',
        expected: 'the folder reports/irons, which was published and put on record on 2026-04-12',
        found: 'no such folder',
        cure:
          'If it was renamed, add "aliases: [irons]" to the report that it is now. If it should no longer stand, put the ' +
          'folder back with "status: withdrawn", the day and the reason: a dated notice stays at its address. If it is to ' +
          'be gone for good: npm run record -- --drop irons --reason "why"',
      },
    ]);
    expect(checkedSite(folder).problems).toEqual(problems);
    expect(checkedSite(folder, ['heads']).problems).toEqual([]);
  });

  test('may be renamed with an alias', () => {
    published();
    rmSync(join(folder, 'reports/irons'), { recursive: true });
    write('long-irons', { aliases: '[irons]' });
    // The two have the same shots, which is told apart from that.
    expect(kinds().filter((kind) => kind !== 'session-twice')).toEqual([]);
  });

  test('may be given up with a reason, but not while its folder is there', () => {
    published();
    expect(record('2026-04-20', { slug: 'irons', reason: 'asked to' }).done).toBe(false);
    rmSync(join(folder, 'reports/irons'), { recursive: true });
    expect(record('2026-04-20', { slug: 'irons', reason: 'asked to' }).said).toBe(
      'irons: dropped, asked to\n',
    );
    expect(kinds()).toEqual([]);
  });
});

test.each([
  ['gone', 'gone, which is no report', 'Write one of: irons.'],
  ['heads', 'heads, which is this report', 'Write the name of the newer one: irons.'],
  [
    'irons',
    'irons, which is a draft',
    'Publish irons first, or set this one to status: withdrawn with the day and the reason.',
  ],
])('a report replaced by %s, which does not stand there, is refused', (next, found, cure) => {
  write('heads', { status: 'superseded', superseded_by: next });
  write('irons', { status: 'draft' });
  const problems = loadSite(folder).problems;
  expect(problems).toMatchObject([
    {
      kind: 'replacement-missing',
      severity: 'error',
      file: 'reports/heads/report.md',
      expected: 'the name of a published report that replaces this one',
      found,
      cure,
    },
  ]);
  expect(checkedSite(folder).problems).toEqual(problems);
  write('irons', {});
  if (next === 'irons') expect(kinds()).toEqual([]);
});

describe('a planned test whose folder is gone', () => {
  const planned = (): void => {
    write('irons', {});
    write('heads', { plan, status: 'draft' });
    record('2026-04-05');
    rmSync(join(folder, 'reports/heads'), { recursive: true });
  };

  test('is told with what to do, and the report that has its plan is named', () => {
    planned();
    const told = (where: string) => ({
      kind: 'planned-test-gone',
      severity: 'warning',
      file: 'ledger.json',
      expected: 'the folder reports/heads, whose plan was put on record on 2026-04-05',
      found: 'no such folder',
      cure:
        `If it was renamed, add "aliases: [heads]" to ${where}: it keeps its record. If the test was given up, say so, ` +
        'and it is counted as dropped: npm run record -- --drop heads --reason "why"',
    });
    expect(loadSite(folder).problems).toMatchObject([told('the report that it is now')]);
    write('driver-heads', { plan });
    const { problems } = checkedSite(folder);
    expect(problems.filter(({ kind }) => kind === 'planned-test-gone')).toMatchObject([
      told('reports/driver-heads/report.md'),
    ]);
  });

  test('keeps its record under another name', () => {
    planned();
    write('driver-heads', { plan, aliases: '[heads]' });
    expect(kinds()).not.toContain('planned-test-gone');
    const renamed = loadSite(folder).reports.find(({ source }) => source.slug === 'driver-heads');
    expect(renamed?.findings.design.plan).toBe('on-record');
    record('2026-04-12');
    expect(ledger().plans.map(({ slug, date }) => [slug, date])).toEqual([['driver-heads', '2026-04-05']]);
  });

  test('is not missed once it was dropped', () => {
    planned();
    expect(kinds()).toContain('planned-test-gone');
    expect(record('2026-04-06', { slug: 'heads', reason: 'the golfer fell ill' }).done).toBe(true);
    expect(kinds()).not.toContain('planned-test-gone');
  });
});

describe('a planned test that is given up', () => {
  test('with its reason, and told on every page', () => {
    write('heads', { plan, status: 'draft' }, null);
    write('shafts', { plan, status: 'draft' }, null);
    record('2026-04-05');
    expect(record('2026-04-06', { slug: 'shafts', reason: 'the golfer fell ill' })).toEqual({
      done: true,
      said: 'shafts: dropped, the golfer fell ill\n',
      wrong: '',
    });
    expect(ledgerLine(ledger())).toBe(
      'We planned two tests: we dropped one (the golfer fell ill) and have one open.',
    );
  });

  test('only an open plan of the ledger can be dropped, once', () => {
    write('heads', { plan, status: 'draft' }, null);
    record('2026-04-05');
    expect(record('2026-04-06', { slug: 'irons', reason: 'no time' })).toEqual({
      done: false,
      said: '',
      wrong:
        'irons is neither an open plan of the ledger nor a published report whose folder is gone, so it cannot be dropped.\n',
    });
    record('2026-04-06', { slug: 'heads', reason: 'no time' });
    expect(record('2026-04-07', { slug: 'heads', reason: 'no time' }).done).toBe(false);
  });
});

test('a ledger that cannot be read is left alone', () => {
  write('heads', {});
  writeFileSync(join(folder, 'ledger.json'), '{"version": 1}');
  const { done, wrong } = record('2026-04-12');
  expect(done).toBe(false);
  expect(wrong).toContain('Nobody edits this file by hand: take back its last good version.');
  expect(readFileSync(join(folder, 'ledger.json'), 'utf8')).toBe('{"version": 1}');
  expect(kinds()).toContain('ledger-invalid');
});
