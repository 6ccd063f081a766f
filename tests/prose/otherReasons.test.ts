import { describe, expect, test } from 'vitest';
import type { Hold, MetricFindings, PairFindings } from '../../src/findings/findings.ts';
import { tellOtherReasons } from '../../src/prose/english/otherReasons.ts';
import { otherReasons } from '../../src/prose/otherReasons.ts';
import type { Telling } from '../../src/prose/telling.ts';
import { toCanonical } from '../../src/trade/units.ts';
import { metricOf, pairOf, tellingFor, type Told } from './tellings.ts';

const yd = (yards: number): number => toCanonical(yards, 'yd');
const gap = (estimate: number, low: number, high: number) => ({
  estimate: yd(estimate),
  ci: [yd(low), yd(high)] as const,
});
const hold = (check: Hold['check'], state: Hold['state'], numbers: ReturnType<typeof gap>): Hold => ({
  check,
  state,
  ...numbers,
});
const names = { a: 'Heron', b: 'Wren', c: 'Plover' };

function rowsOf(metric: MetricFindings, change: (telling: Telling) => Telling = (telling) => telling) {
  const telling = change(tellingFor([metric], { names, varied: 'ball' }));
  const reasons = otherReasons(metric, telling.findings);
  if (reasons === null) return null;
  const { caption, rows } = tellOtherReasons(reasons, telling);
  return {
    caption,
    rows: Object.fromEntries(
      rows.map(({ check, numbers, words, holds }) => [
        check,
        [...(numbers === null ? [words] : [numbers.difference, numbers.range]), holds],
      ]),
    ),
  };
}

/** Heron 12 yards past Wren, likely 9 to 15. */
const pair = (rest: Partial<PairFindings> = {}, told: Partial<Told> = {}): MetricFindings =>
  metricOf({ metric: 'carry', verdict: 'clear', ...told, pair: { ...gap(12, 9, 15), ...rest } });

/** The same beside a third that is level with Heron and behind none. */
function three(own: Partial<PairFindings>, second: Partial<PairFindings>): MetricFindings {
  const metric = pair(own);
  const [first] = metric.byContender;
  if (first === undefined) throw new Error('a contender');
  const more = (a: string, b: string): PairFindings => ({
    ...pairOf({ metric: 'carry', verdict: 'clear', pair: { ...gap(8, 5, 11), ...second } }),
    a,
    b,
    ahead: a,
  });
  return {
    ...metric,
    byContender: [...metric.byContender, { ...first, id: 'c' }],
    pairs: [...metric.pairs, more('a', 'c'), more('c', 'b')],
  };
}

