import type { Severity } from '../problems/problem.ts';
import type { ProblemKind } from '../problems/kinds.ts';
import type { MetricClass, MetricId } from '../trade/metrics.ts';
import type { UnitId } from '../trade/units.ts';
import type { DeliveryMeasure } from '../flight/delivery.ts';
import type { PricedMetric } from '../flight/tradeSensitivities.ts';
import type { VerdictId } from './verdict.ts';
import type { PairYards } from './yards.ts';

export type Interval = readonly [lower: number, upper: number];

/** A contender's place in the report. `shots` counts all recorded, `excluded` those of them left out. */
export interface ContenderCount {
  readonly id: string;
  readonly label: string;
  readonly shots: number;
  readonly excluded: number;
}

/** How the contenders followed one another. */
export type OrderKind =
  | 'one-after-another'
  | 'mini-blocks'
  | 'rotation-same-order'
  | 'rotation-order-changed'
  | 'mixed'
  | 'planned-random'
  | 'stated-random'
  | 'stated-rotation'
  | 'stated-mini-blocks'
  | 'stated-one-after-another'
  | 'unknown';

/**
 * When the plan was written: on record before the session, before it as the shop states, stated but not the plan on
 * record, on the day or later, or not said.
 */
export type PlanStanding = 'on-record' | 'stated' | 'changed' | 'afterwards' | 'not-said';

export interface Design {
  readonly hitters: number;
  readonly order: OrderKind;
  /** Complete rounds where the order is a rotation, else null. */
  readonly rounds: number | null;
  /** Contender ids in the order they were hit, where that was one after another; else null. */
  readonly sequence: readonly string[] | null;
  readonly unit: 'shot' | 'hitter';
  readonly plan: PlanStanding;
  /** Only what a record shows counts: `plan` is `on-record`. */
  readonly plannedInAdvance: boolean;
}

/** Figures of one contender in one metric, counted shots only; null where too few shots bear the figure. */
export interface ContenderSummary {
  readonly id: string;
  readonly n: number;
  readonly mean: number | null;
  readonly sd: number | null;
  readonly ci: Interval | null;
  readonly median: number | null;
  readonly min: number | null;
  readonly max: number | null;
  /** Interval of the sd; null under eight shots. */
  readonly sdCi: Interval | null;
}

export type Credit = 'contender' | 'open';

export type OverlayId =
  | 'one-hitter'
  | 'few-hitters'
  | 'few-shots'
  | 'one-example'
  | 'one-after-another'
  | 'order-unknown'
  | 'order-lever'
  | 'order-drift'
  | 'order-few-visits'
  | 'visits-alike'
  | 'mixed-with-swing'
  | 'not-planned'
  | 'rests-on-one-shot'
  | 'depends-on-left-out'
  | 'near-device'
  | 'modelled-reading'
  | 'leans'
  | 'found-too-big';

/** One of the other ways of working a gap out, and whether the gap is still there. */
export interface Hold {
  readonly check: 'usual-strikes' | 'by-rounds' | 'drift-taken-out';
  readonly state: 'agrees' | 'narrow' | 'fails';
}

/** The gap between two contenders in one metric, `a` minus `b`, SI. */
export interface PairFindings {
  readonly a: string;
  readonly b: string;
  readonly estimate: number | null;
  readonly ci: Interval | null;
  readonly level: number;
  readonly p: number | null;
  readonly method: GapMethod | null;
  readonly verdict: VerdictId;
  readonly credit: Credit;
  readonly overlays: readonly OverlayId[];
  readonly holds: readonly Hold[];
  /** Smallest and largest gap with any one shot left out. */
  readonly leaveOneOut: Interval | null;
  /** The same pair with the shots counted that were left out; null where none was. */
  readonly withLeftOut: {
    readonly estimate: number;
    readonly ci: Interval;
    readonly verdict: VerdictId;
  } | null;
  readonly device: DeviceReach | null;
  /** The gap with the difference in club speed taken out; always the second line. */
  readonly atEqualSpeed: { readonly estimate: number; readonly ci: Interval } | null;
  /** Each hitter's own gap; empty for one hitter. */
  readonly byHitter: readonly HitterGap[];
  readonly whoGained: WhoGained | null;
  /** What another golfer's own test of this length would show. */
  readonly newHitter: Interval | null;
}

