import { expect, test } from 'vitest';
import { quietly } from '../../src/findings/quietly.ts';
import { StatisticsError } from '../../src/stats/statisticsError.ts';

test('what a statistic cannot work with is nothing, and any other fault stays one', () => {
  expect(quietly(() => 3)).toBe(3);
  expect(
    quietly(() => {
      throw new StatisticsError('sample-too-small', 'mean', 'needs at least 2 values, got 1');
    }),
  ).toBeNull();
  const fault = new RangeError('ours');
  expect(() =>
    quietly(() => {
      throw fault;
    }),
  ).toThrow(fault);
});
