import type { DrawnFigure } from '../charts/figure.ts';
import { wrapText } from '../charts/textWidth.ts';
import { absoluteAddress, spokenAddress } from './absoluteAddress.ts';
import { cautionBesideAnswer } from '../prose/mind.ts';
import { capitalised, counted } from '../prose/words.ts';
import { interestInBrief, interestInShort } from './interestInShort.ts';
import type { Report } from './report.ts';
import { sentencesOf } from './sentences.ts';
import { golfersShotsAndOrder, modelWords, readingWords, standing } from './whoAndHow.ts';

export const stripText = { size: 14, weight: 400 } as const;

const mostLines = 4;

/** Charts from which a reader takes an answer: a caution that weighs on the answer stands on them. */
const answering = ['apart', 'hitters', 'luck', 'yards', 'price'];

/** Sentences of a caption without which its chart says something else: what bars are, of when prices are. */
const mustStay =
  /^(Bar|Ring|The ring is the average.* bar|The last bar|Upper bar|Lower bar|Prices of|A rough yardstick)\b/;

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
  const signs = signSentences(figure);
  const fewest = signs.filter((words) => mustStay.test(words)).length;
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
  const caution = isOneOf(answering, figure) ? (cautionBesideAnswer(report.telling) ?? '') : '';
  const who = [golfersShotsAndOrder(report), leftOut(report)];
  const reading = [model === '' ? readingWords(report) : model, standing(report), caution];
  return [joined(who), joined(reading), interest];
}

/** The figure without what its caption says of the page around it. */
export function withoutItsPage(figure: DrawnFigure): DrawnFigure {
  return { ...figure, finding: figure.finding.replace('; the reasons are listed below', '') };
}

function isOneOf(charts: readonly string[], { id }: DrawnFigure): boolean {
  return charts.some((chart) => id === chart || id.startsWith(`${chart}-`));
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

/** The caption's sentences: those that must stay, then those about other signs, then the rest. */
function signSentences({ finding }: DrawnFigure): readonly string[] {
  const place = (words: string): number =>
    mustStay.test(words) ? 0 : /\b(band|ring|mark|line|curve)\b/i.test(words) ? 1 : 2;
  return sentencesOf(finding)
    .filter((words) => !/^(None|\w+ shots?) left out\b/.test(words))
    .toSorted((x, y) => place(x) - place(y));
}