export interface HitterGap {
  readonly hitter: string;
  readonly estimate: number;
  readonly ci: Interval | null;
}

/** How many hitters had more with `a`. */
export interface WhoGained {
  readonly more: number;
  readonly of: number;
  readonly clearlyMore: number;
  readonly clearlyLess: number;
  /** Chance of a count as uneven as this, were there no difference. */
  readonly byLuck: number;
  /** Clopper-Pearson range of the share. */
  readonly share: Interval;
}

/** A gap beside what the monitor can tell apart, SI. */
export interface DeviceReach {
  readonly accuracy: number;
  /** The interval widened by the stated accuracy of either reading. */
  readonly ci: Interval;
  readonly near: boolean;
}

/** One measure of the swing between two contenders, `a` minus `b`, canonical units; `worth` in metres. */
export interface SwingPair {
  readonly a: string;
  readonly b: string;
  readonly estimate: number;
  readonly ci: Interval;
  readonly worth: { readonly estimate: number; readonly ci: Interval };
  readonly answer: 'same' | 'different' | 'cannot-tell';
}

export interface SwingFindings {
  /** What the measures are priced in. */
  readonly metric: PricedMetric;
  /** Half of what matters: a difference worth less is the same swing, m. */
  readonly margin: number;
  readonly level: number;
  readonly measures: readonly {
    readonly id: DeliveryMeasure;
    readonly pricedBy: 'flight-model' | 'trade-sensitivities';
    /** Metres a unit (m/s, degree), least and most. */
    readonly perUnit: Interval;
    readonly pairs: readonly SwingPair[];
  }[];
}

export interface SpreadFindings {
  readonly p: number;
  /** `ratio`: sd of a over sd of b; p by Holm. */
  readonly pairs: readonly {
    readonly a: string;
    readonly b: string;
    readonly ratio: number;
    readonly tighter: 'a' | 'b';
    readonly p: number;
  }[];
}

export interface LandingEllipse {
  /** Side and carry, m. */
  readonly centre: readonly [number, number];
  readonly halfAxes: readonly [number, number];
  /** Of the longer half axis from the side axis, radians. */
  readonly angle: number;
}

export interface ContenderLanding {
  readonly id: string;
  readonly n: number;
  readonly meanSide: number | null;
  readonly meanCarry: number | null;
  readonly within: number;
  /** Wilson interval of the share within the lane. */
  readonly withinShare: Interval | null;
  readonly left: number;
  readonly right: number;
  readonly nextShot: LandingEllipse | null;
}

/** Modelled carry over launch and spin at one ball speed. */
export interface LaunchWindow {
  readonly ballSpeed: number;
  /** How many sets of coefficients it rests on. */
  readonly sets: number;
  readonly launchAngles: readonly number[];
  readonly spinRates: readonly number[];
  /** Metres short of the best by the set that likes a point least; rows by spin, columns by launch. */
  readonly short: readonly (readonly number[])[];
}

export interface LandingFindings {
  /** Half the width of the lane round the target line in which shots are counted, m. */
  readonly laneM: number;
  readonly byContender: readonly ContenderLanding[];
}

export type GapMethod = 'welch' | 'games-howell' | 'hitters-alike' | 'hitter-model';

export interface Omnibus {
  readonly method: 'welch-anova' | 'hitter-model';
  readonly statistic: number;
  readonly df: readonly [number, number];
  readonly p: number;
}

