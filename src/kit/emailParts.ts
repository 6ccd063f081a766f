import type { MetricFindings } from '../findings/findings.ts';
import { answerSentences, howMuch, primaryMetrics, surestFirst } from '../prose/answer.ts';
import { dateInWords } from '../prose/date.ts';
import { forWhom } from '../prose/forWhom.ts';
import { interestSentences } from '../prose/interest.ts';
import { cautions } from '../prose/mind.ts';
import { gapNumbers, pairSentence } from '../prose/pairSentence.ts';
import { luckSentence } from '../prose/reachSentences.ts';
import type { Telling } from '../prose/telling.ts';
import type { Absolute } from './absoluteAddress.ts';
import { exportedHeight, exportWidth } from './exportedSvg.ts';
import { publisherOf } from './interestInShort.ts';
import { kitOf } from './kitOf.ts';
import type { Report } from './report.ts';
import { readingWords, standing } from './whoAndHow.ts';

/** Width of an image in a mail, px: mails are read at 600. */
export const mailWidth = 600;

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
  readonly amounts: string;
  readonly whom: string;
  readonly mind: string;
  /** Each pair's answer and its numbers. */
  readonly gaps: readonly { readonly answer: string; readonly numbers: string }[];
  readonly image: MailImage | null;
  readonly report: string;
  readonly terms: string;
}

/** Every pair's answer with its numbers; one that was not judged says so once, whatever its pairs. */
function gapLines(metric: MetricFindings, telling: Telling): EmailParts['gaps'] {
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
  const gravest = cautions(telling)[0] ?? '';
  const reading = readingWords(report);
  const scale = mailWidth / exportWidth;
  return {
    publisher: publisherOf(report),
    title: front.title,
    question: `${front.question} Hit ${dateInWords(front.date)}.${front.inventedData ? ' Invented data.' : ''}`,
    interest: interestSentences(source).join(' '),
    answer: metrics.flatMap((metric) => answerSentences(metric, telling)).join(' '),
    amounts: metrics
      .flatMap((metric) => [...howMuch(metric, telling), luckSentence(metric, telling) ?? ''])
      .filter((words) => words !== '')
      .join(' '),
    whom: forWhom(source, session, telling).join(' '),
    mind: [
      gravest.startsWith('The readings') || gravest === reading ? '' : reading,
      gravest,
      standing(report).replace('Invented data.', '').trim(),
    ]
      .filter((words) => words !== '')
      .join(' '),
    gaps: metrics.flatMap((metric) => gapLines(metric, telling)),
    image:
      first === undefined
        ? null
        : {
            address: absolute(`/reports/${slug}/charts/${first.figure.id}.png`),
            alt: first.alt,
            height: Math.round(exportedHeight(report, first.figure, version) * scale),
          },
    report: absolute(`/reports/${slug}/`),
    terms: shop?.reuse.terms ?? '',
  };
}
