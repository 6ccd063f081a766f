import { describe, expect, test } from 'vitest';
import { completeInterests } from '../../../src/intake/authored/interests.ts';
import { gifts } from '../../../src/intake/authored/gifts.ts';
import { payment } from '../../../src/intake/authored/payment.ts';
import { seenBefore } from '../../../src/intake/authored/seenBefore.ts';
import { supply } from '../../../src/intake/authored/supply.ts';
import { readWith } from '../../../src/intake/authored/readWith.ts';

describe('a line on who supplied a contender', () => {
  test.each([
    ['our stock', { kind: 'own-stock', stock: null }],
    ['us', { kind: 'own-stock', stock: null }],
    ["the shop's own stock", { kind: 'own-stock', stock: null }],
    ['from our shelves', { kind: 'own-stock', stock: null }],
    ['our used stock', { kind: 'own-stock', stock: 'used' }],
    ['our demo stock.', { kind: 'own-stock', stock: 'demo' }],
    ['lent by our distributor', { kind: 'lent', by: 'our distributor', when: null, whole: true }],
    ['Lent by its distributor', { kind: 'lent', by: 'its distributor', when: null, whole: true }],
    [
      'lent for the day by the maker of Juniper',
      { kind: 'lent', by: 'the maker of Juniper', when: 'for the day', whole: true },
    ],
    ['on loan to us from the maker', { kind: 'lent', by: 'the maker', when: null, whole: true }],
    ['borrowed from a customer', { kind: 'lent', by: 'a customer', when: null, whole: true }],
    ['lent', { kind: 'lent', by: null, when: null, whole: true }],
    ['lent by its maker, who wants it back in May', { kind: 'lent', by: null, when: null, whole: false }],
    ['a gift from the maker', { kind: 'given', by: 'the maker', when: null, whole: true }],
    ['given by the maker', { kind: 'given', by: 'the maker', when: null, whole: true }],
    ['bought from a practice ground', { kind: 'bought', by: 'a practice ground', when: null, whole: true }],
    ['bought by us', { kind: 'bought', by: null, when: null, whole: true }],
    ['bought by us from another shop', { kind: 'bought', by: 'another shop', when: null, whole: true }],
    ["the customer's own", { kind: 'customer', by: 'the customer' }],
    ['the golfer’s own club', { kind: 'customer', by: 'the golfer' }],
  ] as const)('"%s" is placed', (line, read) => {
    expect(supply.parse(line)).toEqual({ ...read, words: line.replace(/\.$/, '') });
  });

  test.each([
    ['our stock, lent by the maker', false],
    ['our distributor', false],
    ['not stated by the textbook', false],
    ['bought for us by the maker', true],
    ['supplied by its maker', true],
    ['the used stock of another shop', false],
    ['new', false],
  ])('"%s" leaves a doubt and is kept in its words', (line, participle) => {
    expect(supply.parse(line)).toEqual({ kind: 'in-words', participle, words: line });
  });

  test('a block says exactly what a line would leave open', () => {
    expect(readWith(supply, { kind: 'lent', by: 'Alder, the shop next door' })).toEqual({
      value: {
        kind: 'lent',
        by: 'Alder, the shop next door',
        when: null,
        whole: true,
        words: 'lent by Alder, the shop next door',
      },
    });
    expect(readWith(supply, { kind: 'own-stock', by: 'used' })).toEqual({
      value: { kind: 'own-stock', stock: 'used', words: 'our used stock' },
    });
    expect(readWith(supply, { kind: 'leant' })).toMatchObject({
      troubles: [{ path: ['kind'], cure: 'Did you mean "lent"?' }],
    });
  });
});

