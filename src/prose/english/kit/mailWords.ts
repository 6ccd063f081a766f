import type { Front } from '../../../intake/authored/front.ts';
import { dateInWords } from '../../date.ts';

/** Labels and fixed words of mails. */
export const mailWords = {
  interest: 'Our interest',
  caution: 'Keep in mind',
  sure: 'How sure',
  whom: 'Who hit',
  how: 'How',
  wholeReport: 'All shots, conditions and numbers',
  notAFitting: 'A comparison is not a fitting; try clubs with a qualified fitter.',
  /** "Carry: clear difference". */
  answerHeading: (measure: string, status: string): string =>
    `${measure}: ${status.charAt(0).toLowerCase()}${status.slice(1)}`,
  /** What was asked, when it was hit, and how the report stands. */
  question: (
    { question, date, inventedData }: Pick<Front, 'question' | 'date' | 'inventedData'>,
    changes: string,
  ): string =>
    [question, `Hit ${dateInWords(date)}.`, ...(inventedData ? ['Invented data.'] : []), changes]
      .join(' ')
      .trim(),
} as const;
