import { describe, expect, test } from 'vitest';
import {
  emptyLedger,
  ledgerCount,
  readLedger,
  type Ledger,
  type ReportRecord,
} from '../../src/intake/ledger.ts';
import { ledgerLine } from '../../src/prose/english/ledger.ts';
import { answersOf, movedAnswers } from '../../src/prose/movedAnswers.ts';
import { plannedInWords } from '../../src/prose/plannedInWords.ts';
import { around, reportOf, threeHeads } from '../findings/reportOf.ts';

const hash = 'a'.repeat(64);
const plans = (count: number): Ledger['plans'] =>
  Array.from({ length: count }, (_, index) => ({ slug: `test-${index + 1}`, date: '2026-01-01', hash }));
const record: ReportRecord = {
  date: '2026-02-01',
  typed: hash,
  narrative: null,
  data: [],
  corrections: 0,
  answers: [],
};
const reports = (...slugs: readonly string[]): Ledger['reports'] =>
  slugs.map((slug) => ({ slug, records: [record] }));

describe('what became of the tests that were planned', () => {
  const ledger: Ledger = {
    version: 3,
    plans: [...plans(14), { slug: 'test-1', date: '2026-01-05', hash: 'b'.repeat(64) }],
    dropped: [
      { slug: 'test-10', date: '2026-03-01', reason: 'the golfer fell ill.' },
      { slug: 'test-11', date: '2026-03-02', reason: 'the monitor broke' },
    ],
    reports: reports(...Array.from({ length: 9 }, (_, index) => `test-${index + 1}`)),
  };

  test('a plan changed before the session counts once', () => {
    expect(ledgerCount(ledger)).toMatchObject({ planned: 14, published: 9, open: 3, unplanned: 0 });
    expect(ledgerLine(ledger)).toBe(
      'We planned 14 tests: we published nine, dropped two (the golfer fell ill; the monitor broke) and have three open.',
    );
  });

  test('reports that were published without a plan are counted apart', () => {
    const more = { ...ledger, reports: [...ledger.reports, ...reports('sudden', 'quick')] };
    expect(ledgerLine(more)).toBe(
      'We planned 14 tests: we published nine, dropped two (the golfer fell ill; the monitor broke) and have three open. Two further reports have no plan on record.',
    );
    const one = { ...emptyLedger, reports: reports('sudden') };
    expect(ledgerLine(one)).toBe('No planned test is on record. One further report has no plan on record.');
  });

  test('no ledger is said, not hidden', () => {
    expect(ledgerLine(null)).toBe(
      'We keep no register of planned tests, so we cannot say how many we left unpublished.',
    );
  });
});

test('when a plan was written', () => {
  const day = '2026-04-10';
  expect(plannedInWords('on-record', day)).toBe('yes: the plan was on record before the session');
  expect(plannedInWords('on-record-that-day', day)).toBe(
    'yes: the plan was on record on the day, before the first shot',
  );
  expect(plannedInWords('stated', day)).toBe(
    'stated, not verified: the shop says 10 April 2026; no dated record exists',
  );
  expect(plannedInWords('changed', day)).toBe('no: the plan on record is another one');
  expect(plannedInWords('afterwards', day)).toBe(
    'no: the plan is dated 10 April 2026, not before the session',
  );
  expect(plannedInWords('not-said', undefined)).toBeNull();
});

