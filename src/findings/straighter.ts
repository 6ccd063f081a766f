import type { Session } from '../intake/session.ts';
import { meanOf } from '../stats/moments.ts';
import type { AnalysisInput } from './analysisInput.ts';
import type { PairFindings } from './findings.ts';
import type { HitOrder } from './hitOrder.ts';
import { metricFindings } from './metricFindings.ts';
import { farOffLineM } from './thresholds.ts';

/**
 * Which contender finished nearer the target line: the distance from it, left or right, judged as any exploratory
 * gap; less is straighter. Not judged where shots lie far off the line on average and no target is stated: then the line
 * may not be where the golfer aimed. Null without a side column.
 */
export function straighterPairs(input: AnalysisInput, order: HitOrder): readonly PairFindings[] | null {
  const column = input.session.columns.side;
  if (column === undefined) return null;
  const session: Session = {
    ...input.session,
    shots: input.session.shots.map((shot) => {
      const { side } = shot.values;
      return typeof side === 'number' ? { ...shot, values: { ...shot.values, side: Math.abs(side) } } : shot;
    }),
  };
  const better = { ...input.better, side: 'less' as const };
  const { pairs } = metricFindings({ ...input, session, primaries: [], better }, column, order);
  const aimKnown = input.written.conditions.target !== undefined || !isAimedOff(input.session);
  return aimKnown ? pairs : pairs.map(aimedOff);
}

/** Whether the counted shots lie far to one side on average. */
function isAimedOff({ shots }: Session): boolean {
  const sides = shots.flatMap(({ values, excluded }) => (excluded === null ? (values.side ?? []) : []));
  return sides.length > 0 && Math.abs(meanOf(sides)) > farOffLineM;
}

function aimedOff(pair: PairFindings): PairFindings {
  const { a, b } = pair;
  return {
    ...pair,
    estimate: null,
    ci: null,
    p: null,
    method: null,
    verdict: 'not-judged',
    status: 'not-judged',
    ahead: null,
    notJudged: pair.notJudged ?? { because: 'aim-off-line', contenders: [a, b], fewest: null },
    holds: [],
    singleShot: null,
    driftNeeded: null,
    byRounds: null,
    leaveOneOut: null,
    withLeftOut: null,
    device: null,
    byHitter: [],
    hittersDiffer: [],
    whoGained: null,
    newHitter: null,
  };
}