describe('a line on who paid', () => {
  test.each([
    ['the shop', { kind: 'shop' }],
    ['us', { kind: 'shop' }],
    ['the shop itself', { kind: 'shop' }],
    ['We ourselves.', { kind: 'shop' }],
    ['the customer', { kind: 'others' }],
    ['the customer, as a fitting', { kind: 'others' }],
    ['the makers of Juniper and Mallow, who ran the demo day', { kind: 'others' }],
    ["the shop's distributor", { kind: 'others' }],
    ['our distributor', { kind: 'others' }],
    [
      'the shop and the maker of Clover, half each',
      { kind: 'shared', by: 'the maker of Clover', share: 'half each' },
    ],
    ['the maker of Clover and us', { kind: 'shared', by: 'the maker of Clover', share: null }],
    ['us, with the maker of Clover', { kind: 'shared', by: 'the maker of Clover', share: null }],
    ['the shop and the maker, half each, less the balls', { kind: 'shared', by: null, share: null }],
    ['the shop, refunded by the maker', { kind: 'in-words' }],
    ['the maker, but half of it by the shop', { kind: 'in-words' }],
    ['not stated by the textbook', { kind: 'in-words' }],
    ['nobody', { kind: 'in-words' }],
  ])('"%s"', (line, read) => {
    expect(payment.parse(line)).toEqual({ ...read, words: line.replace(/\.$/, '') });
  });

  test('a shop that goes by its name is the shop', () => {
    const answers = { commissionOrGifts: gifts.parse('none'), seenBefore: seenBefore.parse('nobody') };
    const shop = { name: 'Example Golf Workshop', interests: {} };
    const paidBy = (line: string): string | undefined =>
      completeInterests({ ...answers, paidBy: payment.parse(line) }, shop)?.paidBy.kind;
    expect(paidBy('Example Golf Workshop')).toBe('shop');
    expect(paidBy('Another Golf Workshop')).toBe('others');
  });

  test('a block', () => {
    expect(readWith(payment, { kind: 'shared', by: 'the maker', share: 'half each' })).toEqual({
      value: {
        kind: 'shared',
        by: 'the maker',
        share: 'half each',
        words: 'the shop and the maker, half each',
      },
    });
    expect(readWith(payment, { kind: 'shop' })).toEqual({ value: { kind: 'shop', words: 'the shop' } });
  });
});

describe('a line on commission and gifts', () => {
  test.each([
    ['none', 'none'],
    ['None taken.', 'none'],
    ['no', 'none'],
    ['no commission or gifts', 'none'],
    ['no gifts of any kind were taken', 'none'],
    ['neither commission nor gifts', 'none'],
    ['a box of balls from that maker', 'some'],
    ['a commission on every head sold and a day out', 'some'],
    ['commission of 5%', 'some'],
    ['none, but a box of balls', 'in-words'],
    ['no commission; a box of balls', 'in-words'],
    ['none known', 'in-words'],
    ['we get 5% of sales', 'in-words'],
  ])('"%s" is %s', (line, kind) => {
    expect(gifts.parse(line)).toEqual({ kind, words: line.replace(/\.$/, '') });
  });

  test('"yes" does not say what it was, and is refused', () => {
    expect(readWith(gifts, 'yes')).toMatchObject({ troubles: [{ found: 'yes' }] });
  });

  test('a block', () => {
    expect(readWith(gifts, { kind: 'some', words: 'a box of balls' })).toEqual({
      value: { kind: 'some', words: 'a box of balls' },
    });
  });
});

describe('a line on who saw it first', () => {
  test.each([
    ['nobody', 'nobody-outside'],
    ['Nobody outside the shop', 'nobody-outside'],
    ['no one but us', 'nobody-outside'],
    ['none', 'nobody-outside'],
    ['the customer who hit', 'others'],
    ['every distributor a week before', 'others'],
    ['nobody but the maker of Clover', 'in-words'],
    ['not the makers', 'in-words'],
  ])('"%s" is %s', (line, kind) => {
    expect(seenBefore.parse(line)).toEqual({ kind, words: line });
  });

  test('a block', () => {
    expect(readWith(seenBefore, { kind: 'others', words: 'its maker' })).toEqual({
      value: { kind: 'others', words: 'its maker' },
    });
  });
});
