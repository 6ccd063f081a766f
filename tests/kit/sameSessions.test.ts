import { expect, test } from 'vitest';
import { pairRecords } from '../../src/kit/pairRecords.ts';
import { meetingsTable } from '../../src/kit/pairWords.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { contentFolder } from '../commands/contentFolder.ts';
import { around, csvOf } from '../findings/reportOf.ts';

const heads = { 'Carry (yd)': { alder: around(237), birch: around(231).toReversed() } };

function reportOf(day: string, hitter: string): string {
  return [
    '---',
    `title: Heads on ${day}`,
    `date: 2026-04-${day}`,
    'question: Does the new head carry farther?',
    'varied: head',
    'held: {shaft: one 60 g shaft}',
    'contenders: [alder, birch]',
    'primary: carry',
    'session: shots.csv',
    `hitters: {${hitter}: {role: customer, consent: yes}}`,
    'interests: {paid_by: the shop, commission_or_gifts: none, seen_before: nobody}',
    'status: published',
    '---',
    '',
  ].join('\n');
}

const sheet = (label: string): string =>
  `label: ${label}\nsupplied_by: our stock\nsold_here: new\nbuild: {head: ${label} head, loft: 9°}\n`;

/** Reports by day, each with its golfer and the average by which its shots are shifted. */
function siteOf(reports: Readonly<Record<string, readonly [hitter: string, shift: number]>>) {
  return loadSite(
    contentFolder({
      'shop.yaml': 'name: Shop\n',
      'contenders/alder.yaml': sheet('Alder'),
      'contenders/birch.yaml': sheet('Birch'),
      ...Object.fromEntries(
        Object.entries(reports).flatMap(([day, [hitter, shift]]) => {
          const { alder, birch } = heads['Carry (yd)'];
          const shots = { 'Carry (yd)': { alder: alder.map((own) => own + shift), birch } };
          return [
            [`reports/day-${day}/report.md`, reportOf(day, hitter)],
            [`reports/day-${day}/shots.csv`, csvOf(shots)],
          ];
        }),
      ),
    }),
  );
}

const told = ({ problems }: ReturnType<typeof siteOf>): readonly string[] =>
  problems
    .filter(({ kind }) => kind === 'session-elsewhere')
    .map(
      ({ file, columnName, expected, found }) => `${file} ${columnName ?? ''} | ${expected} | ${found ?? ''}`,
    );

test('the same shots under another golfer are told, once, where the second stands', () => {
  const site = siteOf({ '01': ['ann', 0], '02': ['bea', 0], '03': ['cleo', 1] });
  expect(told(site)).toEqual([
    'reports/day-02/report.md hitters | the golfers of day-01, whose shots these are: ann | shots.csv is the same file, hit by bea',
  ]);
  const [problem] = site.problems.filter(({ kind }) => kind === 'session-elsewhere');
  expect([problem?.severity, problem?.cure]).toEqual([
    'warning',
    'Give the same golfer the same id in both reports, or put the right session file here.',
  ]);
});

test('under the same golfer they are no problem; nor are other shots', () => {
  expect(told(siteOf({ '01': ['ann', 0], '02': ['ann', 0], '03': ['cleo', 1] }))).toEqual([]);
});

test('they count once in what reports say together, whoever is said to have hit them', () => {
  const { reports } = siteOf({ '01': ['ann', 0], '02': ['bea', 0], '03': ['cleo', 1], '04': ['dora', 2] });
  const [group] = pairRecords(reports).get('alder-and-birch')?.groups ?? [];
  if (group === undefined) throw new Error('no group');
  expect(group.pooled).toMatchObject({ kind: 'golfers', parties: 3, golfers: 3, reports: 3 });
  expect(meetingsTable(group, 'Carry').rows.map((row) => row.at(-1))).toEqual([
    'yes',
    'yes',
    'yes',
    'no, the same shots as in a newer report',
  ]);
});
