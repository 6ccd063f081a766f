import type { DrawnFigure } from '../charts/figure.ts';
import { figureTraits } from '../charts/figureTraits.ts';
import { wrapText } from '../charts/textWidth.ts';
import { absoluteAddress, spokenAddress } from './absoluteAddress.ts';
import { cautionBesideAnswer } from '../prose/mind.ts';
import { capitalised, counted } from '../prose/words.ts';
import { interestInBrief, interestInShort } from './interestInShort.ts';
import type { Report } from './report.ts';
import { golfersShotsAndOrder, modelWords, readingWords, standing } from './whoAndHow.ts';

export const stripText = { size: 14, weight: 400 } as const;

const mostLines = 4;

/**
 * Lines of the strip under a chart that leaves its page, each at most `width` px: what its signs are; golfers, shots,
 * order, date; measured or calculated; whether corrected; the caution that weighs on the answer; the shop's interest;
 * address and version. At most four lines, for which further explanations give way, then the shop's name (its address
 * stands), then the names in its interest; what the reader must not miss gets a further line rather than being cut.
 */
export function caveatStrip(
  report: Report,
  figure: DrawnFigure,
  version: string,
  width: number,
): readonly string[] {
  const { source } = report;
  const address = absoluteAddress(source.shop)?.(`/reports/${source.slug}/`) ?? null;
  const where = `${address === null ? (source.shop?.name ?? 'Publisher not recorded') : spokenAddress(address)}. Straightface ${version}.`;
  const needs = (interest: string): readonly string[] => [...caveats(report, figure, interest), where];
  const signs = [...figure.signs, ...figure.found];
  const fewest = figure.signs.length;
  const wrap = (words: string): readonly string[] => wrapText(words, stripText.size, stripText.weight, width);
  const brief = interestInBrief(report);
  for (const interest of [interestInShort(report), interestInShort(report, 'The shop'), brief]) {
    for (let kept = signs.length; kept >= fewest; kept -= 1) {
      for (const groups of groupings(signs.slice(0, kept).join(' '), needs(interest))) {
        const lines = groups.flatMap(wrap);
        if (lines.length <= mostLines) return lines;
      }
    }
  }
  return wrap(joined([...signs.slice(0, fewest), ...needs(brief)]));
}

/**
 * What goes with a chart wherever it goes: golfers, shots, order, date, shots left out; measured or calculated, whether
 * corrected, the caution that weighs on its answer; the shop's interest.
 */
export function caveats(
  report: Report,
  figure: DrawnFigure,
  interest = interestInShort(report),
): readonly string[] {
  const model = modelWords(figure);
  const caution = figureTraits[figure.chart].answering ? (cautionBesideAnswer(report.telling) ?? '') : '';
  const who = [golfersShotsAndOrder(report), leftOut(report)];
  const reading = [model === '' ? readingWords(report) : model, standing(report), caution];
  return [joined(who), joined(reading), interest];
}

/** The figure without what its caption says of the page around it. */
export function withoutItsPage({ onPage: _, ...figure }: DrawnFigure): DrawnFigure {
  return figure;
}

/** How many shots no figure counts. */
function leftOut({ session }: Report): string {
  const count = session.shots.filter(({ excluded }) => excluded !== null).length;
  return count === 0 ? '' : `${capitalised(counted(count, 'shot'))} left out.`;
}

const joined = (parts: readonly string[]): string => parts.filter((words) => words !== '').join(' ');

/** Ways of breaking the strip into paragraphs, the one that is easiest to read first. */
function groupings(signs: string, needs: readonly string[]): readonly (readonly string[])[] {
  const [who = '', reading = '', interest = '', address = ''] = needs;
  return [
    [signs, `${who} ${reading}`, interest, address],
    [signs, `${who} ${reading} ${interest}`, address],
    [`${signs} ${who} ${reading} ${interest}`, address],
    [[signs, ...needs].join(' ')],
  ];
}
