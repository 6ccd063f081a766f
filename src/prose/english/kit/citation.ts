import type { Source } from '../../../intake/authored/source.ts';
import { dateInWords } from '../../date.ts';
import { latestCorrection } from './standing.ts';

/**
 * How to cite a report: "Example Golf Workshop: Three balls, one iron. Hit 18 April 2026, published 2 May 2026. Version
 * 1.0.1, corrected 3 May 2026. https://..."
 *
 * @param version of the report
 * @param address of its page; null while the site has none
 */
export function citation(
  { front, locale }: Pick<Source, 'front' | 'locale'>,
  {
    publisher,
    version,
    address,
  }: { readonly publisher: string; readonly version: string; readonly address: string | null },
): string {
  const day = (date: string): string => dateInWords(date, locale);
  const corrected = latestCorrection(front);
  const title = /[.?!]$/.test(front.title) ? front.title : `${front.title}.`;
  return [
    `${publisher}: ${title}`,
    `Hit ${day(front.date)}${front.published === null ? '' : `, published ${day(front.published)}`}.`,
    ...(front.inventedData ? ['Invented data.'] : []),
    `Version ${version}${corrected === null ? '' : `, corrected ${day(corrected)}`}.`,
    ...(address === null ? [] : [address]),
  ].join(' ');
}
