import type { Source } from '../../../intake/authored/source.ts';
import { dateInWords } from '../../date.ts';
import { changesWords, stampWords } from './standing.ts';

/** Labels and fixed words of mails. */
export const mailWords = {
  interest: 'Our interest',
  caution: 'Keep in mind',
  sure: 'How sure',
  whom: 'Who hit',
  how: 'How',
  ownSite: 'Our own site',
  wholeReport: 'All shots, conditions and numbers',
  notAFitting: 'A comparison is not a fitting; try clubs with a qualified fitter.',
  /** "Carry: clear difference". */
  answerHeading: (measure: string, status: string): string =>
    `${measure}: ${status.charAt(0).toLowerCase()}${status.slice(1)}`,
  /** What was asked, when it was hit, and how the report stands. */
  question: (source: Pick<Source, 'front' | 'locale'>): string =>
    [
      source.front.question,
      `Hit ${dateInWords(source.front.date, source.locale)}.`,
      stampWords(source.front),
      changesWords(source),
    ]
      .filter((words) => words !== '')
      .join(' '),
} as const;
