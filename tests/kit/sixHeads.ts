import { contentFolder } from '../commands/contentFolder.ts';

const names = [
  'Alder extra low',
  'Birch extra low',
  'Cedar extra low',
  'Dogwood 10.5 deg',
  'Elm tour spec 9',
  'Fir tour spec 10',
];

const swing = [0, -5.3, 3.1, -1.9, 4.4, -2.2, 1.3, -4.1];

export const sixHeadsSlug = 'six-heads-with-rather-long-names';

/** As much as a report can put on one printed side: six heads, long names, much to say about interests. */
export function sixHeads(): string {
  const rows = swing.flatMap((_, turn) =>
    names.map((name, head) => [name, (220 + 3 * head + (swing[(turn * 3 + head * 5) % 8] ?? 0)).toFixed(1)]),
  );
  return contentFolder({
    'shop.yaml':
      'name: Example Golf Workshop of the Northern Counties\naddress: https://golf.example/a-long-folder/\n',
    [`reports/${sixHeadsSlug}/report.md`]: [
      '---',
      'title: Six driver heads with rather long names on one and the same shaft',
      'date: 2026-05-02',
      'question: Does any of the five new heads carry farther than the one that we already sell the most of?',
      'varied: head',
      'contenders:',
      ...names.map(
        (name, head) =>
          `  h${head}: {label: ${name}, supplied_by: lent by distributor ${head}, sold_here: new}`,
      ),
      'primary: carry',
      'matters: {carry: 5 yd}',
      'session: shots.csv',
      'hitters: {one: {role: staff fitter, hand: right, consent: yes}}',
      'interests:',
      '  paid_by: a group of distributors that share the cost',
      '  commission_or_gifts: one box of balls from each distributor',
      '  seen_before: every distributor a week before',
      'invented_data: yes',
      'status: published',
      '---',
      '',
    ].join('\n'),
    [`reports/${sixHeadsSlug}/shots.csv`]: [
      'Shot,Head,Carry (yd)',
      ...rows.map((row, index) => [index + 1, ...row].join()),
      '',
    ].join('\n'),
  });
}
