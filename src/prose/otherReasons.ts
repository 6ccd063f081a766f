import type { Findings, Hold, Interval, MetricFindings, OrderKind } from '../findings/findings.ts';
import { primaryMetrics } from './answers.ts';
import { checksOf, type Check, type PairChecks } from './checks.ts';
import { pairAnswers } from './pairAnswer.ts';
import { chanceOf, type Chance } from './reach.ts';
import type { About, Difference, PairAnswer } from './statement.ts';
import { swingSummary, type SwingSummary } from './swing.ts';

/** Whether the printed answer about a pair is still there; null where there is none that a check could take away. */
export interface Held {
  readonly answer: PairAnswer;
  readonly holds: 'yes' | 'no' | 'not-sharply' | null;
}

/** What else could have made the answers in one metric; numbers are of the pair told first, SI, towards the one ahead. */
export type Reason =
  | {
      readonly check: 'as-printed' | Hold['check'] | 'equal-speed' | 'monitor-error';
      readonly difference: Difference;
      readonly held: readonly Held[];
    }
  | { readonly check: 'one-shot-out'; readonly range: Interval; readonly held: readonly Held[] }
  | {
      readonly check: 'left-out-counted';
      readonly shots: number;
      /** Null where no shot of the pair told first was left out. */
      readonly difference: Difference | null;
      readonly held: readonly Held[];
    }
  | {
      readonly check: 'order';
      readonly order: OrderKind;
      /** The steady drift that alone would make the difference of the pair told first, where the order could have made it. */
      readonly drift: number | null;
      readonly held: readonly Held[];
    }
  | { readonly check: 'swing'; readonly summary: SwingSummary }
  | { readonly check: 'chance'; readonly chance: Chance };

/** All that the answers in one metric were checked by. */
export interface OtherReasons {
  readonly kind: 'other-reasons';
  readonly about: Extract<About, { readonly of: 'metric' }>;
  /** The surest answer, whose numbers are told. */
  readonly first: PairAnswer;
  readonly reasons: readonly Reason[];
}

const otherWays: readonly Hold['check'][] = ['usual-strikes', 'by-rounds', 'drift-taken-out'];

/** What else could have made the answers in a metric; null where nothing of it was judged. */
export function otherReasons(metric: MetricFindings, findings: Findings): OtherReasons | null {
  const answers = pairAnswers(metric, findings.design);
  const first = answers.find(({ difference }) => difference !== null);
  const difference = first?.difference ?? null;
  if (first === undefined || difference === null) return null;
  const checks = checksOf(metric, findings);
  const ofFirst = checks.find(({ answer }) => isSamePair(answer, first))?.checks ?? [];
  const chance = chanceOf(metric);
  return {
    kind: 'other-reasons',
    about: { of: 'metric', metric: metric.id },
    first,
    reasons: [
      { check: 'as-printed', difference, held: [] },
      ...otherWays.flatMap((check) => wayReason(check, ofFirst, checks)),
      ...ofFirst.flatMap((check) => ownReason(check, checks)),
      ...leftOutReason(first, checks, findings),
      orderReason(answers, ofFirst, findings),
      // One swing was made for all measures, and is told once.
      ...(findings.swing === null || primaryMetrics(findings)[0]?.id !== metric.id
        ? []
        : [{ check: 'swing', summary: swingSummary(findings.swing) } as const]),
      ...(chance === null ? [] : [{ check: 'chance', chance } as const]),
    ],
  };
}

function isSamePair({ about }: PairAnswer, { about: other }: PairAnswer): boolean {
  return about.a === other.a && about.b === other.b;
}

function wayReason(
  check: Hold['check'],
  ofFirst: readonly Check[],
  checks: readonly PairChecks[],
): readonly Reason[] {
  const wayOf = (own: readonly Check[]) =>
    own.flatMap((one) => (one.kind === 'other-ways' ? one.ways : [])).find((way) => way.check === check);
  const way = wayOf(ofFirst);
  if (way === undefined) return [];
  const held = checks.flatMap(({ answer, checks: own }): Held[] => {
    const found = wayOf(own);
    return found === undefined ? [] : [{ answer, holds: found.holds }];
  });
  return [{ check, difference: way.difference, held }];
}

/** Checks that the pair told first has to itself. */
function ownReason(check: Check, checks: readonly PairChecks[]): readonly Reason[] {
  switch (check.kind) {
    case 'one-shot-out':
      return [{ check: 'one-shot-out', range: check.range, held: heldIn(checks, 'one-shot-out') }];
    case 'monitor-error':
      return [
        {
          check: 'monitor-error',
          // It widens a range to both sides alike.
          difference: { estimate: (check.ci[0] + check.ci[1]) / 2, ci: check.ci },
          held: heldIn(checks, 'monitor-error'),
        },
      ];
    case 'equal-speed':
      return [{ check: 'equal-speed', difference: check.difference, held: heldIn(checks, 'equal-speed') }];
    case 'other-ways':
    case 'left-out-counted':
    case 'drift-needed':
      return [];
  }
}

/** Whether the difference of each pair, where one was seen, is still one after a check. */
function heldIn(
  checks: readonly PairChecks[],
  kind: 'one-shot-out' | 'monitor-error' | 'equal-speed',
): readonly Held[] {
  return checks.flatMap(({ answer, checks: own }) =>
    own.flatMap((check): Held[] => {
      if (check.kind !== kind) return [];
      if (answer.alike) return [{ answer, holds: null }];
      const holds =
        check.kind === 'one-shot-out'
          ? !check.decides
          : (check.kind === 'equal-speed' ? check.difference.ci : check.ci)[0] > 0;
      return [{ answer, holds: holds ? 'yes' : 'no' }];
    }),
  );
}

function leftOutReason(
  first: PairAnswer,
  checks: readonly PairChecks[],
  { contenders }: Findings,
): readonly Reason[] {
  const shots = contenders.reduce((sum, { excluded }) => sum + excluded, 0);
  const counted = checks.flatMap(({ answer, checks: own }) =>
    own.flatMap((check) => (check.kind === 'left-out-counted' ? [{ answer, check }] : [])),
  );
  if (shots === 0 || counted.length === 0) return [];
  const own = counted.find(({ answer }) => isSamePair(answer, first))?.check.whole ?? null;
  return [
    {
      check: 'left-out-counted',
      shots,
      difference: own === null ? null : towards(first, own),
      held: counted.map(({ answer, check }) => ({ answer, holds: check.same ? 'yes' : 'no' })),
    },
  ];
}

/** The difference of an answer counted towards the one that another answer about the same pair has ahead. */
function towards({ ahead }: PairAnswer, { ahead: own, difference }: PairAnswer): Difference | null {
  if (difference === null || own === ahead) return difference;
  const { estimate, ci } = difference;
  return { estimate: -estimate, ci: [-ci[1], -ci[0]] };
}

function orderReason(
  answers: readonly PairAnswer[],
  ofFirst: readonly Check[],
  { design }: Findings,
): Reason {
  const drift = ofFirst.find((check) => check.kind === 'drift-needed')?.drift ?? null;
  return {
    check: 'order',
    order: design.order,
    drift,
    held: answers.flatMap((answer): Held[] =>
      answer.status === 'not-judged' ? [] : [{ answer, holds: answer.because === null ? 'yes' : 'no' }],
    ),
  };
}
