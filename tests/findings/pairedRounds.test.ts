import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/findings/analyse.ts';
import type { PairFindings } from '../../src/findings/findings.ts';
import { expectInterval } from '../stats/close.ts';
import { inputFor, inTurn, lastApart, oneAfterAnother, yd, type Swing } from './sessions.ts';

function pairOf(swings: readonly Swing[], matters = yd(1)): PairFindings {
  const input = inputFor(swings, { contenders: ['a', 'b'], matters: { carry: matters } });
  const [pair] = analyse(input, []).metrics[0]?.pairs ?? [];
  if (pair === undefined) throw new Error('no pair');
  return pair;
}

describe('two contenders hit in rounds by one golfer (scipy.stats.ttest_rel)', () => {
  const a = [231.2, 228.4, 236, 229.9, 233.1, 227.6, 235.4, 230.8, 232.2];
  const b = [226.9, 225.1, 229.4, 228.8, 226.3, 224, 231.7, 225.5, 229];

  test.each([
    [8, 4.337499999999999, 2.7696622214743813, 5.905337778525616, 0.0003212690544807079],
    [9, 4.211111111111109, 2.831547660187492, 5.590674562034725, 0.00010833970828807837],
  ])('%i rounds are judged by their differences', (rounds, estimate, lower, upper, p) => {
    const pair = pairOf(inTurn({ a: a.slice(0, rounds), b: b.slice(0, rounds) }));
    expect(pair.method).toBe('paired-rounds');
    expect(pair.estimate).toBeCloseTo(yd(estimate), 9);
    expectInterval(pair.ci ?? [NaN, NaN], [yd(lower), yd(upper)], 1e-9);
    expect(Math.abs((pair.p ?? NaN) / p - 1)).toBeLessThan(1e-4);
    expect([pair.byRounds, pair.holds.map(({ check }) => check)]).toEqual([
      null,
      ['usual-strikes', 'drift-taken-out'],
    ]);
  });

  test('seven are judged shot by shot, however many shots there are', () => {
    expect(pairOf(inTurn({ a: a.slice(0, 7), b: b.slice(0, 7) })).method).toBe('welch');
    expect(pairOf(lastApart({ a: a.slice(0, 8), b: b.slice(0, 8) })).method).toBe('welch');
  });

  test('so are shots of which some have no other in their round, by rounds beside them', () => {
    const pair = pairOf(lastApart({ a, b }));
    expect([pair.method, pair.byRounds === null]).toEqual(['welch', false]);
    expect(pair.withLeftOut?.estimate).toBeDefined();
    // 37.9 / 9: the averages, subtracted, give the difference
    expect(pair.estimate).toBeCloseTo(yd(37.9 / 9), 9);
  });

  test('one after another, and three contenders, are judged shot by shot', () => {
    expect(pairOf(oneAfterAnother({ a, b })).method).toBe('welch');
    const three = analyse(inputFor(inTurn({ a, b, c: a.toReversed() })), []).metrics[0]?.pairs ?? [];
    expect(three.map(({ method }) => method)).toEqual(Array(3).fill('games-howell'));
    expect(three.every(({ byRounds }) => byRounds !== null)).toBe(true);
  });

  test('the same difference in every round is believed to no more than the file can show', () => {
    // differences of numbers rounded to w = 0.1 yd: variance w^2 / 6; t(0.975; 8) = 2.306004
    const pair = pairOf(inTurn({ a, b: a.map((carry) => carry - 3) }));
    const half = 2.306004 * Math.sqrt(yd(0.1) ** 2 / 6 / 9);
    expectInterval(pair.ci ?? [NaN, NaN], [yd(3) - half, yd(3) + half], 1e-5);
  });

  test('a shot left out takes its round with it', () => {
    // differences 4.3 3.3 6.6 1.1 6.8 3.6 3.7 5.3 3.2, sum 37.9: without 6.8 31.1 / 8, without 1.1 36.8 / 8
    const pair = pairOf(inTurn({ a, b }));
    expectInterval(pair.leaveOneOut ?? [NaN, NaN], [yd(31.1 / 8), yd(36.8 / 8)], 1e-9);
    expect(pair.overlays).not.toContain('rests-on-one-shot');
  });

  test('rests on one shot where one far round decides', () => {
    // scipy.stats.ttest_1samp: all twelve exclude 0, eleven without 6.6 do not; median 0.8, MAD 1: 0.6745 x 5.8 = 3.9
    const differences = [-1.2, 0.8, 4.1, 0.8, 1.6, -0.2, 1.6, -1.1, 6.6, 0.8, 4, 0.8];
    const level = [200, 203, 198, 205, 201, 196, 204, 199, 202, 197, 206, 200];
    const of = (own: readonly number[]): PairFindings =>
      pairOf(inTurn({ a: level.map((carry, i) => carry + (own[i] ?? 0)), b: level }));
    const resting = of(differences);
    expect(resting.ci?.[0]).toBeGreaterThan(0);
    expect(resting.overlays).toContain('rests-on-one-shot');
    expect(of(differences.map((own) => own + 2)).overlays).not.toContain('rests-on-one-shot');
  });

  test('a drift that hits both of a round takes no power', () => {
    const drifting = (carries: readonly number[]): number[] => carries.map((carry, i) => carry + 3 * i);
    const [still, drifted] = [pairOf(inTurn({ a, b })), pairOf(inTurn({ a: drifting(a), b: drifting(b) }))];
    expectInterval(drifted.ci ?? [NaN, NaN], still.ci ?? [NaN, NaN], 1e-9);
  });
});