describe('two of them', () => {
  test('the printed answer stands first, each check under it, the order and chance always', () => {
    expect(
      rowsOf(
        pair({
          holds: [
            hold('usual-strikes', 'agrees', gap(11.6, 8, 15)),
            hold('by-rounds', 'narrow', gap(12, -0.2, 24)),
            hold('drift-taken-out', 'fails', gap(-3, -8, 2)),
          ],
          leaveOneOut: [yd(10.6), yd(12.8)],
        }),
      ),
    ).toEqual({
      caption: 'Carry: Heron and Wren',
      rows: {
        'as-printed': ['12 yards for Heron', '9 to 15 yards', ''],
        'usual-strikes': ['12 yards for Heron', '8 to 15 yards', 'yes'],
        'by-rounds': [
          '12 yards for Heron',
          'anything from 24 yards for Heron to almost nothing for Wren',
          'not sharply',
        ],
        'drift-taken-out': ['3 yards for Wren', 'anything from 2 yards for Heron to 8 for Wren', 'no'],
        'one-shot-out': ['The difference stays between 10 and 13 yards.', 'yes'],
        order: ['In rounds, one of each, the order changing from round to round.', 'yes'],
        chance: [
          'Two identical balls would typically come out about 3 yards apart in carry by chance, and more than 7 in one test of 20.',
          'likely ranges allow for it',
        ],
      },
    });
  });

  test('one stray shot that decides takes the answer away', () => {
    const told = rowsOf(pair({ leaveOneOut: [yd(2), yd(12.8)] }, { overlays: ['rests-on-one-shot'] }));
    expect(told?.rows['one-shot-out']).toEqual(['The difference stays between 2 and 13 yards.', 'no']);
  });

  test('where nothing was seen, nothing is there to hold', () => {
    const metric = metricOf({
      metric: 'carry',
      verdict: 'too-close',
      pair: { ...gap(1, -3, 5), byRounds: gap(1, -4, 6), leaveOneOut: [yd(-1), yd(2)] },
    });
    const told = rowsOf(metric);
    expect(told?.rows['by-rounds']?.at(-1)).toBe('no difference to hold');
    expect(told?.rows['one-shot-out']?.at(-1)).toBe('no difference to hold');
  });

  test('an order that could have made the difference takes the answer away, with the drift that it would take', () => {
    const told = rowsOf(pair({ driftNeeded: yd(-15) }, { open: true, overlays: ['order-lever'] }));
    expect(told?.rows['order']).toEqual([
      'In rounds, one of each, the order changing from round to round. A steady drift of about 15 yards from the first shot to the last would alone make the difference.',
      'no',
    ]);
  });

  test("the monitor's error and equal club speed hold while the range stays on one side", () => {
    const told = rowsOf(
      pair({
        device: { accuracy: yd(3), ci: [yd(-1), yd(25)], near: true },
        atEqualSpeed: gap(10, 6, 14),
      }),
    );
    expect(told?.rows['monitor-error']).toEqual([
      '12 yards for Heron',
      'anything from 25 yards for Heron to 1 for Wren',
      'no',
    ]);
    expect(told?.rows['equal-speed']).toEqual(['10 yards for Heron', '6 to 14 yards', 'yes']);
  });

  test('a thing that is swung has a part in the speed of the club', () => {
    const metric = pair({ atEqualSpeed: gap(2, -2, 6) });
    const telling = tellingFor([metric], { names, varied: 'head' });
    const reasons = otherReasons(metric, telling.findings);
    if (reasons === null) throw new Error('something was judged');
    const { rows } = tellOtherReasons(reasons, telling);
    expect(rows.find(({ check }) => check === 'equal-speed')?.holds).toBe(
      'no, but club speed is partly the doing of the head',
    );
  });

  test('shots left out are counted in, whoever is ahead with them', () => {
    const withOut = (telling: Telling): Telling => ({
      ...telling,
      findings: {
        ...telling.findings,
        contenders: telling.findings.contenders.map((one) => ({ ...one, excluded: one.id === 'a' ? 2 : 0 })),
      },
    });
    const told = rowsOf(pair({ withLeftOut: { ...gap(-3, -8, 2), verdict: 'too-close' } }), withOut);
    expect(told?.rows['left-out-counted']).toEqual([
      '3 yards for Wren',
      'anything from 2 yards for Heron to 8 for Wren',
      'no',
    ]);
    expect(rowsOf(pair())?.rows['left-out-counted']).toBeUndefined();
  });

  test('nothing is told where nothing was judged', () => {
    expect(rowsOf(metricOf({ metric: 'carry', verdict: 'not-judged' }))).toBeNull();
  });
});

describe('three of them', () => {
  const agrees = { holds: [hold('by-rounds', 'agrees', gap(12, 8, 16))] };
  const fails = { holds: [hold('by-rounds', 'fails', gap(3, -3, 9))] };

  test('numbers are of the first pair, what holds is said of all', () => {
    const told = rowsOf(three(agrees, agrees));
    expect(told?.caption).toBe('Carry: numbers of Heron and Wren, what holds of every pair');
    expect(told?.rows['by-rounds']).toEqual([
      '12 yards for Heron',
      '8 to 16 yards',
      'yes, in all three pairs',
    ]);
  });

  test('pairs that come out otherwise are named', () => {
    expect(rowsOf(three(agrees, fails))?.rows['by-rounds']?.at(-1)).toBe(
      'yes for Heron and Wren; no for Heron and Plover and for Plover and Wren',
    );
  });
});

describe('the swing', () => {
  const swung =
    (answer: 'same' | 'different') =>
    (telling: Telling): Telling => ({
      ...telling,
      findings: {
        ...telling.findings,
        swing: {
          metric: 'carry',
          margin: yd(2),
          level: 0.95,
          measures: [
            {
              id: 'club_speed',
              pricedBy: 'flight-model',
              perUnit: null,
              pairs: [{ a: 'a', b: 'b', estimate: 1, ci: [0.5, 1.5], worth: null, across: null, answer }],
            },
          ],
        },
      },
    });

  test('is the same, or not known to be', () => {
    expect(rowsOf(pair(), swung('same'))?.rows['swing']?.at(-1)).toBe('yes');
    expect(rowsOf(pair(), swung('different'))?.rows['swing']).toEqual([
      "Club speed differed between balls by enough to matter. That was the golfer's doing, and we cannot separate it from the ball.",
      'not known',
    ]);
    expect(rowsOf(pair())?.rows['swing']).toBeUndefined();
  });
});
