import type { Session } from '../intake/session.ts';
import type { Cell } from '../stats/additiveModel.ts';
import { meanOf } from '../stats/moments.ts';
import type { MetricId } from '../trade/metrics.ts';
import { shotsInOrder, type Turns } from './hitOrder.ts';

/**
 * The readings of one hitter as a table of turn by contender: one cell for each contender in each round, or the
 * mean of its visit. Treatments count in the order contenders are listed; left-out shots leave their cell empty.
 */
export function turnCells(session: Session, metric: MetricId, turns: Turns): readonly Cell[] {
  const [hitter] = session.hitters;
  const shots = hitter === undefined ? [] : shotsInOrder(session, hitter);
  return turns.blocks.flatMap((places, block) =>
    session.contenders.flatMap((contender, treatment): Cell[] => {
      const values = places.flatMap((place) => {
        const shot = shots[place];
        const value = shot?.values[metric];
        return shot?.contender === contender && shot.excluded === null && typeof value === 'number'
          ? [value]
          : [];
      });
      return values.length === 0 ? [] : [{ block, treatment, value: meanOf(values) }];
    }),
  );
}
