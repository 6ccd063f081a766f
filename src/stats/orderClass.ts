import { greatestOf } from './extremes.ts';
import { rotationOf, type Rotation } from './rotation.ts';
import { runsOf, type Run } from './runs.ts';
import { requireAtLeast } from './statisticsError.ts';
import { visitsOf, type Visit } from './visits.ts';

/** How the groups took turns. `visits` in order (see `visitsOf`); `fewestVisits` of any group. */
export type OrderClass =
  | { readonly kind: 'one-after-another' }
  | { readonly kind: 'mini-blocks'; readonly visits: readonly Visit[]; readonly fewestVisits: number }
  | ({ readonly kind: 'rotation' } & Rotation)
  | { readonly kind: 'mixed' };

const SHARE_IN_LONGEST_RUN = 0.8;
const SHARE_IN_RUNS_OF_TWO = 0.9;

/**
 * Class of a sequence of groups in the order they were measured, tried in this order: rotation by the round numbers
 * where these fit, or with the order turned every round (ABBA and its repeats); one-after-another (every group's longest
 * run holds 80 % of its shots or more); mini-blocks (every group has two visits or more, and 90 % of its shots stand in
 * visits of two or more); rotation (see `rotationOf`); mixed.
 *
 * The thresholds are our own rules, found by simulating how often equal groups are called apart under drift and
 * shot-to-shot correlation.
 *
 * @param sequence group of each shot, in order
 * @param rounds number of the round, or of the set of visits, of each shot, where recorded
 * @throws StatisticsError `sample-too-small` for an empty sequence
 */
export function orderClass(sequence: readonly string[], rounds?: readonly (number | null)[]): OrderClass {
  requireAtLeast('orderClass', 'shots', sequence.length, 1);
  const rotation = rotationOf(sequence, rounds);
  // Shots that stand in runs of two where the order was turned every round were hit in rounds all the same.
  if (rotation !== null && (rotation.byNumber || isTurnedEachRound(sequence, rotation)))
    return { kind: 'rotation', ...rotation };
  const perGroup = ofEachGroup(runsOf(sequence));
  if (perGroup.every((own) => longest(own) >= SHARE_IN_LONGEST_RUN * shots(own))) {
    return { kind: 'one-after-another' };
  }
  const visits = visitsOf(sequence, rounds);
  const visitsOfGroups = ofEachGroup(visits);
  const blocks = visitsOfGroups.every(
    (own) =>
      own.length >= 2 && shots(own.filter((run) => run.length >= 2)) >= SHARE_IN_RUNS_OF_TWO * shots(own),
  );
  if (blocks) {
    return {
      kind: 'mini-blocks',
      visits,
      fewestVisits: Math.min(...visitsOfGroups.map((own) => own.length)),
    };
  }
  return rotation === null ? { kind: 'mixed' } : { kind: 'rotation', ...rotation };
}

/** Whether each round is hit in the order of the one before, turned round; the last may be short. */
function isTurnedEachRound(sequence: readonly string[], { rounds, reHits }: Rotation): boolean {
  // With a re-hit at its start a session of runs of two would read so too.
  if (reHits.length > 0) return false;
  return rounds.slice(1).every((round, i) => {
    const before = rounds[i]?.toReversed() ?? [];
    return round.every((place, j) => sequence[place] === sequence[before[j] ?? -1]);
  });
}

function ofEachGroup(runs: readonly Run[]): readonly (readonly Run[])[] {
  return [...Map.groupBy(runs, ({ group }) => group).values()];
}

function shots(runs: readonly Run[]): number {
  return runs.reduce((sum, run) => sum + run.length, 0);
}

function longest(runs: readonly Run[]): number {
  return greatestOf(runs.map((run) => run.length));
}
