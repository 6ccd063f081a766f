import { fewestRoundsJudged, type JudgedBy } from '../../stats/judgedBy.ts';
import { luck, type Luck } from '../../stats/luck.ts';
import { halfWidthInSd, leastGap, power, shotsNeeded, shotsToShowLevel } from '../../stats/power.ts';
import { StatisticsError } from '../../stats/statisticsError.ts';
import type { PlannedTurns } from './plannedOrder.ts';

/** A test that is thought of: one hitter, one primary metric, all pairs of `contenders` at 95 %. One unit for all. */
interface Prospect {
  readonly contenders: number;
  readonly shotsEach: number;
  readonly turns: PlannedTurns;
  readonly sd: number;
  /** Between which values the spread may lie, where that is known. */
  readonly sdRange: readonly [low: number, high: number] | null;
  /** The smallest gap that matters. */
  readonly matters: number;
}

/** What such a test can and cannot find. */
export interface Foresight {
  /** Shots with each for the gap that matters to be found four times in five; null beyond counting. */
  readonly needed: number | null;
  /** The same for the ends of the range of the spread. */
  readonly neededRange: readonly [number | null, number | null] | null;
  /** The least true gap found four times in five. */
  readonly detectable: number;
  /** Chance that a true gap of what matters is found. */
  readonly power: number;
  readonly luck: Luck;
  /** Half-width of the interval of a gap. */
  readonly halfWidth: number;
  /** Whether equal contenders could come out as level at all. */
  readonly levelReachable: boolean;
  /** Shots with each from which they could; null beyond counting. */
  readonly neededForLevel: number | null;
}

const level = 0.95;

/**
 * Power by what the order will be judged by, luck from the range of equal averages: the same methods as those by which
 * a report tells what its test could see.
 */
export function foresee({ contenders: k, shotsEach: n, turns, sd, sdRange, matters }: Prospect): Foresight {
  const test = { n, k, level, by: whatJudges(turns) };
  const needed = (spread: number): number | null => counted(() => shotsNeeded(matters / spread, test));
  const halfWidth = halfWidthInSd(test) * sd;
  return {
    needed: needed(sd),
    neededRange: sdRange === null ? null : [needed(sdRange[0]), needed(sdRange[1])],
    detectable: leastGap(test) * sd,
    power: power(matters / sd, test),
    luck: luck(Array.from({ length: k }, () => sd / Math.sqrt(n))),
    halfWidth,
    levelReachable: halfWidth < matters,
    neededForLevel: counted(() => shotsToShowLevel(matters / sd, test)),
  };
}

function whatJudges(turns: PlannedTurns): JudgedBy {
  return turns.kind === 'rotation'
    ? { kind: 'rounds', pairedFrom: fewestRoundsJudged }
    : { kind: 'visits', shotsAVisit: turns.shotsAVisit };
}

/** Nobody hits more with each. */
const mostShots = 1000;

function counted(count: () => number): number | null {
  try {
    const shots = count();
    return shots > mostShots ? null : shots;
  } catch (error) {
    if (error instanceof StatisticsError) return null;
    throw error;
  }
}

/** Most full swings that one hitter should make in a session, rests included (our judgement). */
export const mostSwings = 60;
/** Fewest shots with each that a plan is worth (our judgement). */
const fewestWorthwhile = 12;

/** A count of shots to begin with: what is needed, no fewer than 12, no more than 60 swings in all allow. */
export function proposedShots(contenders: number, needed: number | null, shotsAVisit: number): number {
  const most = Math.max(3, Math.floor(mostSwings / contenders / shotsAVisit)) * shotsAVisit;
  const wanted = Math.max(needed ?? mostSwings, fewestWorthwhile);
  return Math.min(most, Math.ceil(wanted / shotsAVisit) * shotsAVisit);
}
