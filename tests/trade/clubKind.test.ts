import { expect, test } from 'vitest';
import { clubKindIn, hitsForDistance } from '../../src/trade/clubKind.ts';

test.each([
  [['Three driver heads, one shaft'], true],
  [['Does one of three 15-degree fairway woods carry farther?'], true],
  [['Two lofts', '3-wood, strong and standard'], true],
  [['Three balls, one 5-iron'], false],
  // The hybrid must stop the ball, whatever it is compared with.
  [['Two clubs for the 200-yard gap', 'Hybrid', 'Fairway wood'], false],
  [['Three balls'], false],
])('%j is hit for distance alone: %s', (texts, expected) => {
  expect(hitsForDistance(texts)).toBe(expected);
});

test('the kind that texts name; none where they name several', () => {
  expect(clubKindIn(['Three drivers', 'One shaft'])).toBe('driver');
  expect(clubKindIn(['A driver and a wedge'])).toBeNull();
});
