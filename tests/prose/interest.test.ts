import { describe, expect, test } from 'vitest';
import { interestInBrief, interestInShort } from '../../src/kit/interestInShort.ts';
import { interestSentences } from '../../src/prose/interest.ts';
import { bearingOn, hasInterest, interestsOf } from '../../src/prose/interestStatements.ts';
import { reportOf } from '../findings/reportOf.ts';
import type { Report } from '../../src/kit/report.ts';

interface Stated {
  readonly heron?: string;
  readonly wren?: string;
  readonly plover?: string;
  readonly sold?: readonly [string, string, string];
  readonly interests?: string;
}

function stated({
  heron = 'lent by its distributor',
  wren = 'our stock',
  plover = 'our stock',
  sold = ['new', 'new', 'new'],
  interests = '{paid_by: the shop, commission_or_gifts: none, seen_before: nobody outside the shop}',
}: Stated): Report {
  const line = (id: string, label: string, supplied: string, index: number): string =>
    `${id}: {label: ${label}, supplied_by: ${JSON.stringify(supplied)}, sold_here: '${sold[index] ?? ''}'}`;
  const contenders = [
    line('alder', 'Heron', heron, 0),
    line('birch', 'Wren', wren, 1),
    line('cedar', 'Plover', plover, 2),
  ];
  return reportOf({ front: { contenders: `{${contenders.join(', ')}}`, interests } });
}

const interests = (paid: string, given = 'none', seen = 'nobody outside the shop'): string =>
  `{paid_by: ${JSON.stringify(paid)}, commission_or_gifts: ${JSON.stringify(given)}, seen_before: ${JSON.stringify(seen)}}`;

describe('the interest beside an answer', () => {
  const told = (report: Report): string => interestSentences(report.source).join(' ');

  test('is told in the shop’s voice, what is usual in one sentence', () => {
    expect(told(stated({}))).toBe(
      'We sell all three new and took them from stock, save Heron, which its distributor lent us. ' +
        'We paid for the test. We took no commission, sponsorship or gifts. ' +
        'Nobody outside the shop saw it before publication.',
    );
    expect(told(stated({ heron: 'our stock' }))).toMatch(
      /^We sell all three new and took them from stock\. We paid/,
    );
    expect(
      told(stated({ heron: 'our used stock', wren: 'our used stock', plover: 'our used stock' })),
    ).toMatch(/^We sell all three new and took them from our used stock\. /);
  });

  test('tells apart what does not fit into one sentence', () => {
    expect(
      told(
        stated({
          heron: 'our used stock',
          wren: 'bought from a practice ground',
          plover: "the customer's own",
          sold: ['used', 'no', 'no'],
        }),
      ),
    ).toMatch(
      /^We sell Heron used; we do not sell Wren or Plover\. We took Heron from our used stock\. We bought Wren from a practice ground\. Plover is the customer’s own\. /,
    );
    expect(
      told(
        stated({
          heron: 'lent for the day by its maker',
          wren: 'lent by our distributor',
          plover: 'given by a friend',
        }),
      ),
    ).toMatch(
      /^We sell all three new\. Heron was lent to us for the day by its maker and Wren by our distributor\. Plover was given to us by a friend\. /,
    );
  });

  test.each([
    ['lent by its distributor', 'Heron, Wren and Plover were lent to us, each by its distributor.'],
    [
      'lent for the day by its maker',
      'Heron, Wren and Plover were lent to us for the day, each by its maker.',
    ],
    ['lent by our distributor', 'Heron, Wren and Plover were lent to us by our distributor.'],
    ['given by a friend', 'Heron, Wren and Plover were given to us by a friend.'],
    ['bought online in May', 'Heron, Wren and Plover were bought online in May.'],
    ['bought used from its owner', 'Heron, Wren and Plover were bought used, each from its owner.'],
    ['bought from its maker', 'We bought Heron, Wren and Plover, each from its maker.'],
    ['bought from a practice ground', 'We bought Heron, Wren and Plover from a practice ground.'],
  ])('several that were %s', (supplied, sentence) => {
    const all = { heron: supplied, wren: supplied, plover: supplied };
    const words = told(stated(all));
    expect(words.replace(/all three(?! new)/i, 'Heron, Wren and Plover')).toContain(sentence);
  });

  test('a line that could not be placed stands whole, in its words', () => {
    const words = told(
      stated({
        heron: 'not stated by the textbook',
        interests: interests('the shop, refunded later', 'none, but a box of balls', 'nobody but the maker'),
      }),
    );
    expect(words).toContain('Of the source of Heron we state: “not stated by the textbook”.');
    expect(words).toContain('Of the payment for the test we state: “the shop, refunded later”.');
    expect(words).toContain('Of commission, sponsorship and gifts we state: “none, but a box of balls”.');
    expect(words).toContain('Of readers before publication we state: “nobody but the maker”.');
  });
});

