import type { DrawnFigure } from '../charts/figure.ts';
import type { MetricFindings } from '../findings/findings.ts';
import { primaryMetrics, surestFirst } from '../prose/answer.ts';
import { dateInWords } from '../prose/date.ts';
import { orderInWords } from '../prose/forWhom.ts';
import { gapNumbers, pairSentence } from '../prose/pairSentence.ts';
import { luckSentence } from '../prose/reachSentences.ts';
import { absoluteAddress } from './absoluteAddress.ts';
import { gapsMetric, subjectOf } from './headline.ts';
import { interestInShort, publisherOf } from './interestInShort.ts';
import type { Report } from './report.ts';
import { fitSentences, sentencesOf, type Ranked } from './sentences.ts';
import { golfersAndShots, readingWords, standing } from './whoAndHow.ts';
import { capitalised } from '../prose/words.ts';

/** Longest caption of each length, characters. */
export const captionLimits = { short: 120, middle: 280, long: 600 } as const;

export type CaptionLength = keyof typeof captionLimits;

/** Captions in three lengths; each is true when it is printed alone. */
export type Captions = Readonly<Record<CaptionLength, string>>;

/** Captions of one chart of a report. Each holds the number of shots and golfers and the answer. */
export function captions(report: Report, figure: DrawnFigure): Captions {
  const metric = gapsMetric(report, figure) ?? primaryMetrics(report.findings)[0] ?? null;
  const who = golfersAndShots(report);
  // A contender that was not judged says so in each of its pairs.
  const answers =
    metric === null
      ? []
      : [...new Set(surestFirst(metric).map((pair) => pairSentence(pair, metric, report.telling)))];
  return {
    short: shortest(report, who, answers),
    middle: middle(report, figure, who, answers),
    long: long(report, figure, who, metric),
  };
}

function shortest(report: Report, who: string, answers: readonly string[]): string {
  const [first = '', ...others] = answers;
  const stands = standing(report);
  const opening = `${who}: ${first}`;
  const told = fitSentences(
    [
      { text: opening, rank: 0 },
      ...others.map((text, index): Ranked => ({ text, rank: 1 + index })),
      { text: interestInShort(report, 'The shop'), rank: 0.3 },
      { text: stands, rank: 0 },
    ],
    captionLimits.short,
  );
  if (first !== '' && told.length <= captionLimits.short) return told;
  return fitSentences(
    [
      { text: `${who}: for the answer see the report.`, rank: 0 },
      { text: stands, rank: 0 },
    ],
    captionLimits.short,
  );
}

function middle(report: Report, figure: DrawnFigure, who: string, answers: readonly string[]): string {
  const [first = '', ...others] = answers;
  const { front } = report.source;
  const needed = [`${who}: ${first}`, standing(report)];
  return fitSentences(
    [
      { text: `${who}: ${first}`, rank: 0 },
      ...others.map((text, index): Ranked => ({ text, rank: 1 + index })),
      ...chartWords(report, figure),
      { text: readingWords(report), rank: 31 },
      { text: fittingInterest(report, captionLimits.middle - needed.join(' ').length - 1), rank: 0.3 },
      { text: `Hit ${dateInWords(front.date)}, ${orderInWords(report.findings.design.order)}.`, rank: 32 },
      { text: standing(report), rank: 0 },
    ],
    captionLimits.middle,
  );
}

/** The shop's interest in as many words as there is room for: what it sells is said before all else. */
function fittingInterest(report: Report, room: number): string {
  const short = interestInShort(report, 'The shop');
  const [selling = ''] = sentencesOf(short);
  const forms = [interestInShort(report), short, `${selling} The report states more interests.`];
  return forms.find(({ length }) => length <= room) ?? '';
}

/** What the chart itself shows, where that is not the answer. */
function chartWords(report: Report, figure: DrawnFigure): readonly Ranked[] {
  const subject = { text: `${capitalised(subjectOf(figure))}.`, rank: 43 };
  if (gapsMetric(report, figure) !== null) return [subject];
  const [first = ''] = sentencesOf(figure.description);
  // "Heron: 12 shots" is about one of them, and without the others it would favour it.
  const ofOne = /^[^.:]+: /.test(first);
  return [{ ...subject, rank: 0.4 }, ...(ofOne ? [] : [{ text: first, rank: 0.6 }])];
}

function long(report: Report, figure: DrawnFigure, who: string, metric: MetricFindings | null): string {
  const { source, telling, findings } = report;
  const pairs = metric === null ? [] : surestFirst(metric);
  const address = absoluteAddress(source.shop)?.(`/reports/${source.slug}/`) ?? null;
  const credit = source.shop?.reuse.credit ?? publisherOf(report);
  const told = pairs.map((pair) => {
    if (metric === null) return '';
    const answer = pairSentence(pair, metric, telling);
    return pair.estimate === null ? answer : `${answer} ${gapNumbers(pair, metric, telling)}`;
  });
  const answers = [...new Set(told)].map((text, index): Ranked =>
    index === 0 ? { text: `${who}: ${text}`, rank: 0 } : { text, rank: index },
  );
  return fitSentences(
    [
      ...(answers.length > 0 ? answers : [{ text: `${who}.`, rank: 0 }]),
      ...chartWords(report, figure),
      { text: metric === null ? '' : (luckSentence(metric, telling) ?? ''), rank: 41 },
      { text: readingWords(report), rank: 31 },
      {
        text: `Hit ${dateInWords(source.front.date)}, ${orderInWords(findings.design.order)}.`,
        rank: 32,
      },
      { text: findings.design.hitters === 1 ? 'Yours may differ in size or direction.' : '', rank: 40 },
      { text: interestInShort(report), rank: 0.3 },
      { text: standing(report), rank: 0 },
      { text: `${credit}${address === null ? '' : `, ${address}`}`, rank: 42 },
    ],
    captionLimits.long,
  );
}
