import { describe, expect, test } from 'vitest';
import type { Findings, MetricFindings, OverlayId, PairFindings } from '../../src/findings/findings.ts';
import { bearsOn, cautionsFor, cautionsOf, gravestBeside } from '../../src/prose/cautions.ts';
import { metricOf, pairOf, tellingFor } from './tellings.ts';

const pair = (a: string, b: string, overlays: readonly OverlayId[], rest: Partial<PairFindings> = {}) =>
  pairOf({ metric: 'carry', verdict: 'clear', overlays, pair: { a, b, ...rest } });

/** Three heads in carry, with these pairs. */
const three = (pairs: readonly PairFindings[], rest: Partial<MetricFindings> = {}): MetricFindings => {
  const two = metricOf({ metric: 'carry', verdict: 'clear' });
  const [first] = two.byContender;
  return {
    ...two,
    byContender: ['a', 'b', 'c'].flatMap((id) => (first === undefined ? [] : [{ ...first, id }])),
    pairs,
    ...rest,
  };
};

const findingsOf = (...metrics: readonly MetricFindings[]): Findings => tellingFor(metrics).findings;
const cautionsIn = (metric: MetricFindings) => cautionsFor(metric, findingsOf(metric));

describe('a caution has the pairs it bears on', () => {
  test('and no others, whatever they are marked with; none at all where only pairs not judged are', () => {
    const marked = pair('a', 'b', ['few-shots']);
    const notJudged = pairOf({
      metric: 'carry',
      verdict: 'not-judged',
      overlays: ['few-shots', 'near-device'],
      pair: { a: 'a', b: 'c' },
    });
    const found = cautionsIn(three([marked, notJudged, pair('b', 'c', [])]));
    expect(found.map(({ facts }) => facts.overlay)).toEqual(['few-shots']);
    expect(found[0]?.pairs.map(({ about }) => `${about.a}${about.b}`)).toEqual(['ab']);
  });

  test('of its own measure only', () => {
    const [carry, spin] = (['carry', 'spin_rate'] as const).map((metric) =>
      metricOf({ metric, verdict: 'clear', overlays: ['few-shots'] }),
    );
    if (carry === undefined || spin === undefined) throw new Error('no metric');
    const [first] = cautionsFor(carry, findingsOf(carry, spin));
    if (first === undefined) throw new Error('no caution');
    expect(bearsOn(first, { of: 'report' })).toBe(true);
    expect(bearsOn(first, { of: 'metric', metric: 'carry' })).toBe(true);
    expect(bearsOn(first, { of: 'metric', metric: 'spin_rate' })).toBe(false);
    expect(bearsOn(first, { of: 'pair', metric: 'carry', a: 'a', b: 'b' })).toBe(true);
    expect(bearsOn(first, { of: 'pair', metric: 'spin_rate', a: 'a', b: 'b' })).toBe(false);
    expect(bearsOn(first, { of: 'pair', metric: 'carry', a: 'a', b: 'c' })).toBe(false);
    expect(cautionsOf(findingsOf(carry, spin)).map(({ about }) => about.metric)).toEqual([
      'carry',
      'spin_rate',
    ]);
  });
});

describe('how large the effect could be', () => {
  test('shots left out are those of the pairs, not of a head beside them', () => {
    const metric = three([
      pair('a', 'b', ['depends-on-left-out'], {
        withLeftOut: { estimate: 0, ci: [-1, 1], verdict: 'too-close' },
      }),
      pair('a', 'c', []),
      pair('b', 'c', []),
    ]);
    const findings = findingsOf(metric);
    const excluded: Readonly<Record<string, number>> = { a: 2, b: 1, c: 4 };
    const contenders = findings.contenders.map((own) => ({ ...own, excluded: excluded[own.id] ?? 0 }));
    expect(cautionsFor(metric, { ...findings, contenders })[0]?.facts).toEqual({
      overlay: 'depends-on-left-out',
      leftOut: 3,
      whole: 'too-close',
    });
  });

  test('the drift that makes a difference is the least that makes any of them, whichever way', () => {
    const open = (a: string, b: string, driftNeeded: number | null) =>
      pair(a, b, ['one-after-another'], { driftNeeded, credit: 'open' });
    const [caution] = cautionsIn(three([open('a', 'b', -6), open('a', 'c', 14), open('b', 'c', 9)]));
    expect(caution?.facts).toEqual({ overlay: 'one-after-another', drift: 6 });
    const [unknown] = cautionsIn(three([open('a', 'b', null)]));
    expect(unknown?.facts).toEqual({ overlay: 'one-after-another', drift: null });
  });
});

test('the gravest comes first, and beside an answer the gravest that it does not say itself', () => {
  const found = cautionsIn(three([pair('a', 'b', ['few-shots', 'near-device', 'order-drift'])]));
  expect(found.map(({ facts }) => facts.overlay)).toEqual(['order-drift', 'near-device', 'few-shots']);
  expect(gravestBeside(found)?.facts.overlay).toBe('near-device');
  expect(gravestBeside(found.slice(0, 1))).toBeNull();
});
