import { describe, expect, test } from 'vitest';
import type { Findings, MetricFindings, OverlayId, PairFindings } from '../../src/findings/findings.ts';
import { bearsOn, cautionsFor, cautionsOf, gravestBeside } from '../../src/prose/cautions.ts';
import { sayCaution } from '../../src/prose/english/cautions.ts';
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

describe('what is unusual about a measure', () => {
  test('of whom more readings are missing', () => {
    const metric = three([
      pair('a', 'b', ['uneven-readings']),
      pair('b', 'c', ['uneven-readings']),
      pair('a', 'c', []),
    ]);
    const read: Readonly<Record<string, number>> = { a: 12, b: 7, c: 11 };
    const byContender = metric.byContender.map((own) => ({ ...own, n: read[own.id] ?? 0 }));
    expect(cautionsIn({ ...metric, byContender })[0]?.facts).toEqual({
      overlay: 'uneven-readings',
      of: ['b'],
    });
  });

  test('shots left out are not missing', () => {
    const metric = three([pair('a', 'b', ['uneven-readings'])]);
    const read: Readonly<Record<string, number>> = { a: 8, b: 9 };
    const byContender = metric.byContender.map((own) => ({ ...own, n: read[own.id] ?? 0 }));
    const findings = findingsOf({ ...metric, byContender });
    const contenders = findings.contenders.map((own) => ({ ...own, excluded: own.id === 'a' ? 4 : 0 }));
    const [caution] = cautionsFor({ ...metric, byContender }, { ...findings, contenders });
    expect(caution?.facts).toEqual({ overlay: 'uneven-readings', of: ['b'] });
  });

  test('what counts as enough to matter: who set it, and whether a record holds it', () => {
    const metric = three([pair('a', 'b', ['matters-unusual'])], { mattersFrom: 'shop' });
    const findings = findingsOf(metric);
    const facts = (plannedInAdvance: boolean) =>
      cautionsFor(metric, { ...findings, design: { ...findings.design, plannedInAdvance } })[0]?.facts;
    const told = { overlay: 'matters-unusual', matters: metric.matters, from: 'shop' };
    expect([facts(true), facts(false)]).toEqual([
      { ...told, onRecord: true },
      { ...told, onRecord: false },
    ]);
  });

  test('is said with its names and sizes', () => {
    const odd = { matters: 45.72, mattersFrom: 'report' } as const;
    const metric = three([pair('a', 'b', ['uneven-readings', 'matters-unusual'])], odd);
    const byContender = metric.byContender.map((own) => ({ ...own, n: own.id === 'a' ? 6 : 12 }));
    const telling = tellingFor([{ ...metric, byContender }]);
    const [own] = telling.findings.metrics;
    const said =
      own === undefined ? [] : cautionsFor(own, telling.findings).map((one) => sayCaution(one, telling));
    expect(said).toEqual([
      'Readings of carry are missing more often for Alder than for Birch, which could move its average.',
      'A carry difference counts as enough to matter here from 50 yards, where 5 yards is usual. ' +
        'We set it for this test; no record shows that it was set before the session.',
    ]);
  });
});

test('what two pairs would come to with every shot counted is told only where it is the same', () => {
  const left = (a: string, b: string, verdict: 'clear' | 'too-close') =>
    pair(a, b, ['depends-on-left-out'], { withLeftOut: { estimate: 0, ci: [-1, 1], verdict } });
  const facts = (second: 'clear' | 'too-close') =>
    cautionsIn(three([left('a', 'b', 'clear'), left('a', 'c', second)]))[0]?.facts;
  expect(facts('clear')).toMatchObject({ whole: 'clear' });
  expect(facts('too-close')).toMatchObject({ whole: null });
});

test('the gravest comes first, and beside an answer the gravest that it does not say itself', () => {
  const found = cautionsIn(three([pair('a', 'b', ['few-shots', 'near-device', 'order-drift'])]));
  expect(found.map(({ facts }) => facts.overlay)).toEqual(['order-drift', 'near-device', 'few-shots']);
  expect(gravestBeside(found)?.facts.overlay).toBe('near-device');
  expect(gravestBeside(found.slice(0, 1))).toBeNull();
});
