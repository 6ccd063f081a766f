import { expect, test } from 'vitest';
import { sayNotice } from '../../src/prose/english/notices.ts';
import { noticesOf } from '../../src/prose/notices.ts';
import { reportOf } from '../findings/reportOf.ts';

const told = (front: Readonly<Record<string, string>>, newer: string | null = null): readonly string[] =>
  noticesOf(reportOf({ front }).source.front).map((notice) => {
    const { label, words } = sayNotice(notice, { locale: 'en-GB', newer });
    return `${label} ${words}`.trim();
  });

const interests = (paid: string): string =>
  `{paid_by: ${JSON.stringify(paid)}, commission_or_gifts: none, seen_before: nobody outside the shop}`;

test('a report that nothing happened to has no notice', () => {
  expect(told({ interests: interests('the shop') })).toEqual([]);
});

test.each([
  ['the shop and the maker of Clover, half each', 'Paid for in part by the maker of Clover.'],
  ['the customer, as a fitting', 'Paid for by the customer, as a fitting.'],
  ['the makers of Juniper and Mallow, who ran the demo day', 'Paid for by others.'],
])('money from outside is named where a few words do: %s', (paid, words) => {
  expect(told({ interests: interests(paid) })).toEqual([words]);
});

test('the latest correction with its day, how many came before, and each reply', () => {
  expect(
    told({
      interests: interests('the shop'),
      corrections:
        '[{date: 2026-05-02, what: one loft was wrong, was: 9, now: 10}, {date: 2026-05-01, what: x, was: a, now: b}]',
      replies: '[{from: the maker of Alder, date: 2026-05-03, text: We disagree.}]',
    }),
  ).toEqual([
    'Corrected 2 May 2026 and one time before. One loft was wrong.',
    'Reply from the maker of Alder, 3 May 2026.',
  ]);
});

test('what a long correction says stands where it is told whole', () => {
  const what = 'the shaft weight that we gave at first was that of another model';
  expect(
    told({
      interests: interests('the shop'),
      corrections: `[{date: 2026-05-02, what: ${what}, was: 95 g, now: 85 g}]`,
    }),
  ).toEqual(['Corrected 2 May 2026.']);
});

test('a report that was replaced names what took its place, a withdrawn one only why', () => {
  expect(
    told({ interests: interests('the shop'), status: 'superseded', superseded_by: 'newer' }, 'Newer test'),
  ).toEqual(['Replaced by a newer report: Newer test']);
  expect(
    told({
      interests: interests('others'),
      status: 'withdrawn',
      withdrawn: '{date: 2026-06-01, reason: wrong club}',
    }),
  ).toEqual(['Withdrawn 1 June 2026. Wrong club.']);
});
