import { withoutHidden } from './authored/hiddenCharacters.ts';
import { withoutUnseen } from './authored/unseenCharacters.ts';
import type { Contender } from './authored/contender.ts';

/** A contender as far as its names go. */
export type NamedContender = Pick<Contender, 'id' | 'label' | 'short' | 'match'>;

/** Finds the contender a club name in a CSV stands for; null when it stands for none. */
export function contenderMatcher(contenders: readonly NamedContender[]): (name: string) => string | null {
  const exact = new Map(
    contenders.flatMap(({ id, match = [] }) => match.map((name) => [asWritten(name), id])),
  );
  const loose = new Map(
    contenders.flatMap(({ id, label, short }) =>
      [id, label, ...(short === undefined ? [] : [short])].map((name) => [foldedName(name), id]),
    ),
  );
  return (name) => exact.get(asWritten(name)) ?? loose.get(foldedName(name)) ?? null;
}

/** A name as a report can write it. */
function asWritten(name: string): string {
  return withoutHidden(withoutUnseen(name)).normalize('NFC').trim();
}

/** Casing and runs of spaces do not tell names apart. */
export function foldedName(name: string): string {
  return asWritten(name).replace(/\s+/g, ' ').toLowerCase();
}
