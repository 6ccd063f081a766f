import type { Session, Shot } from '../intake/session.ts';
import { onceEach } from '../stats/onceEach.ts';

/** A hitter's shots in the order of their rows. */
export function shotsOfHitter(session: Session, hitter: string): readonly Shot[] {
  return inOrder(session).get(hitter) ?? [];
}

const inOrder = onceEach(({ shots }: Session): ReadonlyMap<string, readonly Shot[]> =>
  Map.groupBy(
    shots.toSorted((x, y) => x.order - y.order),
    ({ hitter }) => hitter,
  ),
);
