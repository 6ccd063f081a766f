import type { Hold, MetricFindings, PairFindings } from '../../src/findings/findings.ts';
import type { VerdictId } from '../../src/findings/verdict.ts';
import { toCanonical } from '../../src/trade/units.ts';
import { metricOf, pairOf, type Told } from '../prose/tellings.ts';

const yd = (yards: number): number => toCanonical(yards, 'yd');
const hold = (check: Hold['check'], state: Hold['state']): Hold => ({
  check,
  state,
  estimate: yd(12),
  ci: state === 'agrees' ? [yd(4), yd(20)] : [-yd(1), yd(25)],
});

/** What may be said of a pair that is worked out in other ways, left out shots and monitors included. */
export const changes: readonly {
  readonly name: string;
  readonly told: Told;
  readonly metric?: Partial<MetricFindings>;
}[] = (
  [
    ['all agree', 'clear', {}],
    [
      'agrees in three',
      'clear',
      {
        holds: [
          hold('usual-strikes', 'agrees'),
          hold('by-rounds', 'narrow'),
          hold('drift-taken-out', 'agrees'),
        ],
        leaveOneOut: [yd(10), yd(14)],
      },
    ],
    ['agrees in one', 'size-unsure', { holds: [hold('usual-strikes', 'agrees')] }],
    [
      'fails in one of two',
      'size-unsure',
      {
        holds: [hold('usual-strikes', 'agrees'), hold('by-rounds', 'fails')],
        leaveOneOut: [yd(8.6), yd(9.4)],
      },
    ],
    [
      'fails in two of three',
      'size-unsure',
      {
        holds: [
          hold('usual-strikes', 'fails'),
          hold('by-rounds', 'fails'),
          hold('drift-taken-out', 'agrees'),
        ],
        overlays: ['leans'],
      },
    ],
    ['fails in one of one', 'small', { holds: [hold('usual-strikes', 'fails')], overlays: ['leans'] }],
    [
      'fails in all three',
      'level',
      {
        holds: [hold('usual-strikes', 'fails'), hold('by-rounds', 'fails'), hold('drift-taken-out', 'fails')],
        overlays: ['leans'],
      },
    ],
    ['rests on one shot', 'size-unsure', { leaveOneOut: [yd(4), yd(9)], overlays: ['rests-on-one-shot'] }],
    ['range across nothing', 'too-close', { leaveOneOut: [yd(-1.4), yd(5)] }],
    [
      'left-out shots change nothing',
      'clear',
      { withLeftOut: { estimate: yd(11), ci: [yd(6), yd(16)], verdict: 'clear' } },
    ],
    [
      'left-out shots change the answer',
      'clear',
      {
        withLeftOut: { estimate: yd(6), ci: [yd(-2), yd(14)], verdict: 'too-close' },
        overlays: ['depends-on-left-out'],
      },
    ],
    [
      'left-out shots turn the answer round',
      'size-unsure',
      {
        withLeftOut: { estimate: yd(-7), ci: [yd(-13), yd(-1)], verdict: 'size-unsure' },
        overlays: ['depends-on-left-out'],
      },
    ],
    ['monitor', 'clear', { device: { accuracy: yd(2), ci: [yd(4), yd(20)], near: false } }],
    [
      'monitor, near',
      'size-unsure',
      { device: { accuracy: yd(2.5), ci: [yd(-0.2), yd(18.2)], near: true }, overlays: ['near-device'] },
    ],
  ] as const satisfies readonly (readonly [string, VerdictId, Partial<PairFindings>])[]
).map(([name, verdict, pair]) => ({ name, told: { metric: 'carry', verdict, pair } }));

type Row = readonly [a: string, b: string, verdict: VerdictId];

function group(
  ids: string,
  rows: readonly Row[],
  leading: readonly string[] | null,
  rest: Partial<PairFindings> = {},
): MetricFindings {
  const plain = metricOf({ metric: 'carry', verdict: 'clear' });
  const [summary] = plain.byContender;
  if (summary === undefined) throw new Error('no summary');
  return {
    ...plain,
    byContender: [...ids].map((id) => ({ ...summary, id })),
    pairs: rows.map(([a, b, verdict]) => ({ ...pairOf({ metric: 'carry', verdict }), a, b, ...rest })),
    leading,
  };
}

/** Four and five contenders, pairs told from the one with more. */
export const groups: readonly { readonly name: string; readonly metric: MetricFindings }[] = [
  {
    name: 'two ahead, two behind, one between',
    metric: group(
      'abcde',
      [
        ['a', 'b', 'too-close'],
        ['a', 'c', 'clear'],
        ['a', 'd', 'clear'],
        ['a', 'e', 'too-close'],
        ['b', 'c', 'too-close'],
        ['b', 'd', 'size-unsure'],
        ['e', 'b', 'too-close'],
        ['c', 'd', 'too-close'],
        ['e', 'c', 'clear'],
        ['e', 'd', 'clear'],
      ],
      ['a', 'b', 'e'],
    ),
  },
  {
    name: 'one ahead of three, sizes differ',
    metric: group(
      'abcd',
      [
        ['a', 'b', 'small'],
        ['a', 'c', 'clear'],
        ['a', 'd', 'size-unsure'],
        ['b', 'c', 'too-close'],
        ['b', 'd', 'too-close'],
        ['c', 'd', 'level'],
      ],
      ['a'],
    ),
  },
  {
    name: 'nobody behind',
    metric: group(
      'abcd',
      [
        ['a', 'b', 'too-close'],
        ['a', 'c', 'too-close'],
        ['a', 'd', 'level'],
        ['b', 'c', 'too-close'],
        ['b', 'd', 'too-close'],
        ['c', 'd', 'level'],
      ],
      ['a', 'b', 'c', 'd'],
    ),
  },
  {
    name: 'order open',
    metric: group(
      'abcd',
      [
        ['a', 'b', 'clear'],
        ['a', 'c', 'clear'],
        ['a', 'd', 'clear'],
        ['b', 'c', 'too-close'],
        ['b', 'd', 'too-close'],
        ['c', 'd', 'level'],
      ],
      null,
      { credit: 'open', overlays: ['one-after-another'] },
    ),
  },
  {
    name: 'order open, no gap seen',
    metric: group('abcd', everyPair('level'), null, { credit: 'open', overlays: ['order-drift'] }),
  },
  { name: 'nothing that matters', metric: group('abcd', everyPair('level'), ['a', 'b', 'c', 'd']) },
];

function everyPair(verdict: VerdictId): Row[] {
  return ['ab', 'ac', 'ad', 'bc', 'bd', 'cd'].map((pair): Row => [pair.charAt(0), pair.charAt(1), verdict]);
}