describe('the interest away from the page', () => {
  test.each([
    [{}, 'The shop sells all three new. Heron was lent by its distributor.'],
    [
      { heron: 'lent by our distributor' },
      'The shop sells all three new. Heron was lent by the shop’s distributor.',
    ],
    [{ heron: 'our stock' }, 'The shop sells all three new.'],
    [
      { heron: 'our stock', interests: interests('the shop itself', 'none taken') },
      'The shop sells all three new.',
    ],
    [
      {
        heron: 'our stock',
        interests: interests(
          'the shop and the maker of Plover, half each',
          'a box of balls from the maker of Plover',
          'the maker of Plover',
        ),
      },
      'The shop sells all three new. The shop and the maker of Plover paid for the test, half each. ' +
        'The shop took a commission, sponsorship or gift: a box of balls from the maker of Plover. ' +
        'The maker of Plover saw the report before publication.',
    ],
    [
      {
        heron: 'our stock',
        interests: interests('the customer, as a fitting', 'none', 'the customer who hit'),
      },
      'The shop sells all three new. The test was paid for by the customer, as a fitting. ' +
        'The customer who hit saw the report before publication.',
    ],
    [
      { heron: 'lent to us by a friend of ours, for a round', sold: ['no', 'no', 'no'] },
      'The shop sells none of them. Heron was “lent to us by a friend of ours, for a round”.',
    ],
    [
      { heron: 'bought by us', sold: ['no', 'new', 'new'] },
      'The shop sells Wren and Plover new; it does not sell Heron. The shop bought Heron.',
    ],
    [
      { interests: interests('the shop, refunded later') },
      'The shop sells all three new. Heron was lent by its distributor. ' +
        'Of the payment for the test the shop states: “the shop, refunded later”.',
    ],
  ] as const)('%o', (answers, words) => {
    expect(interestInShort(stated(answers), 'The shop')).toBe(words);
  });

  test.each([
    [{}, 'The shop sells all three. Heron was lent by its distributor.'],
    [{ sold: ['no', 'new', 'used'] }, 'The shop sells all but Heron. Heron was lent by its distributor.'],
    [{ heron: 'our stock', sold: ['new', 'no', 'no'] }, 'The shop sells Heron alone.'],
    [
      { interests: interests('the shop and the maker of Plover, half each', 'a box of balls', 'its maker') },
      'The shop sells all three. Heron was lent by its distributor. ' +
        'Paid for by the shop and the maker of Plover, half each. Commission or gifts: a box of balls. ' +
        'Seen before publication by its maker.',
    ],
    [
      { heron: 'our stock', interests: interests('our distributor') },
      'The shop sells all three. Paid for by the shop’s distributor.',
    ],
  ] as const)('in few words %o', (answers, words) => {
    expect(interestInBrief(stated(answers))).toBe(words);
  });

  test('drops whole statements where there is no room, who paid last of all, and says so', () => {
    const report = stated({
      interests: interests('the shop and the maker of Plover, half each', 'a box of balls', 'its maker'),
    });
    expect(interestInBrief(report, 150)).toBe(
      'Paid for by the shop and the maker of Plover, half each. Commission or gifts: a box of balls. The report states more of its interest.',
    );
    expect(interestInBrief(report, 10)).toBe(
      'Paid for by the shop and the maker of Plover, half each. The report states more of its interest.',
    );
  });

  test('names the shop where there is room', () => {
    const report = stated({});
    const named = { ...report, source: { ...report.source, shop: null } };
    expect(interestInShort(named)).toBe(
      'The publisher sells all three new. Heron was lent by its distributor.',
    );
    expect(interestInShort(report, 'Example Golf Workshop')).toBe(
      'Example Golf Workshop sells all three new. Heron was lent by its distributor.',
    );
  });
});

describe('statements of interest', () => {
  const half = stated({
    interests: interests('the shop and the maker of Plover, half each', 'none', 'the customer who hit'),
  }).source.front;

  test('say which contenders they bear on', () => {
    const of = (ids: readonly string[]): readonly string[] =>
      bearingOn(
        interestsOf(half).filter(({ outside }) => outside),
        ids,
      ).map(({ kind }) => kind);
    expect(of(['cedar'])).toEqual(['payment', 'seen']);
    expect(of(['alder'])).toEqual(['supply', 'seen']);
    expect(of(['birch'])).toEqual(['seen']);
  });

  test.each([
    ['what is lent', {}, true, true],
    ['what is sold alone', { heron: 'our stock' }, false, true],
    ['nothing', { heron: 'bought by us', sold: ['no', 'no', 'no'] }, false, false],
    [
      'a test paid for by others',
      { heron: 'our stock', sold: ['no', 'no', 'no'], interests: interests('a maker') },
      true,
      true,
    ],
    [
      'none taken',
      { heron: 'our stock', sold: ['no', 'no', 'no'], interests: interests('us', 'none taken') },
      false,
      false,
    ],
    [
      'a first look alone',
      { heron: 'our stock', sold: ['no', 'no', 'no'], interests: interests('us', 'none', 'a maker') },
      true,
      false,
    ],
  ] as const)('%s', (_, answers, outside, any) => {
    const { front } = stated(answers).source;
    expect([interestsOf(front).some((told) => told.outside), hasInterest(front)]).toEqual([outside, any]);
  });
});
