import { at } from '../stats/at.ts';
import { gamesHowellPair } from '../stats/gamesHowell.ts';
import { once } from '../stats/onceEach.ts';
import { trimmedMoments } from '../stats/trimmedMoments.ts';
import type { Hold, Interval } from './findings.ts';
import type { Gap } from './gap.ts';
import { atLeastRounding } from './shotGaps.ts';
import type { OrderedSamples } from './orderedSamples.ts';
import {
  confidence,
  fewestErrorDf,
  fewestForUsualStrikes,
  fewestRoundsForCheck,
  fewestShotsJudged,
  fewestVisitsForCheck,
  narrowConfidence,
} from './thresholds.ts';
import { turnGaps } from './turnGap.ts';
import { verdictOf } from './verdict.ts';
import type { WithoutDrift } from './withoutDrift.ts';

interface HoldFacts extends OrderedSamples {
  readonly step: number;
  /** SI. */
  readonly matters: number;
  readonly withoutDrift: WithoutDrift;
}

/** A gap worked out in another way at a level: its interval, or null where that way cannot be gone. */
type OtherWay = (level: number) => { readonly estimate: number; readonly ci: Interval } | null;

/** The other ways of one metric, which all pairs share; null where a way cannot be gone. */
interface OtherWays {
  readonly usualStrikes: (gap: Gap) => OtherWay | null;
  readonly byRounds: (gap: Gap) => OtherWay | null;
}

/**
 * The gap of a pair worked out in up to three other ways from the same shots: without the extreme strikes, by
 * rounds, with a steady drift taken out. Only for one hitter, and only for verdicts that say something. What pairs
 * share is worked out once, when the first of them asks.
 */
export function holdsFor(facts: HoldFacts): (gap: Gap, credited: boolean) => readonly Hold[] {
  const shared = once((): OtherWays => ({
    usualStrikes: usualStrikes(facts),
    byRounds: byRounds(facts),
  }));
  return (gap, credited) => {
    const verdict = verdictOf(gap.estimate, gap.ci, facts.matters);
    if (facts.session.hitters.length !== 1 || verdict === 'too-close' || verdict === 'not-judged') return [];
    const { usualStrikes: trimmed, byRounds: turns } = shared();
    const ways: readonly (readonly [Hold['check'], OtherWay | null])[] = [
      ['usual-strikes', trimmed(gap)],
      // Judged by rounds, the same again would be no other way.
      ['by-rounds', gap.method === 'paired-rounds' ? null : turns(gap)],
      ['drift-taken-out', credited ? (level) => facts.withoutDrift(gap, level) : null],
    ];
    return ways.flatMap(([check, way]): Hold[] => {
      if (way === null) return [];
      const little = verdict === 'level' || verdict === 'small';
      const found = little ? heldToLittle(way, facts.matters) : heldToGap(gap, way);
      return found === null ? [] : [{ check, ...found }];
    });
  };
}

/** Whether most of the other ways disagree, so that the headline only leans. */
export function onlyLeans(holds: readonly Pick<Hold, 'state'>[]): boolean {
  const failed = holds.filter(({ state }) => state === 'fails').length;
  return failed >= 2 || (failed === 1 && holds.length === 1);
}

type Held = Omit<Hold, 'check'>;

/** The answer that there is a gap: whether there is one on the same side. */
function heldToGap(gap: Gap, way: OtherWay): Held | null {
  const sideOf = ([lower, upper]: Interval): number => (lower > 0 ? 1 : upper < 0 ? -1 : 0);
  const judged = way(confidence);
  const narrow = way(narrowConfidence);
  if (judged === null || narrow === null) return null;
  const side = Math.sign(gap.estimate);
  const state = sideOf(judged.ci) === side ? 'agrees' : sideOf(narrow.ci) === side ? 'narrow' : 'fails';
  return { state, estimate: judged.estimate, ci: judged.ci };
}

/** The answer that nothing matters, whether there is a small gap or none: only a gap that matters speaks against it. */
function heldToLittle(way: OtherWay, matters: number): Held | null {
  const judged = way(confidence);
  if (judged === null) return null;
  const { estimate, ci } = judged;
  const excludesZero = ci[0] > 0 || ci[1] < 0;
  return { state: excludesZero && Math.abs(estimate) >= matters ? 'fails' : 'agrees', estimate, ci };
}

function usualStrikes({ samples, step }: HoldFacts): OtherWays['usualStrikes'] {
  const judged = samples.filter(({ values }) => values.length >= fewestShotsJudged);
  const trimmed = judged.map(({ values }) => atLeastRounding(trimmedMoments(values), step));
  return (gap) => {
    const a = judged.findIndex(({ contender }) => contender === gap.a);
    const b = judged.findIndex(({ contender }) => contender === gap.b);
    const fewest = Math.min(at(judged, a).values.length, at(judged, b).values.length);
    return fewest < fewestForUsualStrikes ? null : (level) => gamesHowellPair(trimmed, a, b, level);
  };
}

function byRounds(facts: HoldFacts): OtherWays['byRounds'] {
  const [own] = facts.order.turns;
  if (own === undefined) return () => null;
  const { kind, complete } = own.turns;
  if (complete < (kind === 'rounds' ? fewestRoundsForCheck : fewestVisitsForCheck)) return () => null;
  const gaps = turnGaps(facts);
  return (gap) => (level) => {
    const counted = gaps(gap, level);
    return counted === null || counted.df < fewestErrorDf ? null : counted;
  };
}
