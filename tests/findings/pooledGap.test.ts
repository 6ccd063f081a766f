import { describe, expect, test } from 'vitest';
import { pooledGap as pool, type PooledGap } from '../../src/findings/pooledGap.ts';
import reference from '../reference/findings/pooled-gap.json' with { type: 'json' };

type ReportGap = Parameters<typeof pool>[0][number];

const pooledGap = (gaps: readonly ReportGap[]): PooledGap => pool(gaps, { matters: 5, better: 'more' });

const gapsOf = (estimates: readonly number[], golfers: readonly string[]): ReportGap[] =>
  estimates.map((estimate, index) => ({
    estimate,
    hitters: [golfers[index] ?? ''],
    date: `2026-01-${String(index + 1).padStart(2, '0')}`,
  }));

/** t.test of R 4.2 on the golfers' own means (tests/reference/findings/pooled-gap.R). */
describe.each(reference.map((set) => [set.name, set] as const))('%s', (_name, set) => {
  const pooled = pooledGap(gapsOf(set.gaps, set.golfers));

  test('pooled as R does it, to 1e-8', () => {
    if (pooled.kind !== 'golfers') throw new Error(`pooled as ${pooled.kind}`);
    expect(pooled.parties).toBe(set.k);
    expect(Math.abs(pooled.estimate - set.estimate)).toBeLessThan(1e-8);
    pooled.ci.forEach((end, index) => expect(Math.abs(end - (set.ci[index] ?? NaN))).toBeLessThan(1e-8));
  });

  test('another golfer only from six on', () => {
    if (pooled.kind !== 'golfers') throw new Error(`pooled as ${pooled.kind}`);
    if (set.k < 6) expect(pooled.newGolfer).toBeNull();
    else
      pooled.newGolfer?.forEach((end, index) =>
        expect(Math.abs(end - (set.another[index] ?? NaN))).toBeLessThan(1e-8),
      );
    expect(pooled.newGolfer === null).toBe(set.k < 6);
  });
});

test('without the first report: the same as pooling the others', () => {
  const gaps = gapsOf([9, 4, 6, 5], ['a', 'b', 'c', 'd']);
  const all = pooledGap(gaps.toReversed());
  const others = pooledGap(gaps.slice(1));
  if (all.kind !== 'golfers' || others.kind !== 'golfers') throw new Error('not pooled');
  expect(all.withoutFirst).toMatchObject({ estimate: others.estimate, ci: others.ci });
  expect(others.withoutFirst).toBeNull();
});

test('too few golfers are not pooled, however many reports there are', () => {
  expect(pooledGap(gapsOf([5, 6], ['a', 'b']))).toEqual({ kind: 'none', why: 'too-few', parties: 2 });
  expect(pooledGap(gapsOf([5, 6, 7, 8], ['a', 'b', 'a', 'b']))).toEqual({
    kind: 'none',
    why: 'too-few',
    parties: 2,
  });
  expect(pooledGap([])).toEqual({ kind: 'none', why: 'too-few', parties: 0 });
});

test('one golfer on several days is that golfer only', () => {
  const own = pooledGap(gapsOf([5, 6, 8, 9], ['a', 'a', 'a', 'a']));
  expect(own).toMatchObject({ kind: 'one-party', golfers: 1, reports: 4, days: 4, estimate: 7 });
});

test('two reports of one day are one day, and two golfers that always hit together are not one golfer', () => {
  const own = pooledGap(
    ['2026-01-01', '2026-01-01', '2026-01-03'].map((date, index) => ({
      date,
      estimate: 5 + index,
      hitters: ['a', 'b'],
    })),
  );
  expect(own).toMatchObject({ kind: 'one-party', golfers: 2, reports: 3, days: 2 });
});

test('where golfers hit together nothing is said of another golfer: averages of several spread less', () => {
  const gaps = gapsOf([1, 2, 3, 4, 5, 6], ['a', 'b', 'c', 'd', 'e', 'f']);
  const alone = pooledGap(gaps);
  const together = pooledGap(
    gaps.map((gap) => ({ ...gap, hitters: [...gap.hitters, `${gap.hitters[0]}2`] })),
  );
  if (alone.kind !== 'golfers' || together.kind !== 'golfers') throw new Error('not pooled');
  expect(alone.newGolfer).not.toBeNull();
  expect(together).toEqual({ ...alone, golfers: 12, newGolfer: null });
});

test('groups that share a golfer count once, through a third report too', () => {
  const gaps: ReportGap[] = [
    { date: '2026-01-01', estimate: 1, hitters: ['a', 'b'] },
    { date: '2026-01-02', estimate: 2, hitters: ['c', 'd'] },
    { date: '2026-01-03', estimate: 6, hitters: ['b', 'c'] },
    { date: '2026-01-04', estimate: 4, hitters: ['e'] },
  ];
  expect(pooledGap(gaps)).toEqual({ kind: 'none', why: 'too-few', parties: 2 });
});

test('equal gaps say nothing about how far they may be off', () => {
  expect(pooledGap(gapsOf([5, 5, 5], ['a', 'b', 'c']))).toEqual({
    kind: 'none',
    why: 'no-spread',
    parties: 3,
  });
});

test('turned round, the pooled gap turns round', () => {
  const gaps = gapsOf([9, 4, 6, 5], ['a', 'b', 'c', 'd']);
  const there = pooledGap(gaps);
  const back = pooledGap(gaps.map((gap) => ({ ...gap, estimate: -gap.estimate })));
  if (there.kind !== 'golfers' || back.kind !== 'golfers') throw new Error('not pooled');
  expect(back.estimate).toBeCloseTo(-there.estimate, 12);
  expect(back.ci[0]).toBeCloseTo(-there.ci[1], 12);
});
