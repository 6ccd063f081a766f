import { describe, expect, test } from 'vitest';
import { contenderRecords, contendersWithPages, idsWithPages } from '../../src/kit/contenderRecords.ts';
import { lastChanges } from '../../src/kit/lastChanges.ts';
import { payment } from '../../src/intake/authored/payment.ts';
import { interestInBrief, interestInShort, interestsInShort } from '../../src/kit/interestInShort.ts';
import { dateInWords } from '../../src/prose/date.ts';
import type { Report } from '../../src/kit/report.ts';
import { counts, pairRecords, pairSlug } from '../../src/kit/pairRecords.ts';
import { meetingsFigure } from '../../src/kit/meetingsFigure.ts';
import { meetingsTable, pooledSentences } from '../../src/kit/pairWords.ts';
import { pairTitle } from '../../src/prose/english/kit/pooled.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { manyReports } from './manyReports.ts';

const { reports, problems } = loadSite(manyReports());
const records = pairRecords(reports);
const record = records.get('alder-and-birch');
const [same, other] = record?.groups ?? [];

test('the invented reports have no error', () => {
  expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
  expect([...records.keys()]).toEqual(['alder-and-birch']);
  expect(pairSlug('birch', 'alder')).toBe('alder-and-birch');
  // Two pairs of odd ids never share an address.
  expect(pairSlug('x-and-y', 'z')).not.toBe(pairSlug('x', 'y-and-z'));
});

describe('combined', () => {
  test('are reports of one build only: another shaft stands in a group of its own', () => {
    expect(same?.meetings.map(({ report }) => report.source.slug)).toEqual([
      'in-blocks',
      'fourth',
      'third',
      'second',
      'first',
    ]);
    expect(other?.meetings.map(({ report }) => report.source.slug)).toEqual(['other-shaft']);
    expect(other?.pooled).toEqual({ kind: 'none', why: 'too-few', parties: 1 });
  });

  test('are those with credit to the heads, none that was withdrawn', () => {
    expect(same?.meetings.filter(counts).map(({ report }) => report.source.slug)).toEqual([
      'fourth',
      'third',
      'second',
      'first',
    ]);
  });

  test('is the plain mean of their gaps with t(3) (by the formula, judging of several reports)', () => {
    const gaps = (same?.meetings ?? []).filter(counts).map(({ pair }) => pair.estimate ?? NaN);
    const mean = gaps.reduce((sum, gap) => sum + gap, 0) / 4;
    const sd = Math.sqrt(gaps.reduce((sum, gap) => sum + (gap - mean) ** 2, 0) / 3);
    // qt(0.975, 3) of R.
    const half = (3.182446305284263 * sd) / 2;
    if (same?.pooled.kind !== 'golfers') throw new Error('not pooled');
    expect(Math.abs(same.pooled.estimate - mean)).toBeLessThan(1e-8);
    expect(Math.abs(same.pooled.ci[0] - (mean - half))).toBeLessThan(1e-8);
    expect(Math.abs(same.pooled.ci[1] - (mean + half))).toBeLessThan(1e-8);
    expect(same.pooled.newGolfer).toBeNull();
    // a minus b with a = alder, though the reports list birch first.
    expect(mean).toBeGreaterThan(0);
  });

  test('is said for these golfers only, with and without the first report, and why one does not count', () => {
    if (same === undefined) throw new Error('no group');
    const [told = '', others = '', without = ''] = pooledSentences(same);
    expect(told).toMatch(
      /^These four golfers combined, each counting alike: Alder carried farther than Birch/,
    );
    expect(others).toBe('Other golfers cannot be judged from so few.');
    expect(without).toMatch(/^Without the first test: /);
    expect(meetingsTable(same, 'Carry').rows[0]?.at(-1)).toBe('no, its order leaves the cause open');
    expect(meetingsTable(same, 'Carry').rows.map((row) => row[1])).toEqual(
      Array(5).fill('One golfer, 10 shots with each head'),
    );
  });

  test('of a test that stands alone nothing empty is said', () => {
    if (same === undefined || other === undefined) throw new Error('no group');
    expect(pooledSentences(other)).toEqual([]);
    expect(meetingsTable(other, 'Carry').head).not.toContain('Combined');
    expect(meetingsTable(same, 'Carry').head.at(-1)).toBe('Combined');
    expect(
      meetingsTable(same, 'Carry')
        .rows.map((row) => row.at(-1))
        .slice(1),
    ).toEqual(Array(4).fill('yes'));
    expect(pairTitle('Alder', 'Birch', 1)).toBe('Alder and Birch: one test so far');
    expect(pairTitle('Alder', 'Birch', 3)).toBe('Alder and Birch in three tests');
  });

  test('has a chart with a row a report and one together', () => {
    if (same === undefined || other === undefined) throw new Error('no group');
    const figure = meetingsFigure(same, 'meetings-1');
    if (figure.kind !== 'drawn') throw new Error(figure.why);
    expect(figure.drawn).toBe(5);
    expect(figure.table.rows.map(([name]) => name)).toEqual([
      '10 June 2026, not counted',
      '10 April 2026',
      '10 March 2026',
      '10 February 2026',
      '10 January 2026',
      'All four golfers',
    ]);
    expect(meetingsFigure(other, 'meetings-2').kind).toBe('absent');
  });
});

