import { aheadBy, statusOf } from '../findings/answerStatus.ts';
import type { Findings, Hold, Interval, MetricFindings, PairFindings } from '../findings/findings.ts';
import { differenceTowards, intervalTowards } from './countedTowards.ts';
import { pairAnswer, pairAnswers } from './pairAnswer.ts';
import type { Difference, PairAnswer } from './statement.ts';

/** Another way to work a difference out, and whether the printed answer is still there; null where none was given. */
export interface OtherWay {
  readonly check: Hold['check'];
  readonly holds: 'yes' | 'no' | 'not-sharply' | null;
  /** Counted towards the one ahead. */
  readonly difference: Difference;
}

/** What a pair's answer does when something else is taken into account; SI, counted towards the one ahead. */
export type Check =
  | { readonly kind: 'other-ways'; readonly ways: readonly OtherWay[] }
  | { readonly kind: 'one-shot-out'; readonly range: Interval; readonly decides: boolean }
  | {
      readonly kind: 'left-out-counted';
      /** Shots left out with either of the pair; 0 where only others' were. */
      readonly shots: number;
      readonly whole: PairAnswer;
      readonly same: boolean;
    }
  | { readonly kind: 'monitor-error'; readonly accuracy: number; readonly ci: Interval }
  | { readonly kind: 'equal-speed'; readonly difference: Difference }
  | { readonly kind: 'drift-needed'; readonly drift: number };

/** The answer about a pair and all that it was checked by. */
export interface PairChecks {
  readonly kind: 'pair-checks';
  readonly answer: PairAnswer;
  readonly checks: readonly Check[];
}

/**
 * What the other ways of working a difference out are worth: of 100 differences, how many made by chance pass them, and
 * how many true ones; null where that was not tried. Simulated, 12 shots with each, normal scatter.
 */
export interface ChecksWorth {
  readonly kind: 'checks-worth';
  readonly byChance: number;
  readonly real: number | null;
}

/** What the other ways are worth in this metric; null where no answer was held against them. */
export function checksWorth({ pairs, byContender }: MetricFindings): ChecksWorth | null {
  if (pairs.every(({ holds }) => holds.length === 0)) return null;
  return byContender.length === 2
    ? { kind: 'checks-worth', byChance: 88, real: 98 }
    : { kind: 'checks-worth', byChance: 60, real: null };
}

/** The pairs of a metric that were checked by anything, the surest first. */
export function checksOf(metric: MetricFindings, findings: Findings): readonly PairChecks[] {
  return pairAnswers(metric, findings.design).flatMap((answer) => {
    const { a, b } = answer.about;
    const pair = metric.pairs.find((one) => one.a === a && one.b === b);
    const checks = pair === undefined ? [] : checksOfPair(pair, answer, metric, findings);
    return checks.length === 0 ? [] : [{ kind: 'pair-checks', answer, checks } as const];
  });
}

function checksOfPair(
  pair: PairFindings,
  answer: PairAnswer,
  metric: MetricFindings,
  findings: Findings,
): readonly Check[] {
  if (pair.estimate === null) return [];
  const ways = otherWays(pair, answer);
  const { leaveOneOut, device, atEqualSpeed, driftNeeded } = pair;
  return [
    ...(ways.length === 0 ? [] : [{ kind: 'other-ways', ways } as const]),
    ...(leaveOneOut === null
      ? []
      : [
          {
            kind: 'one-shot-out',
            range: intervalTowards(answer, leaveOneOut),
            decides: pair.overlays.includes('rests-on-one-shot'),
          } as const,
        ]),
    ...leftOutCounted(pair, metric, findings),
    ...(device === null
      ? []
      : [
          {
            kind: 'monitor-error',
            accuracy: device.accuracy,
            ci: intervalTowards(answer, device.ci),
          } as const,
        ]),
    ...(atEqualSpeed === null
      ? []
      : [{ kind: 'equal-speed', difference: differenceTowards(answer, atEqualSpeed) } as const]),
    ...(driftNeeded === null ? [] : [{ kind: 'drift-needed', drift: driftNeeded } as const]),
  ];
}

/** Each other way with its numbers; rounds stand beside every pair that has them, also where there was nothing to hold. */
function otherWays({ holds, byRounds }: PairFindings, answer: PairAnswer): readonly OtherWay[] {
  const ways = holds.map(({ check, state, estimate, ci }): OtherWay => ({
    check,
    holds: state === 'agrees' ? 'yes' : state === 'narrow' ? 'not-sharply' : 'no',
    difference: differenceTowards(answer, { estimate, ci }),
  }));
  if (byRounds === null || ways.some(({ check }) => check === 'by-rounds')) return ways;
  return [...ways, { check: 'by-rounds', holds: null, difference: differenceTowards(answer, byRounds) }];
}

/** Told where a shot of either was left out, and where the answer of a pair turns with shots of others. */
function leftOutCounted(
  pair: PairFindings,
  metric: MetricFindings,
  { contenders, design }: Findings,
): readonly Check[] {
  const { withLeftOut } = pair;
  if (withLeftOut === null) return [];
  const shots = contenders
    .filter(({ id }) => id === pair.a || id === pair.b)
    .reduce((sum, { excluded }) => sum + excluded, 0);
  const same = withLeftOut.verdict === pair.verdict;
  if (same && shots === 0) return [];
  const { estimate, verdict } = withLeftOut;
  const side = aheadBy(estimate, metric.better);
  // The order is what it was; how the difference holds was worked out without those shots.
  const status = statusOf({ verdict, credit: pair.credit, leans: false });
  const ahead = side === null ? null : pair[side];
  const whole = pairAnswer({ ...pair, ...withLeftOut, status, ahead, holds: [] }, metric, design);
  return [{ kind: 'left-out-counted', shots, whole, same }];
}
