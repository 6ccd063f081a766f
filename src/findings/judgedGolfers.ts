import type { Session } from '../intake/session.ts';
import { pairsOf } from '../stats/gapInterval.ts';
import { onceEach } from '../stats/onceEach.ts';
import { median } from '../stats/quantile.ts';
import { fewestHittersAsUnit, fewestInCell, usualCell } from './thresholds.ts';

/** Golfers whose shots are judged beside one another, and those left out because they hit far fewer than usual. */
interface JudgedGolfers {
  readonly judged: readonly string[];
  readonly leftOut: readonly string[];
}

/**
 * Where golfers are the unit and one of them has far fewer shots with something than is usual, that average does not
 * count. If then too few golfers would be left for a pair, the golfer is left out and the rest are judged.
 */
export const judgedGolfers = onceEach((session: Session): JudgedGolfers => {
  const { hitters, contenders } = session;
  if (hitters.length < fewestHittersAsUnit) return { judged: hitters, leftOut: [] };
  const shots = countedShots(session);
  const cell = (hitter: string, contender: string): number => shots.get(`${hitter}\n${contender}`) ?? 0;
  const sizes = [...shots.values()];
  const least = sizes.length > 0 && median(sizes) >= usualCell ? fewestInCell : 1;
  const isThin = (hitter: string): boolean =>
    contenders.some((id) => cell(hitter, id) > 0 && cell(hitter, id) < least);
  const thin = hitters.filter(isThin);
  const both = (a: string, b: string, fewest: number): number =>
    hitters.filter((hitter) => cell(hitter, a) >= fewest && cell(hitter, b) >= fewest).length;
  const pairLost = pairsOf(contenders.length).some(([first, second]) => {
    const [a = '', b = ''] = [contenders[first], contenders[second]];
    return both(a, b, 1) >= fewestHittersAsUnit && both(a, b, least) < fewestHittersAsUnit;
  });
  return pairLost
    ? { judged: hitters.filter((hitter) => !thin.includes(hitter)), leftOut: thin }
    : { judged: hitters, leftOut: [] };
});

/** Counted shots of each golfer with each contender that has any. */
function countedShots({ shots }: Session): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { hitter, contender, excluded } of shots) {
    if (excluded !== null) continue;
    const key = `${hitter}\n${contender}`;
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return counts;
}
