import { describe, expect, it } from 'vitest';
import { isWithinLimits, longestCarry } from '../../src/trade/limits.ts';
import { metricIds } from '../../src/trade/metrics.ts';
import { toCanonical } from '../../src/trade/units.ts';

describe('physical limits', () => {
  it('let the fastest ball test pass', () => {
    // The governing bodies' revised distance test: ball about 183 mph, 11 degrees, 2220 rpm, 317 yd carry and roll.
    const ball = toCanonical(183, 'mph');
    expect(isWithinLimits(ball, 'ball_speed')).toBe(true);
    expect(isWithinLimits(toCanonical(317, 'yd'), 'total')).toBe(true);
    expect(longestCarry(ball)).toBeGreaterThan(toCanonical(317, 'yd'));
  });

  it('bound carry by the range without air and 15 % more', () => {
    // v^2 / g at 45 degrees: 50^2 / 9.80665 = 254.93 m.
    expect(longestCarry(50)).toBeCloseTo(1.15 * 254.929, 2);
  });

  it('tell a speed in mph from one in m/s', () => {
    expect(isWithinLimits(155, 'ball_speed')).toBe(false);
    expect(isWithinLimits(toCanonical(155, 'mph'), 'ball_speed')).toBe(true);
  });

  it('stand for every metric', () => {
    for (const id of metricIds) expect(isWithinLimits(1e9, id), id).toBe(false);
  });
});
