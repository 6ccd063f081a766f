import { expect, test } from 'vitest';
import { clubFamiliesIn } from '../../src/trade/clubFamilies.ts';

test.each([
  [['Three driver heads, one shaft'], ['drivers']],
  [['one forged 5-iron'], ['irons']],
  [
    ['Hybrid', 'Fairway wood'],
    ['fairway woods', 'hybrids'],
  ],
  [
    ['a 3-wood', 'a 56-degree wedge', 'a putter'],
    ['fairway woods', 'wedges', 'putters'],
  ],
  [['Three balls', 'the environment of a woodland'], []],
] as const)('%s: %s', (texts, families) => {
  expect(clubFamiliesIn(texts)).toEqual(families);
});
