import { at } from '../stats/at.ts';
import { outerQuantiles } from '../stats/quantile.ts';
import type { Random } from '../stats/random.ts';
import {
  attributionPlan,
  carryGap,
  rowsOf,
  spinGap,
  type AttributionShot,
  type PartId,
} from './attributionPlan.ts';
import { calibrate, type Calibration } from './calibration.ts';
import { coalitionAxes, type CoalitionAxes } from './coalitionAxes.ts';
import { coalitionCarries } from './coalitionCarries.ts';
import { carrySurface } from './carrySurface.ts';
import type { CoefficientSet } from './coefficientSet.ts';
import { evenlySpread } from '../stats/evenlySpread.ts';
import type { FlightModel } from './flightModel.ts';
import { boxOfMeans, boxOfShots, residualsOf } from './attributionBoxes.ts';
import { withinMeasured, type WithinMeasured } from './measuredRange.ts';
import { meanLaunch } from './meanLaunch.ts';
import { meanDraws, meansOf } from './meanDraws.ts';
import { leastModelledGap, spinTrendError } from './modelError.ts';
import { shapley } from './shapley.ts';
import { smoothedSurface, type Landing } from './smoothedSurface.ts';

/** Metres, a minus b, with the range that the shots leave. */
interface Share {
  readonly value: number;
  readonly range: readonly [low: number, high: number];
}

/** Why a part is not settled. */
type Unsettled =
  'one-set-only' | 'sets-differ-in-sign' | 'range-spans-zero' | 'within-the-known-error-of-the-spin-trend';

/** Value by the recommended set, range from the lowest to the highest that any set gives: to be printed. */
export interface Part extends Share {
  /** one share a coefficient set, in the order of `sets` */
  readonly bySet: readonly Share[];
  readonly settled: boolean;
  readonly why: readonly Unsettled[];
  /** settled, and at least `leastModelledGap` by every set: only then may a sentence make a finding of it */
  readonly finding: boolean;
}

interface AttributedPart extends Part {
  readonly id: PartId;
}

/** What one coefficient set makes of the pair. */
interface SetAccount {
  readonly id: string;
  readonly calibration: Exclude<Calibration, { state: 'not-possible' }>;
  /** the gap by the model alone */
  readonly modelled: Share;
  /** flights flown for the surface, and its largest error within the session's range, metres */
  readonly flights: number;
  readonly misfit: number;
  /** how much of the mean flight lies where the set was measured */
  readonly within: WithinMeasured;
}

export type Attribution =
  | {
      readonly state: 'attributed';
      /** of every range: 1 - 0.05 / (parts and the unexplained rest) */
      readonly level: number;
      readonly draws: number;
      readonly gap: Share;
      readonly parts: readonly AttributedPart[];
      /** gap read minus gap modelled */
      readonly unexplained: Part;
      /** parts that nothing can go to because nothing about them varied */
      readonly constant: readonly PartId[];
      readonly sets: readonly SetAccount[];
      /** sets whose drag no factor fits to the session's carries */
      readonly leftOut: readonly string[];
    }
  | {
      readonly state: 'not-possible';
      readonly why: 'too-few-shots' | 'too-few-rounds' | 'nothing-varied' | 'carry-out-of-reach';
    };

interface AttributionInput {
  readonly a: readonly AttributionShot[];
  readonly b: readonly AttributionShot[];
  /** whether the gap is worked out from rounds that hold both, as the verdict on it was */
  readonly byRounds: boolean;
  /** air, wind and ball of the session; drag factor and coefficients are found here */
  readonly model: FlightModel;
  readonly sets: readonly CoefficientSet[];
  readonly random: Random;
  readonly draws?: number;
  /** shots of either contender that are flown, evenly spread ones of more; means and gap are of all */
  readonly mostFlown?: number;
}

/** Fewest shots a contender and fewest rounds; below, ranges are too wide to be of use (our judgement). */
export const leastShots = 8;
const leastRounds = 6;

/**
 * Where the yards come from: the gap in mean carry between two contenders, split by Shapley over what differed at
 * launch, once a coefficient set, each set tuned to the session's own carries. Swaps are valued for a hitter with
 * the pooled scatter of the two contenders, not for the mean launch. What the model does not give is left as the
 * unexplained rest. Ranges: draws of both mean vectors from multivariate t, the same draws for every set.
 */
