import type { Front } from '../../../intake/authored/front.ts';
import type { Source } from '../../../intake/authored/source.ts';
import { dateInWords } from '../../date.ts';
import { countWord } from '../../words.ts';
import { sentence } from '../../words.ts';

type Standing = Pick<Front, 'inventedData' | 'status' | 'corrections'>;

/** How a report stands, and in which form its days are written. */
interface Dated {
  readonly front: Standing;
  readonly locale: Source['locale'];
}

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
export function standingWords(source: Dated): string {
  return told([stampWords(source.front), changesWords(source)]);
}

/** The stamp alone: "Invented data."; empty where nobody calls them so. */
export function stampWords({ inventedData }: Pick<Standing, 'inventedData'>): string {
  return inventedData ? 'Invented data.' : '';
}

/** What a list says first of reports whose shots are made up; null where none is. */
export function inventedInList(fronts: readonly Pick<Standing, 'inventedData'>[]): string | null {
  const invented = fronts.filter(({ inventedData }) => inventedData).length;
  if (invented === 0) return null;
  return invented === fronts.length
    ? 'Every shot in these reports is made up.'
    : `In ${countWord(invented)} of these ${countWord(fronts.length)} reports the shots are made up; each says so.`;
}

/** The same without the stamp, for places that have it by itself. */
export function changesWords({ front, locale }: Dated): string {
  const latest = latestCorrection(front);
  return told([
    front.status === 'superseded' ? 'Replaced by a newer report.' : '',
    latest === null ? '' : `Corrected ${dateInWords(latest, locale)}.`,
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

/** Of a report that was taken back, the day and the reason; empty of any other. */
export function withdrawnWords({
  front: { withdrawn },
  locale,
}: {
  readonly front: Pick<Front, 'withdrawn'>;
  readonly locale: Source['locale'];
}): string {
  return withdrawn === null
    ? ''
    : `This report was withdrawn on ${dateInWords(withdrawn.date, locale)}. ${sentence(withdrawn.reason)}`;
}

function told(parts: readonly string[]): string {
  return parts.filter((words) => words !== '').join(' ');
}
