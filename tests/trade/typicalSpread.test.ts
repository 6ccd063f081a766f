import { expect, test } from 'vitest';
import { clubKindIn } from '../../src/trade/clubKind.ts';
import { metricIds, metrics } from '../../src/trade/metrics.ts';
import { dependsOnClub, typicalSpread } from '../../src/trade/typicalSpread.ts';

// Common practice, no source: what is tested is how the values are kept, not that they are true.
test('spreads are in canonical units, and a good player is never the less steady one', () => {
  expect(typicalSpread('carry', 'driver', 'mid')).toBeCloseTo(12 * 0.9144, 12);
  expect(typicalSpread('carry', 'wedge', 'good')).toBeCloseTo(3 * 0.9144, 12);
  expect(typicalSpread('ball_speed', null, 'good')).toBeCloseTo(1.5 * 0.44704, 12);
  for (const metric of metricIds) {
    const good = typicalSpread(metric, 'driver', 'good');
    const mid = typicalSpread(metric, 'driver', 'mid');
    expect(good === null).toBe(mid === null);
    if (good !== null && mid !== null) {
      expect(good).toBeLessThanOrEqual(mid);
      // A spread of another order than the gap that matters would be a slip of units.
      expect(mid / metrics[metric].matters).toBeGreaterThan(0.5);
      expect(mid / metrics[metric].matters).toBeLessThan(10);
    }
  }
});

test('where the kind of club decides, none is told without it', () => {
  expect(dependsOnClub('carry')).toBe(true);
  expect(typicalSpread('carry', null, 'mid')).toBe(null);
  expect(dependsOnClub('ball_speed')).toBe(false);
  expect(typicalSpread('total', 'driver', 'mid')).toBe(null);
});

test('the kind of club in texts, where they name one alone', () => {
  expect(clubKindIn(['Three driver heads, one shaft'])).toBe('driver');
  expect(clubKindIn(['Three balls', 'with one 7-iron'])).toBe('iron');
  expect(clubKindIn(['Worn grooves', '{"head":"56° wedge"}'])).toBe('wedge');
  expect(clubKindIn(['A driver and an iron'])).toBe(null);
  expect(clubKindIn(['Two hybrids in a gritty environment'])).toBe(null);
});
