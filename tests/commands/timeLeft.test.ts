import { expect, test } from 'vitest';
import { timeLeft } from '../../src/commands/timeLeft.ts';

test.each([
  [10, 100, 1000, 'about 10 seconds more'],
  [50, 100, 17_000, 'about 15 seconds more'],
  [25, 100, 14_000, 'about 40 seconds more'],
  [100, 1000, 10_500, 'about 90 seconds more'],
  [100, 1000, 11_200, 'about 2 minutes more'],
  [100, 1000, 40_000, 'about 6 minutes more'],
  [96, 100, 100_000, 'a few seconds more'],
])('%i of %i in %i ms: %s', (done, all, elapsedMs, said) => {
  expect(timeLeft(done, all, elapsedMs)).toBe(said);
});

test.each([
  ['nothing is done', 0, 100, 60_000],
  ['less than a fiftieth is done', 19, 1000, 60_000],
  ['less than a second is over', 50, 100, 999],
  ['all is done', 100, 100, 60_000],
])('says nothing where %s', (_, done, all, elapsedMs) => {
  expect(timeLeft(done, all, elapsedMs)).toBe('');
});
