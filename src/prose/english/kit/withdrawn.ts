import type { Source } from '../../../intake/authored/source.ts';
import { dateInWords } from '../../date.ts';
import { sentence } from '../../words.ts';

/** What stands wherever something of a report stood that was taken back. */
export interface WithdrawnWords {
  /** "Withdrawn on 25 June 2026" */
  readonly heading: string;
  readonly reason: string;
  /** What an editor has to know. */
  readonly goneFromKit: string;
  /** What a picture or a frame says besides. */
  readonly gone: string;
}

/** Null for a report that was not withdrawn. */
export function sayWithdrawn({
  front: { status, withdrawn },
  locale,
}: {
  readonly front: Pick<Source['front'], 'status' | 'withdrawn'>;
  readonly locale: Source['locale'];
}): WithdrawnWords | null {
  if (status !== 'withdrawn' || withdrawn === null) return null;
  return {
    heading: `Withdrawn on ${dateInWords(withdrawn.date, locale)}`,
    reason: sentence(withdrawn.reason),
    goneFromKit:
      'Its pictures, captions, mails and data are no longer given away; please print and show them no more. Where a page or a mail shows one of its pictures, a notice stands in its place.',
    gone: 'The chart that stood here no longer holds.',
  };
}
