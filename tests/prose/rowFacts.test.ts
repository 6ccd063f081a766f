import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { interestFlags } from '../../src/prose/english/interestFlags.ts';
import { interestOfList } from '../../src/prose/english/interestOfList.ts';
import { rowFacts, type RowFacts } from '../../src/prose/english/rowFacts.ts';
import { interestsOf, shortNames } from '../../src/prose/interestStatements.ts';
import { gifts } from '../../src/intake/authored/gifts.ts';
import { payment } from '../../src/intake/authored/payment.ts';
import { supply } from '../../src/intake/authored/supply.ts';
import { seenBefore } from '../../src/intake/authored/seenBefore.ts';
import type { Front } from '../../src/intake/authored/front.ts';
import type { Report } from '../../src/kit/report.ts';
import { loadSite } from '../../src/site/siteContent.ts';

const { reports } = loadSite(resolve('content'));
const report = (slug: string): Report => {
  const found = reports.find(({ source }) => source.slug === slug);
  if (found === undefined) throw new Error(`no ${slug}`);
  return found;
};
const facts = ({ source, findings, session }: Report, system: 'yards' | 'metres' = 'yards'): RowFacts =>
  rowFacts(source, findings, session.shots.length, system);

test('golfers with their speeds, shots and day', () => {
  const { golfers, clubSpeed, shots, day } = facts(report('three-balls-one-iron'));
  expect([golfers, clubSpeed, shots, day]).toEqual(['One golfer', '83–85 mph', '36 shots', '18 April 2026']);
  expect(facts(report('three-balls-one-iron'), 'metres').clubSpeed).toBe('133–137 km/h');
  expect(facts(report('hybrids-at-a-demo-day')).clubSpeed).toBeNull();
});

test('outside money, corrections and replies are grave, the rest follows', () => {
  expect(facts(report('fairway-woods-two-golfers')).grave).toEqual([
    'paid for by the shop and the maker of Clover, half each',
    'commission or gifts: a box of balls from the maker of Clover',
    'reply from the maker of Clover',
  ]);
  expect(facts(report('fairway-woods-two-golfers')).further).toEqual([
    'Clover lent by its maker',
    'seen first by the maker of Clover',
    'invented data',
  ]);
  expect(facts(report('three-irons-after-work')).grave).toEqual([
    'paid for by the customer, as a fitting',
    'corrected 2 April 2026',
  ]);
  expect(facts(report('three-balls-one-iron')).grave).toEqual([]);
  expect(facts(report('two-clubs-for-200')).further).toEqual(['invented data']);
});

test('what could not be placed is quoted whole, never left out', () => {
  const { front } = report('three-balls-one-iron').source;
  const odd: Front = {
    ...front,
    interests: {
      ...front.interests,
      paidBy: payment.parse('half by us, and half we do not know'),
      commissionOrGifts: gifts.parse('none, but a box of balls'),
      seenBefore: seenBefore.parse('nobody but the maker'),
    },
  };
  const { money, further } = interestFlags(interestsOf(odd), shortNames(odd.contenders));
  expect(money).toEqual([
    'payment: “half by us, and half we do not know”',
    'commission or gifts: “none, but a box of balls”',
  ]);
  expect(further).toEqual([
    'Heron lent by its distributor',
    'seen before publication: “nobody but the maker”',
  ]);
});

test('several that were lent, each by its own', () => {
  const { front } = report('three-balls-one-iron').source;
  const suppliedBy = supply.parse('lent by its distributor');
  const contenders = front.contenders.map((contender) => ({ ...contender, suppliedBy }));
  const { further } = interestFlags(interestsOf({ ...front, contenders }), shortNames(contenders));
  expect(further.join()).toMatch(/^\S+, \S+ and \S+ lent, each by its distributor/);
});

test('a draft says so in the list', () => {
  const { source, findings } = report('three-balls-one-iron');
  const draft = { ...source, front: { ...source.front, status: 'draft' as const } };
  expect(rowFacts(draft, findings, 1, 'yards').further).toContain('draft, not published');
  expect(rowFacts(draft, findings, 1, 'yards').shots).toBe('one shot');
});

test('how much the shop sells of what it lists', () => {
  const sold = (...how: readonly ('new' | 'no')[]): string => {
    const [contender] = report('three-balls-one-iron').source.front.contenders;
    if (contender === undefined) throw new Error('no contender');
    return interestOfList([{ contenders: how.map((soldHere) => ({ ...contender, soldHere })) }]);
  };
  expect(sold('new', 'new')).toMatch(/^We sell all that we tested\. /);
  expect(sold('new', 'no')).toMatch(/^We sell most of what we tested\. /);
  expect(sold('new', 'no', 'no')).toMatch(/^We sell some of what we tested\. /);
  expect(sold('no')).toMatch(/^We sell nothing that we tested\. /);
});
