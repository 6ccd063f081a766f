import { at } from '../stats/at.ts';
import type { Session } from '../intake/session.ts';
import type { Cell } from '../stats/additiveModel.ts';
import { meanOf } from '../stats/moments.ts';
import type { MetricId } from '../trade/metrics.ts';
import { type HitterTurns } from './hitOrder.ts';
import { shotsOfHitter } from './shotsOfHitter.ts';

/**
 * The readings as a table of turn by contender: one cell for each contender in each round, or the mean of its visit;
 * turns of different hitters are blocks apart. Treatments count in the order of `contenders`; left-out shots leave
 * their cell empty.
 */
export function turnCells(
  session: Session,
  metric: MetricId,
  turns: readonly HitterTurns[],
  contenders: readonly string[],
): readonly Cell[] {
  const blocks = turns.flatMap((own) => {
    const shots = shotsOfHitter(session, own.hitter);
    return own.turns.blocks.map((places) => places.flatMap((place) => at(shots, place)));
  });
  return blocks.flatMap((shots, block) =>
    contenders.flatMap((contender, treatment): Cell[] => {
      const values = shots.flatMap((shot) => {
        const value = shot.values[metric];
        const counts = shot.contender === contender && shot.excluded === null;
        return counts && typeof value === 'number' ? [value] : [];
      });
      return values.length === 0 ? [] : [{ block, treatment, value: meanOf(values) }];
    }),
  );
}
