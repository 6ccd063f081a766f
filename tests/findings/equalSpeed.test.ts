import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/findings/analyse.ts';
import { atEqualSpeed } from '../../src/findings/equalSpeed.ts';
import type { PairFindings, SwingFindings } from '../../src/findings/findings.ts';
import { hitOrder } from '../../src/findings/hitOrder.ts';
import { seededRandom, shuffled } from '../../src/stats/random.ts';
import { expectInterval } from '../stats/close.ts';
import { inputFor, sessionOf, yd, type Swing } from './sessions.ts';

/** A price of club speed between two values, metres a m/s. */
const pricedAt = (low: number, high: number): SwingFindings => ({
  metric: 'carry',
  margin: yd(2.5),
  level: 0.95,
  measures: [{ id: 'club_speed', pricedBy: 'flight-model', perUnit: [low, high], pairs: [] }],
});

/** Twelve rounds of two clubs; carry follows club speed at 5 m a m/s, a's speed is 1 m/s higher, a true gap of 3 m besides. */
function swingsOf(seed: string): Swing[] {
  const random = seededRandom(seed);
  return Array.from({ length: 12 }, () =>
    shuffled(['a', 'b'], random).map((contender): Swing => {
      const speed = 44 + (contender === 'a' ? 1 : 0) + 0.8 * random.normal();
      const carry = 200 + 5 * (speed - 44) + (contender === 'a' ? 3 : 0) + 2.5 * random.normal();
      return { contender, values: { carry, club_speed: speed } };
    }),
  ).flat();
}

function equalled(swings: readonly Swing[], swing: SwingFindings): NonNullable<PairFindings['atEqualSpeed']> {
  const session = sessionOf(swings, { contenders: ['a', 'b'], step: 0.01 });
  const found = atEqualSpeed(
    session,
    { id: 'carry', level: 0.95, step: 0.01 },
    hitOrder(session, null),
    swing,
  )({
    a: 'a',
    b: 'b',
  });
  if (found === null) throw new Error('not worked out');
  return found;
}

describe('at equal club speed', () => {
  const swings = swingsOf('one session');
  const withCarry = (price: number): PairFindings => {
    const own = swings.map((swing) => ({
      ...swing,
      values: { carry: (swing.values.carry ?? 0) - price * (swing.values.club_speed ?? 0) },
    }));
    const [pair] = analyse(inputFor(own, { contenders: ['a', 'b'], step: 0.01 }), []).metrics[0]?.pairs ?? [];
    if (pair === undefined) throw new Error('no pair');
    return pair;
  };

  test('is the judged method on carry less price times speed, shot by shot', () => {
    const found = equalled(swings, pricedAt(5, 5));
    const direct = withCarry(5);
    expect(direct.method).toBe('paired-rounds');
    expectInterval(found.ci, direct.ci ?? [NaN, NaN], 1e-9);
    expect(found.estimate).toBeCloseTo(direct.estimate ?? NaN, 9);
  });

  test('takes the wider limits of both ends of the price', () => {
    const found = equalled(swings, pricedAt(4, 6));
    const [low, high] = [withCarry(4).ci ?? [NaN, NaN], withCarry(6).ci ?? [NaN, NaN]];
    expectInterval(found.ci, [Math.min(low[0], high[0]), Math.max(low[1], high[1])], 1e-9);
  });

  test('a shot without a reading of club speed drops out', () => {
    const without = swings.map((swing, index) =>
      index === 3 ? { ...swing, values: { ...swing.values, club_speed: null } } : swing,
    );
    const fewer = swings.filter((_, index) => index !== 3);
    expectInterval(equalled(without, pricedAt(5, 5)).ci, equalled(fewer, pricedAt(5, 5)).ci, 1e-9);
  });

  test('holds the true gap in 93.5 to 97 of 100 tests where the price is known', () => {
    const tests = 1000;
    const covered = Array.from({ length: tests }, (_, seed) =>
      equalled(swingsOf(`covered ${seed}`), pricedAt(5, 5)),
    ).filter(({ ci }) => ci[0] <= 3 && 3 <= ci[1]).length;
    expect(covered / tests).toBeGreaterThan(0.935);
    expect(covered / tests).toBeLessThan(0.97);
  }, 120_000);

  test('only where the metric is the one that is priced, and club speed was read', () => {
    const session = sessionOf(swings, { contenders: ['a', 'b'] });
    const carry = { id: 'carry' as const, level: 0.95, step: 0.01 };
    const of = (swing: SwingFindings | null): unknown =>
      atEqualSpeed(session, carry, hitOrder(session, null), swing)({ a: 'a', b: 'b' });
    expect(of({ ...pricedAt(5, 5), metric: 'side' })).toBeNull();
    expect(of({ ...pricedAt(5, 5), measures: [] })).toBeNull();
    expect(of(null)).toBeNull();
  });
});
