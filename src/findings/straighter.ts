import type { Session } from '../intake/session.ts';
import type { AnalysisInput } from './analysisInput.ts';
import type { PairFindings } from './findings.ts';
import type { HitOrder } from './hitOrder.ts';
import { metricFindings } from './metricFindings.ts';

/**
 * Which contender finished nearer the target line: the distance from it, left or right, judged as any exploratory
 * gap; less is straighter. Null without a side column.
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
  return metricFindings(
    { ...input, session, primaries: [], better: { ...input.better, side: 'less' } },
    column,
    order,
  ).pairs;
}
