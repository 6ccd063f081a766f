import { dateInWords } from '../../date.ts';

/** Over a version that was kept. */
export const olderVersionWords = (day: string, locale: string): string =>
  `This is the report as it was before the correction of ${dateInWords(day, locale)}.`;

export const presentVersion = 'The report as it stands';

/** Beside a correction. */
export const asItWasBefore = 'The report as it was before';