test('interests that differ from report to report are all told, each with its days', () => {
  const [one, two, three] = reports;
  if (one === undefined || two === undefined || three === undefined) throw new Error('no reports');
  expect(interestsInShort([one, two])).toEqual([interestInShort(one)]);
  const paid = {
    ...three,
    source: {
      ...three.source,
      front: {
        ...three.source.front,
        interests: { ...three.source.front.interests, paidBy: payment.parse('the maker of Alder') },
      },
    },
  };
  expect(interestsInShort([one, paid, two])).toEqual([
    `${dateInWords(one.source.front.date)} and ${dateInWords(two.source.front.date)}: ${interestInShort(one)}`,
    `${dateInWords(three.source.front.date)}: ${interestInShort(paid)}`,
  ]);
  expect(interestInShort(paid)).toContain('The test was paid for by the maker of Alder.');
});

test('what the shop wrote itself is quoted where nobody else could say "we"', () => {
  const [one] = reports;
  if (one === undefined) throw new Error('no report');
  const { source } = one;
  const { front } = source;
  const writes = (words: string): Report => ({
    ...one,
    source: { ...source, front: { ...front, interests: { ...front.interests, sentence: words } } },
  });
  expect(interestInShort(writes('we charge for cutting a shaft'))).toContain(
    'The shop says: “We charge for cutting a shaft.”',
  );
  expect(interestInShort(writes('The fitting fee is refunded.'))).toContain('The fitting fee is refunded.');
  expect(interestInBrief(writes('we charge for cutting a shaft'))).toBe(
    'The shop sells both. The shop says: “We charge for cutting a shaft.”',
  );
  expect(interestInBrief(one)).toBe('The shop sells both.');
});

test('a contender has one record a build, with what it met', () => {
  const alder = contenderRecords(reports).get('alder');
  expect(alder?.builds.map(({ entries }) => entries.length)).toEqual([5, 1]);
  expect(alder?.met).toEqual([{ label: 'Birch', pair: 'alder-and-birch' }]);
  expect(alder?.builds[0]?.sheet).toEqual([
    ['Head', 'Alder head'],
    ['Stated loft', '9°'],
  ]);
});

test('one report alone makes no page of a pair or a build, and links to none', () => {
  const [one, two] = reports.filter(({ source }) => ['first', 'second'].includes(source.slug));
  if (one === undefined || two === undefined) throw new Error('no reports');
  expect(pairRecords([one]).size).toBe(0);
  expect(contenderRecords([one]).size).toBe(0);
  expect(contendersWithPages(one, idsWithPages([one]))).toEqual([]);
  expect([...pairRecords([one, two]).keys()]).toEqual(['alder-and-birch']);
  expect([...contenderRecords([one, two]).keys()].toSorted()).toEqual(['alder', 'birch']);
  expect(contendersWithPages(one, idsWithPages([one, two])).map(({ id }) => id)).toEqual(['birch', 'alder']);
  // A withdrawn report gives nothing to a page.
  const gone = {
    ...two,
    source: { ...two.source, front: { ...two.source.front, status: 'withdrawn' as const } },
  };
  expect(pairRecords([one, gone]).size).toBe(0);
  expect(contendersWithPages(one, idsWithPages([one, gone]))).toEqual([]);
});

test('a list changed last when the latest of its reports did', () => {
  const list = reports.filter(({ source }) => ['first', 'third'].includes(source.slug));
  const day = lastChanges(reports, [{ path: '/kinds/heads/', reports: list }]);
  // The third was corrected on that day.
  expect(day('/kinds/heads/')).toBe('2026-04-01');
  expect(day('/kinds/balls/')).toBeNull();
});
