import type { MetricFindings } from '../findings/findings.ts';
import { answerSentences, howMuch, primaryMetrics, surestFirst } from '../prose/answer.ts';
import { dateInWords } from '../prose/date.ts';
import { forWhom } from '../prose/forWhom.ts';
import { interestSentences } from '../prose/interest.ts';
import { gapNumbers, pairSentence } from '../prose/pairSentence.ts';
import { luckSentence } from '../prose/reachSentences.ts';
import { metricName } from '../prose/metricName.ts';
import type { Telling } from '../prose/telling.ts';
import { capitalised } from '../prose/words.ts';
import type { Absolute } from './absoluteAddress.ts';
import { altText } from './altText.ts';
import { exportedHeight, exportWidth } from './exportedSvg.ts';
import { publisherOf } from './interestInShort.ts';
import { awayFromPage } from './headline.ts';
import { kitOf } from './kitOf.ts';
import type { Report } from './report.ts';
import { mindInShort, standing } from './whoAndHow.ts';

/** Width of an image in a mail, px: mails are read at 600. */
export const mailWidth = 600;

/** Longest alternative text, characters: the mail says it all in words, and with images off it has to fit the image's place. */
const longestAlt = 320;

export interface MailImage {
  readonly address: string;
  readonly alt: string;
  readonly height: number;
}

/** What both parts of a mail say, in the order they say it: the interest before any result. */
export interface EmailParts {
  readonly publisher: string;
  readonly title: string;
  readonly question: string;
  readonly interest: string;
  readonly answer: string;
  /** The same where no table follows. */
  readonly answerAlone: string;
  readonly amounts: string;
  readonly whom: string;
  readonly mind: string;
  /** Of each main metric every pair's answer and its numbers. */
  readonly gaps: readonly {
    /** Named where there is more than one metric; else empty. */
    readonly of: string;
    readonly rows: readonly { readonly answer: string; readonly numbers: string }[];
  }[];
  readonly image: MailImage | null;
  readonly report: string;
  readonly terms: string;
}

/** Every pair's answer with its numbers; one that was not judged says so once, whatever its pairs. */
function gapLines(metric: MetricFindings, telling: Telling): EmailParts['gaps'][number]['rows'] {
  const lines = surestFirst(metric).map((pair) => ({
    answer: pairSentence(pair, metric, telling),
    numbers: pair.estimate === null ? '' : gapNumbers(pair, metric, telling),
  }));
  return lines.filter(
    ({ answer, numbers }, index) =>
      numbers !== '' || lines.findIndex((line) => line.answer === answer) === index,
  );
}

export function emailParts(report: Report, absolute: Absolute, version: string): EmailParts {
  const { source, session, telling, findings } = report;
  const { front, shop, slug } = source;
  const metrics = primaryMetrics(findings);
  const [first] = kitOf(report).offered;
  const scale = mailWidth / exportWidth;
  return {
    publisher: publisherOf(report),
    title: front.title,
    question: `${front.question} Hit ${dateInWords(front.date, source.locale)}.${front.inventedData ? ' Invented data.' : ''}`,
    interest: interestSentences(source).join(' '),
    answer: metrics.flatMap((metric) => answerSentences(metric, telling)).join(' '),
    answerAlone: awayFromPage(metrics.flatMap((metric) => answerSentences(metric, telling))).join(' '),
    amounts: metrics
      .map((metric) => {
        const told = [...howMuch(metric, telling), luckSentence(metric, telling) ?? ''];
        const words = told.filter((one) => one !== '').join(' ');
        return words !== '' && metrics.length > 1 ? `${capitalised(metricName(metric.id))}: ${words}` : words;
      })
      .filter((words) => words !== '')
      .join(' '),
    whom: forWhom(source, session, telling).join(' '),
    mind: [mindInShort(report), standing(report).replace('Invented data.', '').trim()]
      .filter((words) => words !== '')
      .join(' '),
    gaps: metrics.map((metric) => ({
      of: metrics.length > 1 ? capitalised(metricName(metric.id)) : '',
      rows: gapLines(metric, telling),
    })),
    image:
      first === undefined
        ? null
        : {
            address: absolute(`/reports/${slug}/charts/${first.figure.id}.png`),
            alt: altText(report, first.figure, longestAlt),
            height: Math.round(exportedHeight(report, first.figure, version) * scale),
          },
    report: absolute(`/reports/${slug}/`),
    terms: shop?.reuse.terms ?? '',
  };
}
