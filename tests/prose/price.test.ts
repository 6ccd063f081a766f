import { describe, expect, test } from 'vitest';
import type { Contender } from '../../src/intake/authored/contender.ts';
import { moneyWords, pricesWords } from '../../src/prose/english/price.ts';

/** Signs, their places and separators: Unicode CLDR 45, `en`; minor units: ISO 4217. */
describe('an amount of money', () => {
  test.each([
    [52, 'GBP', 'en-GB', '£52'],
    [30.5, 'USD', 'en-US', '$30.50'],
    [1299, 'EUR', 'en-GB', '€1,299'],
    [0.99, 'EUR', 'en-IE', '€0.99'],
    [1200, 'CHF', 'en-GB', 'CHF\u00a01,200'],
  ])('%d %s in %s', (amount, currency, locale, said) => {
    expect(moneyWords(amount, currency, locale)).toBe(said);
  });

  test('a currency that has no code of three letters is said as it was typed', () => {
    expect(moneyWords(52, 'pounds', 'en-GB')).toBe('52 pounds');
  });
});

const sold = (id: string, more: Partial<Contender>): Contender => ({
  id,
  label: id,
  suppliedBy: { kind: 'own-stock', stock: null, words: 'our stock' },
  soldHere: 'no',
  ...more,
});

describe('what the things cost', () => {
  const price = { amount: 52, currency: 'GBP', on: '2026-04-18' };

  test('is said with its day once, where all prices are of one', () => {
    const both = [
      sold('Heron Distance', { short: 'Heron', price }),
      sold('Wren', { price: { ...price, amount: 24.5 } }),
    ];
    expect(pricesWords(both, 'en-GB')).toBe('Heron £52 and Wren £24.50, on 18 April 2026.');
  });

  test('is said with the day of each, where they differ', () => {
    const both = [sold('Heron', { price }), sold('Wren', { price: { ...price, on: '2026-04-20' } })];
    expect(pricesWords(both, 'en-GB')).toBe('Heron £52 (18 April 2026) and Wren £52 (20 April 2026).');
  });

  test('leaves out what has no price, and is nothing where none has one', () => {
    expect(pricesWords([sold('Heron', { price }), sold('Wren', {})], 'en-GB')).toBe(
      'Heron £52, on 18 April 2026.',
    );
    expect(pricesWords([sold('Wren', {})], 'en-GB')).toBeNull();
  });
});