export function attribute(input: AttributionInput): Attribution {
  const { a, b, byRounds, model, sets, random, draws = 2000, mostFlown = Infinity } = input;
  if (Math.min(a.length, b.length) < leastShots) return { state: 'not-possible', why: 'too-few-shots' };
  if (byRounds && sharedRounds(a, b) < leastRounds) return { state: 'not-possible', why: 'too-few-rounds' };
  const shots = [...a, ...b];
  const plan = attributionPlan(shots);
  if (plan.parts.length === 0) return { state: 'not-possible', why: 'nothing-varied' };

  const rounds = { a: a.map(({ round }) => round ?? -1), b: b.map(({ round }) => round ?? -1) };
  const samples = { a: rowsOf(a), b: rowsOf(b), rounds: byRounds ? rounds : undefined };
  const means = meansOf(samples);
  const draw = meanDraws(samples, random);
  const drawn = Array.from({ length: draws }, draw);

  const flown = { a: evenlySpread(a, mostFlown), b: evenlySpread(b, mostFlown) };
  const residuals = [...residualsOf(flown.a), ...residualsOf(flown.b)];
  const shotBox = boxOfShots(flown.a, flown.b, residuals);
  const pairs = [means, ...drawn];
  const grid = coalitionAxes(plan, pairs);
  const meanBox = boxOfMeans(grid);
  const gaps = Float64Array.from(pairs, carryGap);
  const level = 1 - 0.05 / (plan.parts.length + 1);
  const flownShots = [...flown.a, ...flown.b];
  const launches = flownShots.map(({ launch }) => launch);
  const accounts = sets.flatMap((coefficients) => {
    const own = { ...model, coefficients, dragScale: 1 };
    const calibration = calibrate(flownShots, own);
    if (calibration.state === 'not-possible') return [];
    const tuned = { ...own, dragScale: calibration.dragScale };
    const surface = carrySurface(launches, shotBox, tuned);
    const within = withinMeasured(meanLaunch(launches), tuned);
    const landing = smoothedSurface(surface, residuals, meanBox);
    const { flights, misfit } = surface;
    return [
      {
        id: coefficients.id,
        calibration,
        flights,
        misfit,
        within,
        ...sharesOf(landing, plan.parts.length, grid, gaps, level),
      },
    ];
  });
  if (accounts.length === 0) return { state: 'not-possible', why: 'carry-out-of-reach' };

  const trend = Math.abs(spinGap(means)) * spinTrendError;
  return {
    state: 'attributed',
    level,
    draws,
    gap: shareOf(gaps, level),
    parts: plan.parts.map((id, i) => ({
      id,
      ...part(
        accounts.flatMap(({ shares }) => at(shares, i)),
        id === 'spin-rate' ? trend : 0,
      ),
    })),
    unexplained: part(
      accounts.map(({ unexplained }) => unexplained),
      0,
    ),
    constant: plan.constant,
    sets: accounts.map(({ id, calibration, modelled, flights, misfit, within }) => ({
      id,
      calibration,
      modelled,
      flights,
      misfit,
      within,
    })),
    leftOut: sets.map(({ id }) => id).filter((id) => accounts.every((account) => account.id !== id)),
  };
}

interface Shares {
  readonly shares: readonly Share[];
  readonly modelled: Share;
  readonly unexplained: Share;
}

/** Shapley shares of the means, which come first in the grid, and of every draw; `gaps` in carry read, in the same order. */
function sharesOf(
  landing: Landing,
  players: number,
  grid: CoalitionAxes,
  gaps: Float64Array,
  level: number,
): Shares {
  const coalitions = 1 << players;
  const carries = coalitionCarries(landing, grid);
  const split = shapley(players);
  const values = new Float64Array(coalitions);
  const own = new Float64Array(players);
  const columns = Array.from({ length: players }, () => new Float64Array(gaps.length));
  const modelled = new Float64Array(gaps.length);
  const unexplained = new Float64Array(gaps.length);
  for (let row = 0; row < gaps.length; row++) {
    carries(row, values);
    split(values, own);
    for (let i = 0; i < players; i++) {
      const column = columns[i] ?? own;
      column[row] = own[i] ?? 0;
    }
    const gap = (values[coalitions - 1] ?? 0) - (values[0] ?? 0);
    modelled[row] = gap;
    unexplained[row] = (gaps[row] ?? 0) - gap;
  }
  return {
    shares: columns.map((column) => shareOf(column, level)),
    modelled: shareOf(modelled, level),
    unexplained: shareOf(unexplained, level),
  };
}

/** The first value, with the range of those after it. */
function shareOf(values: Float64Array, level: number): Share {
  return {
    value: at(values, 0),
    range: outerQuantiles(values.subarray(1), (1 - level) / 2, (1 + level) / 2),
  };
}

/** Settled when every set gives it the same sign, beyond its range and beyond what the model is known to get wrong. */
function part(bySet: readonly Share[], knownError: number): Part {
  const sign = Math.sign(at(bySet, 0).value);
  const why: readonly Unsettled[] = [
    ...(bySet.length < 2 ? (['one-set-only'] as const) : []),
    ...(bySet.some(({ value }) => Math.sign(value) !== sign) ? (['sets-differ-in-sign'] as const) : []),
    ...(bySet.some(({ range: [low, high] }) => low <= 0 && high >= 0) ? (['range-spans-zero'] as const) : []),
    ...(bySet.some(({ value }) => Math.abs(value) <= knownError)
      ? (['within-the-known-error-of-the-spin-trend'] as const)
      : []),
  ];
  const settled = why.length === 0;
  const large = bySet.every(({ value }) => Math.abs(value) >= leastModelledGap);
  return {
    value: at(bySet, 0).value,
    range: [Math.min(...bySet.map(({ range }) => range[0])), Math.max(...bySet.map(({ range }) => range[1]))],
    bySet,
    settled,
    why,
    finding: settled && large,
  };
}

function sharedRounds(a: readonly AttributionShot[], b: readonly AttributionShot[]): number {
  const inA = new Set(a.flatMap(({ round }) => round ?? []));
  return new Set(b.flatMap(({ round }) => round ?? [])).intersection(inA).size;
}
