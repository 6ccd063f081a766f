import type { DrawnFigure } from '../charts/figure.ts';
import type { MetricFindings, PairFindings } from '../findings/findings.ts';
import { calculatedBy, primaryMetrics, surestFirst } from '../prose/answer.ts';
import { dateInWords } from '../prose/date.ts';
import { orderInWords } from '../prose/forWhom.ts';
import { gapNumbers, pairSentence } from '../prose/pairSentence.ts';
import { luckSentence } from '../prose/reachSentences.ts';
import type { Telling } from '../prose/telling.ts';
import { absoluteAddress } from './absoluteAddress.ts';
import { gapsMetric } from './headline.ts';
import { interestInBrief, interestInShort, publisherOf } from './interestInShort.ts';
import type { Report } from './report.ts';
import { fitSentences, type Ranked } from './sentences.ts';
import { golfersAndShots, modelWords, readingWords, standing, standingInBrief } from './whoAndHow.ts';
import { capitalised } from '../prose/words.ts';
import { metrics } from '../trade/metrics.ts';

/** Longest caption of each length, characters. */
export const captionLimits = { short: 120, middle: 280, long: 600 } as const;

export type CaptionLength = keyof typeof captionLimits;

/** Captions in three lengths; each is true when it is printed alone. */
export type Captions = Readonly<Record<CaptionLength, string>>;

/** Captions of one chart of a report. Each holds the number of shots and golfers and the answer. */
export function captions(report: Report, figure: DrawnFigure): Captions {
  const metric = metricOf(figure, report);
  // A contender that was not judged says so in each of its pairs.
  const answers =
    metric === null
      ? []
      : [...new Set(surestFirst(metric).map((pair) => pairSentence(pair, metric, report.telling)))];
  const how = workedOutBy(metric);
  return {
    short: shortest(report, how.brief, answers),
    middle: middle(report, figure, how.full, answers),
    long: long(report, figure, how.full, metric),
  };
}

/** The metric whose answer stands in a figure's captions: its own, else the first main measure. */
function metricOf({ about }: DrawnFigure, { findings }: Report): MetricFindings | null {
  const own = findings.metrics.find(({ id }) => about.of !== 'report' && id === about.metric);
  return own ?? primaryMetrics(findings)[0] ?? null;
}

/**
 * "Carry by our own flight model.", "Carry calculated.": what an answer has to say in the same breath, in full and in
 * brief; empty where readings need no such word.
 */
function workedOutBy(metric: MetricFindings | null): { readonly full: string; readonly brief: string } {
  const by = metric === null ? '' : calculatedBy(metric).trim().replace(/,$/, '');
  if (metric === null || by === '') return { full: '', brief: '' };
  const name = capitalised(metrics[metric.id].name);
  return { full: `${name} ${by}.`, brief: `${name} calculated.` };
}

interface Opening {
  readonly text: string;
  readonly stands: string;
  /** Whether it holds the answer. */
  readonly whole: boolean;
}

/**
 * Golfers, shots and an answer, and how the report stands, in so few words that both have room: the first that fits, at
 * last without the answer.
 */
function openingThatFits(report: Report, answer: string, room: number): Opening {
  const who = golfersAndShots(report);
  const fewer = who.replace(/ with each .*$/, ' with each');
  const [stands, brief] = [standing(report), standingInBrief(report)];
  const last = { text: `${fewer}: see the report.`, stands: brief, whole: false };
  const all: readonly Opening[] = [
    { text: `${who}: ${answer}`, stands, whole: true },
    { text: `${who}: ${answer}`, stands: brief, whole: true },
    { text: `${fewer}: ${answer}`, stands: brief, whole: true },
    { text: `${who}: for the answer see the report.`, stands: brief, whole: false },
    last,
  ];
  const possible = all.filter(({ whole }) => !whole || answer !== '');
  return possible.find(({ text, stands: own }) => `${text} ${own}`.trim().length <= room) ?? last;
}

