import { describe, expect, test } from 'vitest';
import { anyOf } from '../../src/prose/english/kit/found/chartFinding.ts';
import { openingAloud } from '../../src/prose/english/kit/spokenWords.ts';
import { metricOf, tellingFor } from '../prose/tellings.ts';

/** A report on so many heads, hit by so many golfers. */
function telling(heads: number, hitters = 1) {
  const one = tellingFor([metricOf({ metric: 'carry', verdict: 'clear' })], { varied: 'head' });
  const contenders = Array.from({ length: heads }, (_, index) => ({
    id: `h${index}`,
    label: `Head ${index}`,
    shots: 12,
    excluded: 0,
  }));
  const { findings } = one;
  return { ...one, findings: { ...findings, contenders, design: { ...findings.design, hitters } } };
}

describe('names that are counted', () => {
  const ids = ['h0', 'h1', 'h2', 'h3', 'h4', 'h5'];

  test('all, or so many of all: "the four heads" of six would be all there are', () => {
    expect(anyOf(ids, telling(6))).toBe('any of the six heads');
    expect(anyOf(ids, telling(6), 'and')).toBe('all six heads');
    expect(anyOf(ids.slice(2), telling(6))).toBe('four of the six heads');
    expect(anyOf(ids.slice(2), telling(6), 'and')).toBe('four of the six heads');
    expect(anyOf(ids.slice(4), telling(6))).toBe('h4 or h5');
  });

  test('shots of several golfers are said to be all of them together', () => {
    expect(openingAloud(telling(2), [12, 12])).toBe('One golfer hit 12 shots with each of two heads.');
    expect(openingAloud(telling(2, 8), [40, 40])).toBe(
      'Eight golfers hit 40 shots in all with each of two heads.',
    );
  });
});