describe('answers then and now', () => {
  const before = reportOf({});
  const then: ReportRecord = { ...record, answers: answersOf(before.telling) };

  test('what is put on record of an answer', () => {
    expect(then.answers[1]).toEqual({
      metric: 'carry',
      a: 'alder',
      b: 'cedar',
      verdict: 'clear',
      credit: 'contender',
      ahead: 'alder',
      says: 'Alder carried farther than Cedar: about 12 yards, likely 7 to 17.',
    });
  });

  test('where nobody is ahead for sure nobody is on record as ahead', () => {
    const close = reportOf({
      shots: { 'Carry (yd)': { alder: around(231), birch: around(229), cedar: around(225) } },
    });
    expect(answersOf(close.telling)[0]).toMatchObject({ verdict: 'too-close', ahead: null });
  });

  test('nothing moved', () => {
    expect(movedAnswers([then], before.telling)).toEqual([]);
  });

  test('a new short name is no move', () => {
    const renamed = { ...before.telling, the: (id: string) => id.toUpperCase() };
    expect(answersOf(renamed)[1]?.says).toContain('ALDER carried farther than CEDAR');
    expect(movedAnswers([then], renamed)).toEqual([]);
  });

  test('what an older record says is quoted as it was said, and moved by its ids alone', () => {
    const old: ReportRecord = {
      ...then,
      answers: then.answers.map((own) => ({ ...own, says: `${own.a} clearly farther than ${own.b}.` })),
    };
    expect(movedAnswers([old], before.telling)).toEqual([]);
    const turned = {
      ...old,
      answers: old.answers.map((own) => ({ ...own, verdict: 'too-close', ahead: null })),
    };
    expect(movedAnswers([turned], before.telling).map(({ then: said }) => said)).toEqual([
      'alder clearly farther than birch.',
      'alder clearly farther than cedar.',
      'birch clearly farther than cedar.',
    ]);
  });

  test('an answer that moved, from record to record and up to now, newest first', () => {
    const turned = reportOf({
      shots: { 'Carry (yd)': { ...threeHeads?.['Carry (yd)'], cedar: around(250) } },
    });
    const middle: ReportRecord = { ...record, date: '2026-03-01', answers: answersOf(turned.telling) };
    expect(movedAnswers([then], turned.telling)).toContainEqual({
      since: '2026-02-01',
      then: 'Alder carried farther than Cedar: about 12 yards, likely 7 to 17.',
      now: 'Cedar carried farther than Alder: about 13 yards, likely 8 to 18.',
    });
    const back = movedAnswers([then, middle], before.telling);
    expect(back.filter(({ then: said }) => /Alder.*Cedar|Cedar.*Alder/.test(said))).toEqual([
      {
        since: '2026-03-01',
        then: 'Cedar carried farther than Alder: about 13 yards, likely 8 to 18.',
        now: 'Alder carried farther than Cedar: about 12 yards, likely 7 to 17.',
      },
      {
        since: '2026-02-01',
        then: 'Alder carried farther than Cedar: about 12 yards, likely 7 to 17.',
        now: 'Cedar carried farther than Alder: about 13 yards, likely 8 to 18.',
      },
    ]);
  });

  test('an answer to a question that is no longer asked', () => {
    const gone: ReportRecord = { ...then, answers: then.answers.map((own) => ({ ...own, metric: 'total' })) };
    expect(movedAnswers([gone], before.telling).map(({ now }) => now)).toEqual([null, null, null]);
  });
});

describe('a ledger that is not what "record" writes', () => {
  const found = (json: string): string | null => {
    const { ledger, problems } = readLedger('ledger.json', json);
    expect([ledger, problems[0]?.kind]).toEqual([null, 'ledger-invalid']);
    return problems[0]?.found ?? null;
  };

  test.each([
    ['{', 'text that is not JSON'],
    ['[]', 'something else'],
    [
      '{"version": 1, "plans": [{"slug": "a", "date": "2026-02-30", "hash": ""}], "dropped": [], "reports": []}',
      'something else at plans.0.date',
    ],
    ['{"version": 2, "plans": [], "dropped": [], "reports": [], "more": 1}', 'something else'],
    ['{"version": 4, "plans": []}', 'version 4'],
    [
      `{"version": 2, "plans": [], "dropped": [], "reports": [{"slug": "a", "records": [{"date": "2026-02-01", "front": "${hash}", "data": [], "corrections": 0, "answers": []}]}]}`,
      'something else at reports.0.records.0.typed',
    ],
  ])('%s', (json, words) => {
    expect(found(json)).toBe(words);
  });

  test('what "record" writes is read as it was', () => {
    const whole: Ledger = { ...emptyLedger, plans: plans(1), reports: reports('a') };
    expect(readLedger('ledger.json', JSON.stringify(whole)).ledger).toEqual(whole);
  });
});
