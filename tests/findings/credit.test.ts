import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/findings/analyse.ts';
import type { StatedOrder } from '../../src/findings/analysisInput.ts';
import { creditOf } from '../../src/findings/credit.ts';
import type { Findings, OverlayId } from '../../src/findings/findings.ts';
import { hitOrder } from '../../src/findings/hitOrder.ts';
import { lever } from '../../src/stats/lever.ts';
import { seededRandom } from '../../src/stats/random.ts';
import { inputFor, inTurn, inVisits, oneAfterAnother, sessionOf, yd, type Swing } from './sessions.ts';

/** Rules of credit, (i) to (iv): our own thresholds (see /method/), found by simulation; checked on sequences made for each. */
const random = seededRandom('credit');
const normal = (n: number, mean: number, sd: number): number[] =>
  Array.from({ length: n }, () => mean + sd * random.normal());

function only(findings: Findings) {
  const pair = findings.metrics[0]?.pairs[0];
  if (pair === undefined) throw new Error('no pair');
  return pair;
}

const orderOverlays: readonly OverlayId[] = [
  'one-after-another',
  'order-unknown',
  'order-lever',
  'order-drift',
  'order-few-visits',
];
const opened = (findings: Findings): readonly OverlayId[] =>
  only(findings).overlays.filter((overlay) => orderOverlays.includes(overlay));

/** Nothing judged, one golfer. */
const plain = { gap: null, level: 0.95, golfersAreUnit: false, withoutDrift: () => null };

const carries = { a: normal(12, 210, 6), b: normal(12, 200, 6) };

describe('credit by the order of the rows', () => {
  test('(i) one after another is open, and the order of hitting is kept', () => {
    const findings = analyse(inputFor(oneAfterAnother(carries)), []);
    expect(findings.design).toMatchObject({ order: 'one-after-another', sequence: ['a', 'b'] });
    expect(only(findings).credit).toBe('open');
    expect(opened(findings)).toEqual(['one-after-another']);
    expect(findings.metrics[0]?.leading).toBeNull();
  });

  test('in turn is credited to the contender', () => {
    const findings = analyse(inputFor(inTurn(carries)), []);
    expect(findings.design).toMatchObject({ order: 'rotation-same-order', rounds: 12, sequence: null });
    expect(only(findings).credit).toBe('contender');
    expect(opened(findings)).toEqual([]);
  });

  test('(ii) a long lever in mixed order is open', () => {
    // ten of a and two of b first, then the other way round: no run holds 80 %, no rounds, lever over a quarter
    const sequence = [...'aaaabaaaaabaabbabbbbbabbbb'];
    expect(lever(sequence, 'a', 'b')).toBeGreaterThan(0.25);
    const swings = sequence.map((contender): Swing => ({
      contender,
      values: { carry: yd(200 + 5 * random.normal()) },
    }));
    const findings = analyse(inputFor(swings), []);
    expect(findings.design.order).toBe('mixed');
    expect(opened(findings)).toEqual(['order-lever']);
  });

  test('(ii) a short lever in mixed order is credited', () => {
    const sequence = [...'aabababbabbaabbbaababbaa'];
    expect(lever(sequence, 'a', 'b')).toBeLessThan(0.25);
    const swings = sequence.map((contender): Swing => ({
      contender,
      values: { carry: yd(200 + 5 * random.normal()) },
    }));
    const findings = analyse(inputFor(swings), []);
    expect(findings.design.order).toBe('mixed');
    expect(only(findings).credit).toBe('contender');
  });

  test('(iv) mini-blocks with under three visits are open, with three credited', () => {
    const two = analyse(inputFor(inVisits({ a: normal(8, 210, 4), b: normal(8, 200, 4) }, 4)), []);
    expect(two.design.order).toBe('mini-blocks');
    expect(opened(two)).toEqual(['order-few-visits']);
    const three = analyse(inputFor(inVisits({ a: normal(12, 210, 4), b: normal(12, 200, 4) }, 4)), []);
    expect(three.design.order).toBe('mini-blocks');
    expect(only(three).credit).toBe('contender');
  });
});

