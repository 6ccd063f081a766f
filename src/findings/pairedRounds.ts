import type { Session } from '../intake/session.ts';
import { pairDifferences } from '../stats/blockGaps.ts';
import { familyInterval } from '../stats/familyInterval.ts';
import { moments } from '../stats/moments.ts';
import type { MetricId } from '../trade/metrics.ts';
import type { Gap } from './gap.ts';
import type { HitOrder } from './hitOrder.ts';
import { fewestRoundsJudged } from '../stats/judgedBy.ts';
import { turnCells } from './turnCells.ts';

/**
 * Differences of the two contenders of a report, `a` minus `b`, round by round; null unless one golfer hit them in eight
 * rounds or more and every counted shot has its other in its round: else the mean of the differences would not be the
 * difference of the averages.
 */
export function roundDifferences(
  session: Session,
  metric: MetricId,
  { turns }: HitOrder,
): readonly number[] | null {
  const [own] = turns;
  const { contenders, hitters } = session;
  if (hitters.length !== 1 || contenders.length !== 2 || own?.turns.kind !== 'rounds') return null;
  const differences = pairDifferences(turnCells(session, metric, turns, contenders), 0, 1);
  const counted = session.shots.filter(
    ({ values, excluded }) => excluded === null && typeof values[metric] === 'number',
  );
  const allPaired = counted.length === 2 * differences.length;
  return differences.length < fewestRoundsJudged || !allPaired ? null : differences;
}

/**
 * The gap of two contenders by paired rounds: Student's t on the differences, so that a drift falls on both alike. Null
 * where all differences are one number, to the last digit.
 *
 * @param step the step the file's numbers are written in: a difference of two is rounded twice
 */
export function gapOfRounds(
  [a = '', b = '']: readonly string[],
  differences: readonly number[],
  level: number,
  step: number,
): Gap | null {
  const { n, mean, variance } = moments(differences);
  const believed = Math.max(variance, (step * step) / 6);
  if (!(believed > 0)) return null;
  return {
    a,
    b,
    method: 'paired-rounds',
    ...familyInterval({ estimate: mean, standardError: Math.sqrt(believed / n), df: n - 1 }, level, 2),
  };
}
