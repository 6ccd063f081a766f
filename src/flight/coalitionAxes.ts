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
  /** Numbers in a row of `rows`. */
  readonly width: number;
  /**
   * A row a pair: the values of each axis after one another, canonical units, b's before a's, then the cosines of the
   * direction, as many as the last axis has values, and its sines.
   */
  readonly rows: Float64Array<ArrayBuffer>;
}

/** The smash factor is the ratio of the means, so that club speed times smash factor is the mean ball speed. */
export function coalitionAxes(plan: AttributionPlan, pairs: readonly MeanPair[]): CoalitionAxes {
  const plays = (id: PartId): boolean => plan.parts.includes(id);
  const split = plays('club-speed');
  const size = (id: PartId): number => (plays(id) ? 2 : 1);
  const angles = size('launch-angle');
  const spins = size('spin-rate');
  const tilts = size('direction');
  const sizes = [split ? 4 : size('ball-speed'), angles, spins, tilts];
  const has = (set: number, id: PartId): number => (plays(id) ? (set >> plan.parts.indexOf(id)) & 1 : 0);
  const placesOf = (set: number): readonly number[] => [
    split ? has(set, 'club-speed') + 2 * has(set, 'smash') : has(set, 'ball-speed'),
    has(set, 'launch-angle'),
    has(set, 'spin-rate'),
    has(set, 'direction'),
  ];
  const cellOf = Int32Array.from({ length: 1 << plan.parts.length }, (_, set) =>
    placesOf(set).reduceRight((cell, place, axis) => cell * (sizes[axis] ?? 1) + place, 0),
  );
  const width = sizes.reduce((sum, own) => sum + own, 0) + 2 * tilts;
  const rows = new Float64Array(width * pairs.length);
  let at = 0;
  // What does not play has one value, and both sides the same one.
  const put = (values: number, of: number, { a, b }: MeanPair): void => {
    rows[at++] = b[of] ?? 0;
    if (values > 1) rows[at++] = a[of] ?? 0;
  };
  for (const pair of pairs) {
    const { a, b } = pair;
    if (split) {
      for (const side of [b, a]) {
        const smash = (side[column.ballSpeed] ?? 0) / (side[column.clubSpeed] ?? 0);
        rows[at++] = (b[column.clubSpeed] ?? 0) * smash;
        rows[at++] = (a[column.clubSpeed] ?? 0) * smash;
      }
    } else put(sizes[0] ?? 1, column.ballSpeed, pair);
    put(angles, column.launchAngle, pair);
    put(spins, column.spinRate, pair);
    put(tilts, column.spinAxis, pair);
    for (let side = 0; side < tilts; side++) {
      const turn = (((side === 0 ? b : a)[column.direction] ?? 0) * Math.PI) / 180;
      rows[at + side] = Math.cos(turn);
      rows[at + tilts + side] = Math.sin(turn);
    }
    at += 2 * tilts;
  }
  return { sizes, cellOf, width, rows };
}
