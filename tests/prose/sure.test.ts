import { expect, test } from 'vitest';
import type { PairFindings } from '../../src/findings/findings.ts';
import { pairsOf } from '../../src/stats/gapInterval.ts';
import { singleShotsOf } from '../../src/prose/sure.ts';
import { metricOf, pairOf, tellingFor } from './tellings.ts';

const singleShot = { more: 100, of: 144 };

/** Heads in one row, each ahead of all behind it, those with the first for sure. */
function inRow(ids: string): ReturnType<typeof singleShotsOf> {
  const pairs = pairsOf(ids.length).map(([a, b]): PairFindings =>
    pairOf({
      metric: 'carry',
      verdict: a === 0 ? 'clear' : 'size-unsure',
      pair: { a: ids[a] ?? '', b: ids[b] ?? '', ahead: ids[a] ?? '', singleShot },
    }),
  );
  const metric = metricOf({ metric: 'carry', verdict: 'clear' }, { pairs });
  return singleShotsOf(metric, tellingFor([metric]).findings);
}

const told = (ids: string): readonly string[] | undefined =>
  inRow(ids)?.told.map(({ answer }) => `${answer.ahead}>${answer.behind}`);

test('three pairs are told one by one', () => {
  expect(told('abc')).toEqual(['a>b', 'a>c', 'b>c']);
});

test('of more than three, those in which the surest leader is ahead', () => {
  expect(told('abcd')).toEqual(['a>b', 'a>c', 'a>d']);
  expect(told('abcde')).toEqual(['a>b', 'a>c', 'a>d', 'a>e']);
});
