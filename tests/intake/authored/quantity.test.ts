import { describe, expect, test } from 'vitest';
import { quantityOf, type Quantity } from '../../../src/intake/authored/quantity.ts';
import type { MetricId } from '../../../src/trade/metrics.ts';

const read = (metric: MetricId, typed: string, signed = false): Quantity | undefined =>
  quantityOf(metric, { signed }).safeParse(typed).data;

// Factors: NIST SP 811 (2008), appendix B.8: 1 yd = 0.9144 m, 1 ft = 0.3048 m, 1 in = 0.0254 m, 1 mile = 1609.344 m, all exact.
test.each<[MetricId, string, number, string]>([
  ['carry', '5 yd', 4.572, 'yd'],
  ['carry', '5yards', 4.572, 'yd'],
  ['carry', '5 Yards', 4.572, 'yd'],
  ['carry', '4.5 m', 4.5, 'm'],
  ['carry', '.5 metres', 0.5, 'm'],
  ['apex', '10 feet', 3.048, 'ft'],
  ['strike_up', '0.2 in', 0.00508, 'in'],
  ['ball_speed', '2 mph', 0.89408, 'mph'],
  ['club_speed', '3.6 km/h', 1, 'km/h'],
  ['spin_rate', '300 rpm', 300, 'rpm'],
  ['spin_rate', '300', 300, 'rpm'],
  ['launch_angle', '1°', 1, 'deg'],
  ['launch_angle', '1.5 degrees', 1.5, 'deg'],
  ['launch_angle', '1', 1, 'deg'],
  ['smash', '0.02', 0.02, '1'],
  ['hang_time', '0.3 s', 0.3, 's'],
])('%s of %s', (metric, typed, value, unit) => {
  const quantity = read(metric, typed);
  expect(quantity?.value).toBeCloseTo(value, 12);
  expect(quantity).toMatchObject({ unit, typed });
});

describe('is refused', () => {
  test.each<[MetricId, string]>([
    ['carry', '5'],
    ['ball_speed', '2'],
    ['apex', '10'],
    ['strike_across', '5'],
    ['carry', '5 mph'],
    ['carry', '5 furlongs'],
    ['carry', '1,5 m'],
    ['carry', '1e3 m'],
    ['carry', '5 to 6 yd'],
    ['carry', 'Infinity yd'],
    ['carry', '-5 yd'],
    ['spin_rate', '300 yd'],
    ['smash', '0.02 yd'],
  ])('%s of %s', (metric, typed) => {
    expect(read(metric, typed)).toBeUndefined();
  });
});

test('a sign is read where limits may lie on both sides, also a true minus', () => {
  expect(read('side', '-40 m', true)?.value).toBe(-40);
  expect(read('side', '−40 m', true)?.value).toBe(-40);
  expect(read('side', '+40 m', true)?.value).toBe(40);
});
