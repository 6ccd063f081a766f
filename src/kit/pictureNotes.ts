import type { DrawnFigure } from '../charts/figure.ts';
import { stripSentences } from './caveatStrip.ts';
import { publisherOf } from './interestInShort.ts';
import { licenceAddress, licenceText } from './licences.ts';
import type { Picture } from './pictureOf.ts';
import type { PngText } from './pngNotes.ts';
import type { Report } from './report.ts';
import { textOf, type SaidKind } from './said.ts';
import { xmpPacket } from './xmpPacket.ts';

/**
 * What the file of a chart's raster says of it: finding, alternative text, who made it, on what terms it may be used,
 * what it must not be printed without, and where it is from, in which version.
 */
export function pictureNotes(
  report: Report,
  figure: DrawnFigure,
  { title, alternativeText }: Pick<Picture, 'title' | 'alternativeText'>,
): readonly PngText[] {
  const sentences = stripSentences(report, figure, () => true);
  const ofKind = (wanted: SaidKind): string => textOf(sentences.filter(({ kind }) => kind === wanted));
  const { terms, credit, licenceCharts } = report.source.shop?.reuse ?? {};
  const creator = credit ?? publisherOf(report);
  const rights = [creator, licenceCharts === undefined ? undefined : licenceText(licenceCharts), terms]
    .filter((words) => words !== undefined)
    .join('. ');
  const [source, instructions] = [ofKind('credit'), ofKind('stamp')];
  const licence = licenceCharts === undefined ? null : licenceAddress(licenceCharts);
  const texts: readonly PngText[] = [
    { keyword: 'Title', text: title },
    { keyword: 'Description', text: alternativeText },
    { keyword: 'Author', text: creator },
    { keyword: 'Copyright', text: rights },
    { keyword: 'Warning', text: instructions },
    { keyword: 'Comment', text: source },
    {
      keyword: 'XML:com.adobe.xmp',
      text: xmpPacket({ title, alternativeText, creator, rights, licence, source, instructions }),
    },
  ];
  return texts.filter(({ text }) => text !== '');
}
