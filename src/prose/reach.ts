import type { MetricFindings } from '../findings/findings.ts';
import { fewestShotsJudged, mostShots } from '../findings/thresholds.ts';
import type { MetricId } from '../trade/metrics.ts';

/** What a test of this length could see, and what chance alone makes of it; sizes SI, shots with each. */
export type ReachStatement = { readonly metric: MetricId } & (
  | {
      readonly kind: 'found';
      readonly least: number;
      readonly shots: readonly [fewest: number, most: number];
    }
  | { readonly kind: 'needed'; readonly matters: number; readonly shots: ShotsNeeded }
  | { readonly kind: 'too-short-for-level'; readonly shots: ShotsNeeded }
  | { readonly kind: 'overstates' }
  | { readonly kind: 'golfers-left-out'; readonly cells: number }
);

/** Whether a reader of the answer needs it: what could be seen at all, and what could not be shown. */
export const isBesideAnswer = ({ kind }: ReachStatement): boolean =>
  kind === 'found' || kind === 'too-short-for-level';

/** Shots with each that something would take; `most` is null where it has no end. */
export interface ShotsNeeded {
  readonly few: number;
  readonly most: number | null;
}

/** What chance alone does to so many that are identical, SI. */
export interface Chance {
  readonly kind: 'chance';
  readonly metric: MetricId;
  readonly things: number;
  readonly average: number;
  readonly upTo: number;
}

/** What chance alone makes of a metric; null where it cannot be told. */
export function chanceOf({ id, luck, byContender }: MetricFindings): Chance | null {
  if (luck === null) return null;
  const things = byContender.filter(({ n }) => n >= fewestShotsJudged).length;
  return { kind: 'chance', metric: id, things, ...luck };
}

/** What the test could see: the least difference, shots it would take, whether *level* was in reach. */
export function reachOf(metric: MetricFindings): readonly ReachStatement[] {
  const { id, detectable, shotsNeeded, matters, shotsToShowLevel, pairs, cellsLeftOut } = metric;
  if (detectable === null || shotsNeeded === null) {
    return cellsLeftOut === 0 ? [] : [{ kind: 'golfers-left-out', metric: id, cells: cellsLeftOut }];
  }
  const counts = metric.byContender.filter(({ n }) => n > 0).map(({ n }) => n);
  return [
    { kind: 'found', metric: id, least: detectable, shots: [Math.min(...counts), Math.max(...counts)] },
    ...(detectable <= matters
      ? []
      : [{ kind: 'needed', metric: id, matters, shots: needed(shotsNeeded) } as const]),
    ...(shotsToShowLevel !== null && pairs.some(({ verdict }) => verdict === 'too-close')
      ? [
          {
            kind: 'too-short-for-level',
            metric: id,
            shots: needed([shotsToShowLevel, shotsToShowLevel]),
          } as const,
        ]
      : []),
    ...(pairs.some(({ overlays }) => overlays.includes('found-too-big'))
      ? [{ kind: 'overstates', metric: id } as const]
      : []),
  ];
}

function needed([few, many]: readonly [number, number]): ShotsNeeded {
  return { few, most: many >= mostShots ? null : many };
}