export interface MetricFindings {
  readonly id: MetricId;
  readonly unit: UnitId;
  readonly class: MetricClass;
  /** Whether the files hold the readings, or our flight model stands in for them. */
  readonly readBy: 'monitor' | 'flight-model';
  readonly role: 'primary' | 'exploratory';
  readonly better: 'more' | 'less' | 'neither';
  /** The smallest gap that matters, SI. */
  readonly matters: number;
  readonly byContender: readonly ContenderSummary[];
  readonly omnibus: Omnibus | null;
  /** Averages of a hitter with a contender on far fewer shots than usual, left out where the hitter is the unit. */
  readonly cellsLeftOut: number;
  readonly pairs: readonly PairFindings[];
  readonly spread: SpreadFindings | null;
  /** A straight drift over the one hitter's shots, SI per shot, contenders' own levels taken out. */
  readonly drift: { readonly slope: number; readonly ci: Interval } | null;
  /** The least true gap that this test finds four times in five, SI. */
  readonly detectable: number | null;
  /** Best minus worst average of equal contenders: on average, and passed in 5 of 100 tests; SI. */
  readonly luck: { readonly average: number; readonly upTo: number } | null;
  /** Shots with each contender to find the gap that matters four times in five; a range. */
  readonly shotsNeeded: Interval | null;
  /** Shots with each that it would take to be able to show that nothing matters; null where these could. */
  readonly shotsToShowLevel: number | null;
  /** Contenders with the best average or not clearly behind it; null where none can be told. */
  readonly leading: readonly string[] | null;
}

export type StandingId = 'borne-out' | 'weaker-than-said' | 'not-shown' | 'contradicted';

/** A sentence of the shop's with what the shots make of it. */
export interface ClaimStanding {
  readonly say: string;
  readonly standing: StandingId;
  /** `side` where it is about finishing nearer the target line. */
  readonly metric: MetricId;
  readonly direction: 'more' | 'less' | 'tighter' | 'straighter';
  /** The contender the sentence is about. */
  readonly of: string;
  readonly than: string;
  /** What is claimed at least, SI; 0 where no size is claimed. */
  readonly byAtLeast: number;
  /** Whether the claim is on a primary metric: what is borne out elsewhere was seen, not planned. */
  readonly planned: boolean;
  /** The gap counted the claimed way, SI; null for a claim about spread and where the pair was not judged. */
  readonly gap: { readonly estimate: number; readonly ci: Interval } | null;
  /** Null but for a claim about spread, and there with fewer than twelve shots with either. */
  readonly spread: ClaimedSpread | null;
}

/** Spreads compared the way a claim names them. */
export interface ClaimedSpread {
  /** Sd of the one claimed to be tighter over the other's. */
  readonly ratio: number;
  readonly p: number;
  readonly tighter: 'of' | 'than';
}

export type FairnessId =
  | 'one-thing-varied'
  | 'order'
  | 'warm-up'
  | 'enough-shots'
  | 'plan-first'
  | 'exclusion-rule'
  | 'exclusions-even'
  | 'same-ball'
  | 'conditions'
  | 'reading-measured'
  | 'hitter-blind'
  | 'hitters'
  | 'interests'
  | 'device-accuracy'
  | 'shot-numbers';

/** One thing that a fair test has, and whether this one has it. */
export interface FairnessCheck {
  readonly id: FairnessId;
  readonly state: 'met' | 'not-met' | 'not-recorded';
  /** Why it matters, in one sentence. */
  readonly why: string;
}

export interface ProblemSummary {
  readonly kind: ProblemKind;
  readonly severity: Severity;
  readonly file: string;
  readonly line: number | null;
  readonly column: number | null;
  readonly message: string;
}

/**
 * Everything the pages, charts, prose and downloads may say about a report, as numbers and ids.
 * Canonical SI units, finite numbers only; what cannot be worked out is null.
 */
export interface Findings {
  readonly version: 1;
  readonly slug: string;
  readonly title: string;
  readonly date: string;
  readonly units: 'SI';
  readonly contenders: readonly ContenderCount[];
  readonly design: Design;
  readonly metrics: readonly MetricFindings[];
  /** Distance from the target line, less being straighter; null without a side column. */
  readonly straighter: readonly PairFindings[] | null;
  readonly swing: SwingFindings | null;
  /** Where the yards of each credited gap in a primary carry come from. */
  readonly yards: readonly PairYards[];
  readonly landing: LandingFindings | null;
  readonly launchWindow: LaunchWindow | null;
  readonly claims: readonly ClaimStanding[];
  readonly fairness: readonly FairnessCheck[];
  readonly caveats: readonly OverlayId[];
  readonly problems: readonly ProblemSummary[];
  readonly seed: string;
}
