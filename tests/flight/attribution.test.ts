import { describe, expect, test } from 'vitest';
import { attribute } from '../../src/flight/attribution.ts';
import type { AttributionShot } from '../../src/flight/attributionPlan.ts';
import { coefficientSets } from '../../src/flight/coefficientSets.ts';
import { flightModel } from '../../src/flight/flightModel.ts';
import type { Launch } from '../../src/flight/launch.ts';
import { fly } from '../../src/flight/trajectory.ts';
import { meanOf } from '../../src/stats/moments.ts';
import { seededRandom } from '../../src/stats/random.ts';
import { attributed, type Attributed } from './attributed.ts';
import { bearmanHarvey1976, lyu2018 } from './otherSets.ts';
import { driverLaunch, flown, goodHitter, middlingHitter, scattered } from './simulatedShots.ts';
import { inYards } from './tradeUnits.ts';

function partOf(attribution: Attributed, id: string): Attributed['parts'][number] {
  const part = attribution.parts.find((one) => one.id === id);
  if (part === undefined) throw new Error(`no part ${id}`);
  return part;
}

const moved = (launches: readonly Launch[], by: Partial<Launch>): readonly Launch[] =>
  launches.map((launch) => ({
    ballSpeed: launch.ballSpeed + (by.ballSpeed ?? 0),
    launchAngle: launch.launchAngle + (by.launchAngle ?? 0),
    launchDirection: launch.launchDirection + (by.launchDirection ?? 0),
    spinRate: launch.spinRate + (by.spinRate ?? 0),
    spinAxis: launch.spinAxis + (by.spinAxis ?? 0),
  }));

const truths = [
  ['Bearman and Harvey', flightModel({ coefficients: bearmanHarvey1976, dragScale: 0.88 })],
  ['Lyu and others', flightModel({ coefficients: lyu2018(), dragScale: 1.1 })],
] as const;

/** As they would be flown by other coefficients than those that account for them, and by each of ours. */
const steady = [
  truths[0],
  ...coefficientSets.map((coefficients) => [coefficients.name, flightModel({ coefficients })] as const),
] as const;

describe('contenders that differ in one thing', () => {
  test.each(steady)('ball speed alone, flown by %s: the gap goes to ball speed', (_, truth) => {
    const launches = scattered(driverLaunch, goodHitter, 12, seededRandom('alone'));
    const attribution = attributed(flown(moved(launches, { ballSpeed: 3 }), truth), flown(launches, truth));
    const part = partOf(attribution, 'ball-speed');
    expect(part.settled).toBe(true);
    expect(part.finding).toBe(true);
    expect(part.range[0]).toBeLessThan(attribution.gap.value);
    expect(part.range[1]).toBeGreaterThan(attribution.gap.value);
    for (const other of attribution.parts.filter(({ id }) => id !== 'ball-speed')) {
      expect(other.settled).toBe(false);
      other.bySet.forEach(({ value }) => expect(Math.abs(inYards(value))).toBeLessThan(0.01));
    }
  });

  // The one ball of Lyu and others, whose drag does not grow with spin, gains less from speed than any of our sets
  // says: the whole gap goes to ball speed, and up to half a yard more.
  test('ball speed alone, flown by Lyu and others: the gap lies just below the range', () => {
    const launches = scattered(driverLaunch, goodHitter, 12, seededRandom('alone'));
    const [, truth] = truths[1];
    const attribution = attributed(flown(moved(launches, { ballSpeed: 3 }), truth), flown(launches, truth));
    const { range, settled } = partOf(attribution, 'ball-speed');
    expect(settled).toBe(true);
    expect(inYards(range[0] - attribution.gap.value)).toBeLessThan(0.5);
    expect(range[1]).toBeGreaterThan(attribution.gap.value);
  });

  test('ball speed alone, other scatter for each: its share is within its range', () => {
    const inside = Array.from({ length: 12 }, (_, i) => {
      const random = seededRandom(`pair ${i}`);
      const [, truth] = truths[i % 2] ?? truths[0];
      const attribution = attributed(
        flown(scattered({ ...driverLaunch, ballSpeed: 73 }, goodHitter, 12, random), truth),
        flown(scattered(driverLaunch, goodHitter, 12, random), truth),
        { draws: 500 },
      );
      const worth = fly({ ...driverLaunch, ballSpeed: 73 }, truth).carry - fly(driverLaunch, truth).carry;
      const { range } = partOf(attribution, 'ball-speed');
      return range[0] <= worth && worth <= range[1];
    });
    expect(inside.filter(Boolean).length).toBeGreaterThanOrEqual(11);
  });

  test.each([
    ['Bearman and Harvey', 400],
    ['Bearman and Harvey', -600],
    ['Lyu and others', 500],
    ['Lyu and others', -500],
    ['Bearman and Harvey', 1200],
  ])('spin alone, flown by %s, %i rpm: not settled', (name, spinRate) => {
    const truth = truths.find(([id]) => id === name)?.[1] ?? flightModel();
    const launches = scattered(driverLaunch, goodHitter, 12, seededRandom('spin'));
    const attribution = attributed(flown(moved(launches, { spinRate }), truth), flown(launches, truth));
    const part = partOf(attribution, 'spin-rate');
    expect(part.settled).toBe(false);
    expect(part.why.length).toBeGreaterThan(0);
  });

  test('nothing: no part is settled', () => {
    const random = seededRandom('equal');
    const [, truth] = truths[0];
    const attribution = attributed(
      flown(scattered(driverLaunch, middlingHitter, 12, random), truth),
      flown(scattered(driverLaunch, middlingHitter, 12, random), truth),
    );
    expect(attribution.parts.filter(({ settled }) => settled)).toEqual([]);
  });

  test('what no launch column explains is the unexplained rest', () => {
    const launches = scattered(driverLaunch, goodHitter, 12, seededRandom('rest'));
    const [, truth] = truths[0];
    const longer = flown(launches, truth).map((shot) => ({ ...shot, carry: shot.carry + 8 }));
    const attribution = attributed(longer, flown(launches, truth));
    expect(attribution.unexplained.settled).toBe(true);
    attribution.unexplained.bySet.forEach(({ value }) => expect(value).toBeCloseTo(8, 6));
  });
});

