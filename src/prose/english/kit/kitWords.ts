import type { Source } from '../../../intake/authored/source.ts';
import { dateInWords } from '../../date.ts';
import { latestCorrection, stampWords } from './standing.ts';

type Dated = Pick<Source, 'front' | 'locale'>;

/** "Hit 18 April 2026, published 2 May 2026. Version 1.0.1 of the report.", and that the shots are invented. */
export function asAtWords({ front, locale }: Dated, version: string): string {
  const published = front.published === null ? '' : `, published ${dateInWords(front.published, locale)}`;
  return [
    `Hit ${dateInWords(front.date, locale)}${published}. Version ${version} of the report.`,
    stampWords(front),
  ]
    .filter((words) => words !== '')
    .join(' ');
}

/** That what was taken before a correction no longer holds; empty where nothing was corrected. */
export function outOfDateWords({ front, locale }: Dated): string {
  const latest = latestCorrection(front);
  return latest === null
    ? ''
    : `Corrected ${dateInWords(latest, locale)}; pictures taken before that day are out of date.`;
}

/** What each form of a picture is called beside its files. */
export const formNames = {
  wide: 'Wide',
  phone: 'For phones',
  square: 'Square',
  upright: 'Upright',
  video: 'Video',
  'lower-third': 'Lower third of a video',
  print: 'Print',
} as const;

export const noTerms = 'Terms of reuse are not recorded; ask before you print.';
