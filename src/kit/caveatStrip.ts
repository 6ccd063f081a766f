import type { DrawnFigure } from '../charts/figure.ts';
import { wrapText } from '../charts/textWidth.ts';
import { absoluteAddress, spokenAddress } from './absoluteAddress.ts';
import { interestInShort } from './interestInShort.ts';
import type { Report } from './report.ts';
import { sentencesOf } from './sentences.ts';
import { golfersShotsAndOrder, readingWords, standing } from './whoAndHow.ts';

export const stripText = { size: 14, weight: 400 } as const;

const mostLines = 4;

/** Charts that show what a flight model makes of the readings. */
const modelled = ['yards', 'launch-and-spin'];

/**
 * Lines of the strip under a chart that leaves its page, each at most `width` px: what its signs are; golfers, shots,
 * order, date; measured or calculated; the shop's interest; whether corrected; address and version. At most four lines,
 * for which explanations of signs give way; what the reader must not miss gets a fifth line rather than being cut.
 */
export function caveatStrip(
  report: Report,
  figure: DrawnFigure,
  version: string,
  width: number,
): readonly string[] {
  const { source } = report;
  const address = absoluteAddress(source.shop)?.(`/reports/${source.slug}/`) ?? null;
  const model = modelled.includes(figure.id) ? 'An estimate by a flight model, not measured.' : '';
  const needed = [
    golfersShotsAndOrder(report),
    [model === '' ? readingWords(report) : model, standing(report)].filter((words) => words !== '').join(' '),
    interestInShort(report),
    `${address === null ? (source.shop?.name ?? 'Publisher not recorded') : spokenAddress(address)}. Straightface ${version}.`,
  ];
  const signs = signSentences(figure);
  for (let kept = signs.length; kept >= 0; kept -= 1) {
    const shown = signs.slice(0, kept).join(' ');
    for (const groups of groupings(shown, needed)) {
      const lines = groups.flatMap((words) => wrapText(words, stripText.size, stripText.weight, width));
      if (lines.length <= mostLines) return lines;
    }
  }
  return wrapText(needed.join(' '), stripText.size, stripText.weight, width);
}

/** Ways of breaking the strip into paragraphs, the one that is easiest to read first. */
function groupings(signs: string, needed: readonly string[]): readonly (readonly string[])[] {
  const [who = '', reading = '', interest = '', address = ''] = needed;
  return [
    [signs, `${who} ${reading}`, interest, address],
    [signs, `${who} ${reading} ${interest}`, address],
    [`${signs} ${who} ${reading} ${interest}`, address],
    [[signs, ...needed].join(' ')],
  ];
}

/** The caption's sentences, those that explain bar or curve first, then those about other signs. */
function signSentences({ finding }: DrawnFigure): readonly string[] {
  const place = (words: string): number =>
    /\b(bar|curve)\b/i.test(words) ? 0 : /\b(band|ring|mark|line)\b/i.test(words) ? 1 : 2;
  return sentencesOf(finding).toSorted((x, y) => place(x) - place(y));
}
