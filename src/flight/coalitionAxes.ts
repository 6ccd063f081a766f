import { column, type AttributionPlan, type PartId } from './attributionPlan.ts';
import type { MeanPair } from './meanDraws.ts';

/**
 * The mean launches of all coalitions of a pair, as a grid: what a coalition takes from either contender is one value
 * on each of the axes of `shaping`, and a direction.
 */
export interface CoalitionAxes {
  /** Values an axis. */
  readonly sizes: readonly number[];
  /** Place in the grid, first axis fastest, of each coalition: bit i says that part i is a's, else b's. */
  readonly cellOf: Int32Array;
  /** 1 where a coalition has the direction of a, else 0. */
  readonly turnOf: Int32Array;
  /** Values of the pair that `fill` was last given: canonical units, b's before a's. */
  readonly axes: readonly Float64Array[];
  /** Of the direction, b's before a's. */
  readonly cosines: Float64Array;
  readonly sines: Float64Array;
  readonly fill: (pair: MeanPair) => void;
}

/** The smash factor is the ratio of the means, so that club speed times smash factor is the mean ball speed. */
export function coalitionAxes(plan: AttributionPlan): CoalitionAxes {
  const plays = (id: PartId): boolean => plan.parts.includes(id);
  const split = plays('club-speed');
  const size = (id: PartId): number => (plays(id) ? 2 : 1);
  const sizes = [split ? 4 : size('ball-speed'), size('launch-angle'), size('spin-rate'), size('direction')];
  const axes = sizes.map((values) => new Float64Array(values));
  const [speeds = empty, angles = empty, spins = empty, tilts = empty] = axes;
  const coalitions = Array.from({ length: 1 << plan.parts.length }, (_, set) => set);
  const has = (set: number, id: PartId): number => (plays(id) ? (set >> plan.parts.indexOf(id)) & 1 : 0);
  const placesOf = (set: number): readonly number[] => [
    split ? has(set, 'club-speed') + 2 * has(set, 'smash') : has(set, 'ball-speed'),
    has(set, 'launch-angle'),
    has(set, 'spin-rate'),
    has(set, 'direction'),
  ];
  const cosines = new Float64Array(2);
  const sines = new Float64Array(2);
  const of = (mean: readonly number[], at: number): number => mean[at] ?? 0;
  return {
    sizes,
    cellOf: Int32Array.from(coalitions, (set) =>
      placesOf(set).reduceRight((cell, place, axis) => cell * (sizes[axis] ?? 1) + place, 0),
    ),
    turnOf: Int32Array.from(coalitions, (set) => has(set, 'direction')),
    axes,
    cosines,
    sines,
    fill: ({ a, b }) => {
      const sides = [b, a];
      for (let side = 0; side < sides.length; side++) {
        const mean = sides[side] ?? b;
        // What does not play has one value, and both sides the same one.
        if (side < angles.length) angles[side] = of(mean, column.launchAngle);
        if (side < spins.length) spins[side] = of(mean, column.spinRate);
        if (side < tilts.length) tilts[side] = of(mean, column.spinAxis);
        const turn = (of(mean, column.direction) * Math.PI) / 180;
        cosines[side] = Math.cos(turn);
        sines[side] = Math.sin(turn);
        if (!split && side < speeds.length) speeds[side] = of(mean, column.ballSpeed);
        if (!split) continue;
        const smash = of(mean, column.ballSpeed) / of(mean, column.clubSpeed);
        speeds[2 * side] = of(b, column.clubSpeed) * smash;
        speeds[2 * side + 1] = of(a, column.clubSpeed) * smash;
      }
    },
  };
}

const empty = new Float64Array(0);
