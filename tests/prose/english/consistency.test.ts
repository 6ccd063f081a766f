import { describe, expect, test } from 'vitest';
import { sayExplored } from '../../../src/prose/english/explored.ts';
import { saySpread } from '../../../src/prose/english/spread.ts';
import { sayStraighter } from '../../../src/prose/english/straighter.ts';
import { spreadOf } from '../../../src/prose/spread.ts';
import { straighterOf } from '../../../src/prose/straighter.ts';
import type { MetricFindings, PairFindings } from '../../../src/findings/findings.ts';
import { toCanonical } from '../../../src/trade/units.ts';
import { metricOf, pairOf, tellingFor } from '../tellings.ts';

const yd = (value: number): number => toCanonical(value, 'yd');
const explored = { looked: 18, byChance: 0.9 };
const names = { a: 'Alder', b: 'Birch', c: 'Cedar' };
const among =
  'Seen, but not what this test set out to check: of 18 such measures, about one would show a difference by chance.';

test('what a difference is worth that nobody set out to check', () => {
  expect(sayExplored(explored)).toBe(among);
  expect(sayExplored({ looked: 7, byChance: 0.35 })).toBe(
    'Seen, but not what this test set out to check: of seven such measures, fewer than one would show a difference by chance.',
  );
  expect(sayExplored({ looked: 1, byChance: 0.05 })).toBe('Seen, but not what this test set out to check.');
});

describe('consistency', () => {
  const pair = (tighter: 'a' | 'b', clear: boolean) => ({
    a: 'a',
    b: 'b',
    ratio: 0.5,
    tighter,
    p: 0.01,
    clear,
  });
  const told = (spread: MetricFindings['spread'], hitters = 1): string => {
    const metric = metricOf({ metric: 'carry', verdict: 'clear' }, { spread });
    return saySpread(spreadOf(metric, { explored }), tellingFor([metric], { names, design: { hitters } }));
  };

  test('none, some, and too few to say', () => {
    expect(told({ p: 0.4, pairs: [pair('a', false)] })).toBe('Carry: no clear difference in consistency.');
    expect(told({ p: 0.01, pairs: [pair('b', true)] })).toBe(
      `Carry: Birch was more consistent than Alder. ${among}`,
    );
    expect(told(null)).toBe('Carry: consistency was not judged; that takes 12 shots each.');
    expect(told(null, 4)).toBe('Carry: consistency is judged for one golfer only.');
  });

  test('only what the findings call clear is told, whatever its p', () => {
    expect(told({ p: 0.01, pairs: [{ ...pair('a', false), p: 0.001 }] })).toBe(
      'Carry: no clear difference in consistency.',
    );
  });
});

describe('accuracy', () => {
  const told = (straighter: readonly PairFindings[] | null): string => {
    const side = metricOf({
      metric: 'side',
      verdict: 'level',
      pair: { estimate: yd(1), ci: [yd(-3), yd(5)] },
    });
    return sayStraighter(straighterOf({ straighter, explored }), tellingFor([side], { names }));
  };
  const pair = (
    estimate: number,
    ci: readonly [number, number],
    rest: Partial<PairFindings> = {},
  ): PairFindings =>
    pairOf({
      metric: 'side',
      verdict: 'size-unsure',
      pair: { estimate: yd(estimate), ci: [yd(ci[0]), yd(ci[1])], ...rest },
    });

  test('none, and why nothing was judged', () => {
    expect(told([pairOf({ metric: 'side', verdict: 'too-close' })])).toBe('No clear difference in accuracy.');
    expect(told([pairOf({ metric: 'side', verdict: 'not-judged' })])).toBe(
      'Accuracy was not judged: there were too few shots.',
    );
    const off = { because: 'aim-off-line', contenders: ['a', 'b'], fewest: null } as const;
    expect(told([pairOf({ metric: 'side', verdict: 'not-judged', pair: { notJudged: off } })])).toBe(
      'Accuracy was not judged: most shots finished to one side, and where the golfer aimed is not recorded.',
    );
    expect(told(null)).toBe('Accuracy was not measured.');
  });

  test('the one with less distance from the line is nearer, from either side', () => {
    expect(told([pair(-5, [-7.6, -2.3])])).toBe(
      `Alder finished nearer the line than Birch, likely by 2 to 8 yards. ${among}`,
    );
    expect(told([pair(5, [2.3, 7.6])])).toMatch(
      /^Birch finished nearer the line than Alder, likely by 2 to 8 yards\./,
    );
  });

  test('where the order leaves the cause open nothing is credited', () => {
    expect(told([pair(5, [2.3, 7.6], { credit: 'open' })])).toBe('No clear difference in accuracy.');
  });
});