function shortest(report: Report, how: string, [first = '', ...others]: readonly string[]): string {
  const room = captionLimits.short - (how === '' ? 0 : how.length + 1);
  const { text, stands, whole } = openingThatFits(report, first, room);
  return fitSentences(
    [
      { text, rank: 0 },
      ...(whole ? others : []).map((other, index): Ranked => ({ text: other, rank: 1 + index })),
      { text: whole ? how : '', rank: 0 },
      { text: interestInBrief(report), rank: 0.3 },
      { text: stands, rank: 0 },
    ],
    captionLimits.short,
  );
}

function middle(
  report: Report,
  figure: DrawnFigure,
  how: string,
  [first = '', ...others]: readonly string[],
): string {
  const { front } = report.source;
  const model = modelWords(figure);
  const fixed = [how, model].filter((words) => words !== '').map(({ length }) => length + 1);
  const room = fixed.reduce((left, length) => left - length, captionLimits.middle);
  const brief = interestInBrief(report);
  const { text, stands, whole } = openingThatFits(report, first, room - brief.length - 1);
  return fitSentences(
    [
      { text, rank: 0 },
      ...(whole ? others : []).map((other, index): Ranked => ({ text: other, rank: 1 + index })),
      ...chartWords(report, figure),
      { text: model, rank: 0 },
      { text: whole ? how : '', rank: 0 },
      { text: model === '' && how === '' ? readingWords(report) : '', rank: 31 },
      { text: interestThatFits(report, room - text.length - stands.length - 2), rank: 0 },
      {
        text: `Hit ${dateInWords(front.date, report.source.locale)}, ${orderInWords(report.findings.design.order)}.`,
        rank: 32,
      },
      { text: stands, rank: 0 },
    ],
    captionLimits.middle,
  );
}

/** The shop's interest in as many words as there is room for, characters. */
function interestThatFits(report: Report, room: number): string {
  return (
    [interestInShort(report), interestInShort(report, 'The shop')].find(({ length }) => length < room) ??
    interestInBrief(report, room)
  );
}

/** What the chart itself shows, where that is not the answer. */
function chartWords(report: Report, figure: DrawnFigure): readonly Ranked[] {
  const subject = { text: `${figure.subject}.`, rank: 43 };
  if (gapsMetric(report, figure) !== null) return [subject];
  return [
    { ...subject, rank: 0.4 },
    { text: figure.shows ?? '', rank: 0.6 },
  ];
}

function withNumbers(pair: PairFindings, metric: MetricFindings, telling: Telling): string {
  const answer = pairSentence(pair, metric, telling);
  return pair.estimate === null ? answer : `${answer} ${gapNumbers(pair, metric, telling)}`;
}

function long(report: Report, figure: DrawnFigure, how: string, metric: MetricFindings | null): string {
  const { source, telling, findings } = report;
  const address = absoluteAddress(source.shop)?.(`/reports/${source.slug}/`) ?? null;
  const credit = source.shop?.reuse.credit ?? publisherOf(report);
  const [first = '', ...others] =
    metric === null
      ? []
      : [...new Set(surestFirst(metric).map((pair) => withNumbers(pair, metric, telling)))];
  const model = modelWords(figure);
  const fixed = [how, model].filter((words) => words !== '').map(({ length }) => length + 1);
  const room = fixed.reduce((left, length) => left - length, captionLimits.long);
  const brief = interestInBrief(report);
  const { text, stands, whole } = openingThatFits(report, first, room - brief.length - 1);
  return fitSentences(
    [
      { text, rank: 0 },
      ...(whole ? others : []).map((other, index): Ranked => ({ text: other, rank: 1 + index })),
      ...chartWords(report, figure),
      { text: model, rank: 0 },
      { text: whole ? how : '', rank: 0 },
      { text: metric === null ? '' : (luckSentence(metric, telling) ?? ''), rank: 41 },
      { text: model === '' ? readingWords(report) : '', rank: 31 },
      {
        text: `Hit ${dateInWords(source.front.date, source.locale)}, ${orderInWords(findings.design.order)}.`,
        rank: 32,
      },
      { text: findings.design.hitters === 1 ? 'Yours may differ in size or direction.' : '', rank: 40 },
      { text: interestThatFits(report, room - text.length - stands.length - 2), rank: 0 },
      { text: stands, rank: 0 },
      { text: `${credit}${address === null ? '' : `, ${address}`}`, rank: 42 },
    ],
    captionLimits.long,
  );
}
