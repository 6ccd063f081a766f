import { describe, expect, test } from 'vitest';
import { calibratedModels } from '../../src/flight/calibratedModels.ts';
import { coefficientSets } from '../../src/flight/coefficientSets.ts';
import type { Delivery, DeliveryMeasure } from '../../src/flight/delivery.ts';
import { flightModel } from '../../src/flight/flightModel.ts';
import { priceInMetres } from '../../src/flight/priceInMetres.ts';
import { toCanonical } from '../../src/trade/units.ts';
import { inYards, launchInMph } from './tradeUnits.ts';

const launch = launchInMph(150, 13, 2700);
const shot: Delivery = { launch, clubSpeed: toCanonical(103, 'mph'), spinLoft: 13 };
const models = calibratedModels([{ launch, carry: toCanonical(250, 'yd') }], flightModel(), coefficientSets);
type PriceContext = Parameters<typeof priceInMetres>[2];

const driver = (metric: PriceContext['metric']): PriceContext => ({ metric, shot, models });

const yards = (
  measure: DeliveryMeasure,
  difference: number,
  context: PriceContext,
): readonly [number, number] => {
  const { low, high } = priceInMetres(measure, difference, context);
  return [inYards(low), inYards(high)];
};

describe('prices by the flight model against the rules of the trade (common practice, no source)', () => {
  test('1 mph of club speed: 2 to 3 yards of carry, by one set 3.3; no side', () => {
    const [low, high] = yards('club_speed', toCanonical(1, 'mph'), driver('carry'));
    expect(low).toBeGreaterThan(1.8);
    expect(high).toBeLessThan(3.4);
    expect(yards('club_speed', toCanonical(1, 'mph'), driver('side'))).toEqual([0, 0]);
  });

  test('1 degree of path: 4 to 5 yards of side, hardly any carry', () => {
    const [low, high] = yards('club_path', 1, driver('side'));
    expect(low).toBeGreaterThan(3.9);
    expect(high).toBeLessThan(5);
    yards('club_path', 1, driver('carry')).forEach((carry) => expect(Math.abs(carry)).toBeLessThan(0.1));
  });

  test('1 degree of face to path: start line and 6 to 12 yards of curve', () => {
    const [low, high] = yards('face_to_path', 1, driver('side'));
    expect(low).toBeGreaterThan(0.61 * 4 + 5);
    expect(high).toBeLessThan(0.83 * 5 + 12);
  });

  test('1 degree of attack: a yard or two either way, sets and loft at impact not agreed', () => {
    const [low, high] = yards('attack_angle', 1, driver('carry'));
    expect(low).toBeGreaterThan(-1);
    expect(low).toBeLessThan(high);
    expect(high).toBeLessThan(3.5);
    expect(yards('attack_angle', 1, driver('side'))).toEqual([0, 0]);
  });

  test('total is priced with its run', () => {
    const [carry] = yards('club_speed', 1, driver('carry'));
    const [total] = yards('club_speed', 1, driver('total'));
    expect(total).not.toBe(carry);
    expect(total).toBeGreaterThan(0);
  });
});

describe('what any price keeps', () => {
  const measures: readonly DeliveryMeasure[] = ['club_speed', 'attack_angle', 'club_path', 'face_to_path'];
  const metrics: readonly PriceContext['metric'][] = ['carry', 'total', 'side'];
  const contexts = metrics.flatMap((metric) => [driver(metric), { metric, shot: null, models }]);

  test('a difference the other way is worth the negative; none is worth nothing', () => {
    for (const measure of measures) {
      for (const context of contexts) {
        const [low, high] = yards(measure, 1.3, context);
        const [otherLow, otherHigh] = yards(measure, -1.3, context);
        expect(otherLow).toBeCloseTo(-high, 9);
        expect(otherHigh).toBeCloseTo(-low, 9);
        yards(measure, 0, context).forEach((price) => expect(price).toBeCloseTo(0, 12));
      }
    }
  });
});

describe('without what the model needs', () => {
  test('rules of the trade for a driver', () => {
    const context: PriceContext = { metric: 'carry', shot: null, models };
    expect(priceInMetres('club_speed', toCanonical(1, 'mph'), context).by).toBe('trade-sensitivities');
    const [low, high] = yards('club_speed', toCanonical(1, 'mph'), context);
    expect(low).toBeCloseTo(2, 9);
    expect(high).toBeCloseTo(3, 9);
    expect(yards('club_path', 2, { ...context, metric: 'side' }).map(Math.round)).toEqual([8, 10]);
  });

  test('club speed not read: its own price by the trade, the others by the model', () => {
    const context = { ...driver('side'), shot: { ...shot, clubSpeed: null } };
    expect(priceInMetres('club_speed', 1, context).by).toBe('trade-sensitivities');
    expect(priceInMetres('club_path', 1, context).by).toBe('flight-model');
    expect(priceInMetres('club_path', 1, { ...context, models: [] }).by).toBe('trade-sensitivities');
  });

  test('spin loft not read: taken from the launch angle', () => {
    const known = yards('face_to_path', 1, { ...driver('side'), shot: { ...shot, spinLoft: 13 / 0.8 } });
    const unknown = yards('face_to_path', 1, { ...driver('side'), shot: { ...shot, spinLoft: null } });
    expect(unknown[0]).toBeCloseTo(known[0], 9);
  });

  test('the model stays within the rules where those speak of a straight driver', () => {
    const [low, high] = yards('face_to_path', 1, driver('carry'));
    expect(low).toBeGreaterThan(-2);
    expect(high).toBeLessThan(2);
  });
});