describe('accounting', () => {
  const random = seededRandom('accounting');
  const [, truth] = truths[0];
  const plain = flown(scattered(driverLaunch, goodHitter, 12, random), truth);
  const other = flown(scattered({ ...driverLaunch, ballSpeed: 72 }, goodHitter, 14, random), truth);
  const withClub = (shots: readonly AttributionShot[], smash: number): readonly AttributionShot[] =>
    shots.map((shot) => ({ ...shot, clubSpeed: (shot.launch.ballSpeed + 0.2 * random.normal()) / smash }));

  test('parts and rest add up to the gap read, by every set', () => {
    const attribution = attributed(withClub(other, 1.47), withClub(plain, 1.46));
    expect(attribution.parts.map(({ id }) => id)).toEqual([
      'club-speed',
      'smash',
      'launch-angle',
      'spin-rate',
      'direction',
    ]);
    expect(attribution.level).toBeCloseTo(1 - 0.05 / 6, 12);
    expect(attribution.gap.value).toBeCloseTo(
      meanOf(other.map(({ carry }) => carry)) - meanOf(plain.map(({ carry }) => carry)),
      9,
    );
    attribution.sets.forEach(({ modelled }, i) => {
      const parts = attribution.parts.reduce((sum, { bySet }) => sum + (bySet[i]?.value ?? Number.NaN), 0);
      expect(parts).toBeCloseTo(modelled.value, 9);
      expect(parts + (attribution.unexplained.bySet[i]?.value ?? Number.NaN)).toBeCloseTo(
        attribution.gap.value,
        9,
      );
    });
  });

  test('club speed and smash share what ball speed would have', () => {
    const split = attributed(withClub(other, 1.47), withClub(plain, 1.46));
    const whole = attributed(other, plain);
    whole.sets.forEach((_, i) => {
      const both =
        (partOf(split, 'club-speed').bySet[i]?.value ?? 0) + (partOf(split, 'smash').bySet[i]?.value ?? 0);
      expect(Math.abs(inYards(both - (partOf(whole, 'ball-speed').bySet[i]?.value ?? 0)))).toBeLessThan(0.05);
    });
  });

  test('swapped contenders, mirrored gap; the same seed, the same numbers', () => {
    const forth = attributed(other, plain);
    const back = attributed(plain, other);
    expect(back.gap.value).toBeCloseTo(-forth.gap.value, 9);
    forth.parts.forEach(({ bySet }, p) =>
      bySet.forEach(({ value }, i) =>
        expect(Math.abs(value + (back.parts[p]?.bySet[i]?.value ?? Number.NaN))).toBeLessThan(0.02),
      ),
    );
    expect(attributed(other, plain)).toEqual(forth);
  });

  test('columns that never change drop out and are named', () => {
    const level = (shots: readonly AttributionShot[]): readonly AttributionShot[] =>
      shots.map((shot) => ({
        ...shot,
        launch: { ...shot.launch, spinRate: 2600, launchDirection: 0, spinAxis: 0 },
      }));
    const attribution = attributed(level(other), level(plain));
    expect(attribution.parts.map(({ id }) => id)).toEqual(['ball-speed', 'launch-angle']);
    expect(attribution.constant).toEqual(['spin-rate', 'direction']);
  });

  test('a set alone settles nothing; carries beyond reach leave a set out or stop', () => {
    const one = attribute({
      a: other,
      b: plain,
      byRounds: false,
      model: flightModel(),
      sets: coefficientSets.slice(0, 1),
      random: seededRandom('one'),
    });
    expect(one.state === 'attributed' && one.parts.every(({ why }) => why.includes('one-set-only'))).toBe(
      true,
    );
    const far = plain.map((shot) => ({ ...shot, carry: 900 }));
    expect(
      attribute({
        a: far,
        b: far,
        byRounds: false,
        model: flightModel(),
        sets: coefficientSets,
        random: seededRandom('far'),
      }),
    ).toEqual({ state: 'not-possible', why: 'carry-out-of-reach' });
  });

  test('by rounds: six rounds that hold both are needed, and the gap is the mean of the rounds', () => {
    const attribution = attributed(other, plain, { byRounds: true });
    const gaps = plain.map((shot, i) => (other[i]?.carry ?? 0) - shot.carry);
    expect(attribution.gap.value).toBeCloseTo(meanOf(gaps), 9);
    const scarce = plain.map((shot, i) => ({ ...shot, round: i < 5 ? i : null }));
    const input = {
      b: other,
      byRounds: true,
      model: flightModel(),
      sets: coefficientSets,
      random: seededRandom('rounds'),
    };
    expect(attribute({ ...input, a: scarce })).toEqual({ state: 'not-possible', why: 'too-few-rounds' });
    expect(attribute({ ...input, a: plain.slice(0, 7) })).toEqual({
      state: 'not-possible',
      why: 'too-few-shots',
    });
  });
});
