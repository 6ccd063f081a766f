import { asAtWords, noTerms, outOfDateWords } from '../prose/english/kit/kitWords.ts';
import { changesWords } from '../prose/english/kit/standing.ts';
import { interestSentences } from '../prose/interest.ts';
import { captionLimits, type CaptionLength } from './captions.ts';
import { creditLine } from './creditLine.ts';
import { publisherOf } from './interestInShort.ts';
import { kitOf, type KitItem } from './kitOf.ts';
import { licenceText } from './licences.ts';
import { pictureFiles } from './pictureFiles.ts';
import type { Report } from './report.ts';
import { reportVersion } from './reportVersion.ts';
import { scriptSeconds, spokenScripts } from './spokenScript.ts';

const lengths: readonly CaptionLength[] = ['short', 'middle', 'long'];

/** Captions, alternative texts, what a presenter says, and the names of the pictures that they go with, as one plain text. */
export function captionsText(report: Report): string {
  const { source } = report;
  return paragraphs([
    `${source.front.title}: captions and alternative texts`,
    [asAtWords(source, reportVersion(source)), changesWords(source)]
      .filter((words) => words !== '')
      .join('\n'),
    ...kitOf(report).offered.flatMap((item) => ofChart(report, item)),
    ...(['short', 'long'] as const).map((length) =>
      labelled(`To say in ${scriptSeconds[length]} seconds`, spokenScripts(report)[length]),
    ),
  ]);
}

function ofChart(report: Report, item: KitItem): readonly string[] {
  const { title, headline, captions, alt } = item;
  const files = pictureFiles(report, item.figure).flatMap(({ name, endings }) =>
    endings.map((ending) => `charts/${name}.${ending}`),
  );
  return [
    `${title}\n${'-'.repeat([...title].length)}`,
    files.join(', '),
    labelled('Finding', headline),
    ...lengths.map((length) =>
      labelled(`Caption, up to ${captionLimits[length]} characters`, captions[length]),
    ),
    labelled('Alternative text', alt),
  ];
}

/** Whose it all is, on what terms, and what the publisher has to gain: the first file that somebody opens. */
export function termsText(report: Report): string {
  const { source } = report;
  const { licenceCharts, licenceData, terms } = source.shop?.reuse ?? {};
  return paragraphs([
    `${source.front.title}, by ${publisherOf(report)}`,
    [
      asAtWords(source, reportVersion(source)),
      outOfDateWords(source),
      ...(source.front.status === 'superseded' ? ['A newer report has replaced this one.'] : []),
    ]
      .filter((words) => words !== '')
      .join('\n'),
    labelled('Credit', creditLine(report)),
    labelled('Terms', terms ?? noTerms),
    ...(licenceCharts === undefined ? [] : [labelled('Licence of the charts', licenceText(licenceCharts))]),
    ...(licenceData === undefined
      ? []
      : [labelled('Licence of the shots and findings', licenceText(licenceData))]),
    labelled('Our interest', interestSentences(source).join(' ')),
    [
      'captions.txt: captions and alternative texts of every chart',
      'charts/: every chart as PNG and SVG, and what it draws as CSV and JSON',
      'shots.csv, findings.json, datapackage.json: every shot, what follows from them, what the columns mean',
      'reproduce.R, reproduce.py: recalculate the findings from the shots',
      ...(source.shop?.address == null
        ? []
        : ['email.html, email.txt, email-block.html: the report as a mail']),
    ].join('\n'),
  ]);
}

const labelled = (label: string, words: string): string => `${label}:\n${words}`;

const paragraphs = (parts: readonly string[]): string => `${parts.join('\n\n')}\n`;