describe('(iii) drift that is surely there and moves the gap by half of what matters', () => {
  // Places 1, 2 apart over 24 shots in the same order: mean positions differ by 1. A slope b moves the gap by b.
  const drifted = (slopeYards: number, noise: number): Findings => {
    const swings = Array.from({ length: 24 }, (_, place): Swing => {
      const contender = place % 2 === 0 ? 'a' : 'b';
      return {
        contender,
        values: { carry: yd(200 + slopeYards * place + noise * (place % 4 === 1 ? 1 : -1)) },
      };
    });
    return analyse(inputFor(swings), []);
  };

  test('is open where it moves the gap by m/2 or more', () => {
    expect(opened(drifted(3, 0.5))).toEqual(['order-drift']);
  });

  test('is credited where it moves the gap by less', () => {
    expect(opened(drifted(2.3, 0.5))).toEqual([]);
  });

  const facts = {
    a: 'a',
    b: 'b',
    matters: 5,
    order: hitOrder(sessionOf(inTurn({ a: [1, 2, 3], b: [1, 2, 3] })), null),
    sequences: [[...'ababab']],
    ...plain,
  };
  const drift = (slope: number, lower: number, upper: number) => [
    { hitter: 'one', sequence: [...'ababab'], slope, ci: [lower, upper] as const },
  ];

  test.each([
    ['interval off zero, just m/2', 2.5, 0.1, 4.9, 'drift'],
    ['interval off zero, the other way', -2.5, -4.9, -0.1, 'drift'],
    ['interval off zero, a hair less', 2.499999, 0.1, 4.9, null],
    ['interval at zero', 2.5, 0, 5, null],
    ['interval across zero, slope far over m/2', 9, -0.1, 18.1, null],
  ])('%s', (_name, slope, lower, upper, because) => {
    expect(creditOf({ ...facts, drifts: drift(slope, lower, upper) })).toEqual({
      credit: because === null ? 'contender' : 'open',
      because,
    });
  });
});

describe('lever of a quarter', () => {
  test.each([
    ['mixed', 'lever'],
    ['rotation-same-order', null],
    ['rotation-order-changed', null],
    ['mini-blocks', 'lever'],
  ] as const)('of %s', (kind, because) => {
    // a at places 1, 2, 4 and b at 3, 5, 6: |7/3 - 14/3| / 5 = 0.467
    const sequence = [...'aababb'];
    const order = { kind, rounds: null, sequence: null, fewestVisits: 3, rowsInHitOrder: true, turns: [] };
    expect(
      creditOf({ a: 'a', b: 'b', matters: 5, order, drifts: [], sequences: [sequence], ...plain }).because,
    ).toBe(because);
  });

  test('of exactly a quarter is open, of a little less not', () => {
    const order = {
      kind: 'mixed' as const,
      rounds: null,
      sequence: null,
      fewestVisits: null,
      rowsInHitOrder: true,
      turns: [],
    };
    const because = (sequence: string): string | null =>
      creditOf({ a: 'a', b: 'b', matters: 5, order, drifts: [], sequences: [[...sequence]], ...plain })
        .because;
    // a at 1, 3, 5, 7 (mean 4), b at 4, 8 (mean 6): 2 / 8; one more place makes it 2 / 9
    expect(because('acabacabc')).toBe('lever');
    expect(because('acabacabcc')).toBeNull();
  });
});

describe('a long lever in mixed order', () => {
  // lever over a quarter, b mostly later
  const sequence = [...'aaaabaaaaabaabbabbbbbabbbb'];
  const hit = (gap: number, drift: number): Findings =>
    analyse(
      inputFor(
        sequence.map((contender, place): Swing => ({
          contender,
          values: {
            carry: yd(
              200 + (contender === 'a' ? gap : 0) + (drift * place) / 25 + 2 * Math.sin(place * 2.399963),
            ),
          },
        })),
      ),
      [],
    );

  test('is credited where the gap is still there with a steady drift taken out', () => {
    expect(only(hit(12, 0))).toMatchObject({ credit: 'contender', verdict: 'clear' });
  });

  test('is open where the drift made it, or nothing is seen', () => {
    expect(only(hit(0, -25))).toMatchObject({ credit: 'open', openBecause: 'lever' });
    expect(only(hit(0, 0))).toMatchObject({ credit: 'open', openBecause: 'lever', status: 'cannot-tell' });
  });

  test('is open where taking the drift out turns it round', () => {
    const made = only(hit(-6, -40));
    expect(made.estimate).toBeGreaterThan(0);
    expect(made).toMatchObject({ credit: 'open' });
  });
});

