import type { Front } from '../../../intake/authored/front.ts';
import { dateInWords } from '../../date.ts';

type Standing = Pick<Front, 'inventedData' | 'status' | 'corrections'>;

/** The day of the newest correction; null where there is none. */
export function latestCorrection({ corrections }: Pick<Front, 'corrections'>): string | null {
  return (
    corrections
      .map(({ date }) => date)
      .toSorted()
      .at(-1) ?? null
  );
}

/** What must stand with anything cut out of a report that is not as it was; empty otherwise. */
export function standingWords(front: Standing): string {
  return told([stampWords(front), changesWords(front)]);
}

/** The stamp alone: "Invented data."; empty where nobody calls them so. */
export function stampWords({ inventedData }: Pick<Standing, 'inventedData'>): string {
  return inventedData ? 'Invented data.' : '';
}

/** The same without the stamp, for places that have it by itself. */
export function changesWords(front: Standing): string {
  const latest = latestCorrection(front);
  return told([
    front.status === 'superseded' ? 'Replaced by a newer report.' : '',
    latest === null ? '' : `Corrected ${dateInWords(latest)}.`,
    front.status === 'draft' ? 'Draft, not published.' : '',
  ]);
}

/** All of it in the fewest words. */
export function standingInBrief({ inventedData, status, corrections }: Standing): string {
  return told([
    inventedData ? 'Invented data.' : '',
    status === 'superseded' ? 'Replaced.' : '',
    corrections.length > 0 ? 'Corrected.' : '',
    status === 'draft' ? 'Draft.' : '',
  ]);
}

function told(parts: readonly string[]): string {
  return parts.filter((words) => words !== '').join(' ');
}
