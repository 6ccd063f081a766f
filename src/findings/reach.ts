import type { JudgedBy, Test } from '../stats/judgedBy.ts';
import { luck, type Luck } from '../stats/luck.ts';
import { moments, type Moments } from '../stats/moments.ts';
import { halfWidthInSd, leastGap, power, shotsNeeded, shotsToShowLevel } from '../stats/power.ts';
import { bonettSdInterval } from '../stats/sdInterval.ts';
import type { Interval } from './findings.ts';
import { quietly } from './quietly.ts';
import type { Sample } from './samples.ts';
import { atLeastRounding } from './shotGaps.ts';
import { confidence, fewestShotsJudged, mostShots } from './thresholds.ts';

/** What a test of this size and spread can see in one metric, and what luck makes; SI. */
interface Reach {
  /** The least true gap that such a test finds four times in five. */
  readonly detectable: number;
  /** Best minus worst average of equal contenders: usual, and passed in 5 of 100 tests. */
  readonly luck: Luck;
  /** Shots with each contender to find the gap that matters four times in five; a range, as the spread is unsure. */
  readonly shotsNeeded: Interval;
  /** Chance to find a true gap of what matters. */
  readonly powerAtMatters: number;
  /** Where the test was too short to be able to show *level* at all: shots with each that it would take. */
  readonly shotsToShowLevel: number | null;
}

/** How gaps are judged; `step` of the readings and `matters` in the unit of the samples. */
interface Judging {
  readonly level: number;
  readonly step: number;
  readonly matters: number;
  readonly by?: JudgedBy;
}

/** Null where fewer than two contenders can be judged, or none varies. One hitter, or hitters side by side. */
export function reachOf(
  samples: readonly Sample[],
  { level, step, matters, by = { kind: 'shots' } }: Judging,
): Reach | null {
  const judged = samples.filter(({ values }) => values.length >= fewestShotsJudged);
  const raw = judged.map(({ values }) => moments(values));
  if (judged.length < 2 || raw.every(({ variance }) => variance === 0)) return null;
  const groups = raw.map((group) => atLeastRounding(group, step));
  const k = groups.length;
  const sd = pooledSd(groups);
  // A pair is as sharp as two groups of the harmonic mean of the sizes.
  const n = Math.max(2, Math.round(k / groups.reduce((sum, group) => sum + 1 / group.n, 0)));
  const test = { n, k, level, by };
  const tooShort = halfWidthInSd(test) * sd >= matters;
  return {
    detectable: leastGap(test) * sd,
    luck: luck(groups.map((group) => Math.sqrt(group.variance / group.n))),
    shotsNeeded: shotsRange(judged, sd, matters, test),
    powerAtMatters: power(matters / sd, test),
    shotsToShowLevel: tooShort ? capped(() => shotsToShowLevel(matters / sd, test)) : null,
  };
}

function pooledSd(groups: readonly Moments[]): number {
  const df = groups.reduce((sum, { n }) => sum + n - 1, 0);
  return Math.sqrt(groups.reduce((sum, { n, variance }) => sum + (n - 1) * variance, 0) / df);
}

/** From the interval of the pooled spread (Bonett, on the shots' distances from their own average). */
function shotsRange(judged: readonly Sample[], sd: number, matters: number, test: Omit<Test, 'n'>): Interval {
  const [low, high] = spreadInterval(judged, sd);
  const shots = (spread: number): number => capped(() => shotsNeeded(matters / spread, test));
  return [shots(low), shots(high)];
}

function spreadInterval(judged: readonly Sample[], sd: number): Interval {
  const distances = judged.flatMap(({ values }) => {
    const { mean } = moments(values);
    return values.map((value) => value - mean);
  });
  return quietly(() => bonettSdInterval(distances, confidence)) ?? [sd, sd];
}

/** A count of shots rounded up to five. */
function capped(count: () => number): number {
  return Math.min(mostShots, Math.ceil((quietly(count) ?? mostShots) / 5) * 5);
}