describe('credit by what the shop states, where rows are not in hit order', () => {
  test.each<readonly [StatedOrder, string, OverlayId[]]>([
    ['random', 'stated-random', []],
    ['rotation', 'stated-rotation', []],
    ['mini-blocks', 'stated-mini-blocks', ['order-few-visits']],
    ['one-after-another', 'stated-one-after-another', ['one-after-another']],
    ['unknown', 'unknown', ['order-unknown']],
  ])('%s', (statedOrder, kind, overlays) => {
    // the rows lie one after another, as sorted files do; what is stated counts
    const findings = analyse(inputFor(oneAfterAnother(carries), { statedOrder }), []);
    expect(findings.design.order).toBe(kind);
    expect(opened(findings)).toEqual(overlays);
    expect(only(findings).credit).toBe(overlays.length === 0 ? 'contender' : 'open');
  });
});

describe('several hitters', () => {
  test('are as exposed as the most exposed of them', () => {
    const swings = [...inTurn(carries, 'one'), ...oneAfterAnother(carries, 'two')];
    const findings = analyse(inputFor(swings), []);
    expect(findings.design.order).toBe('one-after-another');
    expect(only(findings).credit).toBe('open');
  });

  test('one who hit far fewer than usual does not decide', () => {
    const few = oneAfterAnother({ a: carries.a.slice(0, 5), b: carries.b.slice(0, 5) }, 'short');
    const order = (swings: readonly Swing[]): string => analyse(inputFor(swings), []).design.order;
    const three = ['one', 'two', 'three'].flatMap((hitter) => inTurn(carries, hitter));
    expect(order([...three, ...few])).toBe('rotation-same-order');
    const half = oneAfterAnother({ a: carries.a.slice(0, 6), b: carries.b.slice(0, 6) }, 'half');
    expect(order([...three, ...half])).toBe('one-after-another');
  });

  test('who each hit in rounds, but not in the same order, are not said to have', () => {
    const order = (swings: readonly Swing[]): string =>
      analyse(inputFor(swings, { contenders: ['a', 'b'] }), []).design.order;
    const [a, b] = [carries.a, carries.b];
    const always = (hitter: string): Swing[] => inTurn({ a, b }, hitter);
    const turned = (hitter: string): Swing[] => inTurn({ b, a }, hitter);
    const changing = (hitter: string): Swing[] =>
      always(hitter).flatMap((swing, index, all) => {
        const other = all[index % 4 === 2 ? index + 1 : index % 4 === 3 ? index - 1 : index];
        return other === undefined ? [swing] : [other];
      });
    expect(order([...always('one'), ...always('two')])).toBe('rotation-same-order');
    expect(order([...changing('one'), ...changing('two')])).toBe('rotation-order-changed');
    expect(order([...always('one'), ...turned('two')])).toBe('rotation-orders-differ');
    expect(order([...always('one'), ...changing('two'), ...changing('three')])).toBe(
      'rotation-orders-differ',
    );
    const findings = analyse(inputFor([...always('one'), ...turned('two')], { contenders: ['a', 'b'] }), []);
    expect(only(findings).credit).toBe('contender');
  });

  test('who hit them in different orders have no order to be named', () => {
    const [a, b] = [carries.a, carries.b];
    const swings = [...oneAfterAnother({ a, b }, 'one'), ...oneAfterAnother({ b, a }, 'two')];
    const { design } = analyse(inputFor(swings, { contenders: ['a', 'b'] }), []);
    expect(design).toMatchObject({ order: 'one-after-another', sequence: null });
    const same = [...oneAfterAnother({ a, b }, 'one'), ...oneAfterAnother({ a, b }, 'two')];
    expect(analyse(inputFor(same), []).design.sequence).toEqual(['a', 'b']);
  });
});

describe('left-out shots', () => {
  test('still take their turn in the order', () => {
    const swings = inTurn(carries).map((swing, index) => ({ ...swing, leftOut: index === 4 || index === 9 }));
    const findings = analyse(inputFor(swings), []);
    expect(findings.design.order).toBe('rotation-same-order');
    expect(findings.contenders).toEqual([
      { id: 'a', label: 'a', shots: 12, excluded: 1 },
      { id: 'b', label: 'b', shots: 12, excluded: 1 },
    ]);
  });
});
