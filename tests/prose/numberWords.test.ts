import { expect, test } from 'vitest';
import { numberWords, valueOfWords } from '../../src/prose/numberWords.ts';

test.each([
  ['two', 2],
  ['nineteen', 19],
  ['twenty', 20],
  ['thirty-one', 31],
  ['Ninety nine', 99],
  ['a hundred', 100],
  ['one hundred and five', 105],
  ['two hundred and fifty-one', 251],
  ['two thousand six hundred', 2600],
  ['a thousand', 1000],
  ['a dozen', 12],
  ['half a dozen', 6],
])('%s', (words, value) => {
  expect(valueOfWords(words)).toBe(value);
  expect(new RegExp(`^(?:${numberWords})$`, 'i').test(words)).toBe(true);
});

test.each(['one', 'a', 'and', 'hundredth', 'tenfold', '12'])('%s is none', (words) => {
  expect(new RegExp(`^(?:${numberWords})$`, 'i').test(words)).toBe(false);
});
