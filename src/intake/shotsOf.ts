import { withoutUnseen } from './authored/unseenCharacters.ts';
import { contenderMatcher, type NamedContender } from './contenderNames.ts';
import { markedInFile } from './exclusionsOf.ts';
import { clubName, inHitOrder } from './placedRows.ts';
import { hitterMatcher, type NamedHitter } from './rowHitters.ts';
import type { Shot } from './session.ts';
import type { ShotFile } from './shots/shotFile.ts';

/** The shots of these contenders by these hitters, in hit order; marked as left out is only what the files mark so. */
export function shotsOf(
  files: readonly ShotFile[],
  named: { readonly contenders: readonly NamedContender[]; readonly hitters: readonly NamedHitter[] },
): readonly Shot[] {
  const contenderOf = contenderMatcher(named.contenders);
  const hitterOf = hitterMatcher(named.hitters);
  const orders = new Map<string, number>();
  return inHitOrder(files).flatMap(({ row, file }): Shot[] => {
    const contender = contenderOf(clubName(row, file));
    const hitter = hitterOf(row.hitter);
    if (contender === null || hitter === null || row.warmUp) return [];
    const order = (orders.get(hitter) ?? 0) + 1;
    orders.set(hitter, order);
    const { round, shotNo, time, values, line, note } = row;
    const excluded = row.excluded
      ? { rule: markedInFile, reason: withoutUnseen(note ?? 'no reason given') }
      : null;
    return [{ contender, hitter, round, order, shotNo, time, values, excluded, place: { file, line } }];
  });
}
