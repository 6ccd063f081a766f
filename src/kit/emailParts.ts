import { mailWords } from '../prose/english/kit/mailWords.ts';
import { likelyMeaning } from '../prose/english/sure.ts';
import { toldAnswers, type ToldAnswer } from '../prose/english/toldAnswer.ts';
import { sayWhoHit } from '../prose/english/whoHit.ts';
import { interestSentences } from '../prose/interest.ts';
import { whoHit } from '../prose/whoHit.ts';
import type { Absolute } from './absoluteAddress.ts';
import { altText } from './altText.ts';
import { exportedHeight, exportWidth } from './exportedSvg.ts';
import { publisherOf } from './interestInShort.ts';
import { kitOf } from './kitOf.ts';
import type { Report } from './report.ts';
import { howHit } from './whoAndHow.ts';

/** Width of an image in a mail, px: mails are read at 600. */
export const mailWidth = 600;

/** Longest alternative text, characters: the mail says it all in words, and with images off it has to fit the image's place. */
const longestAlt = 320;

export interface MailImage {
  readonly address: string;
  readonly alt: string;
  readonly height: number;
}

/** A fact under the answers, with its label. */
export interface MailFact {
  readonly label: string;
  readonly words: string;
}

/** What all parts of a mail say, in the order they say it: the interest before any result, each answer once. */
export interface EmailParts {
  readonly publisher: string;
  readonly title: string;
  readonly question: string;
  readonly interest: MailFact;
  /** Each main measure with its own title, status, answer, single-shot line and gravest caution. */
  readonly answers: readonly (Pick<ToldAnswer, 'title' | 'status' | 'singleShots'> & {
    readonly answer: string;
    readonly caution: MailFact | null;
  })[];
  readonly facts: readonly MailFact[];
  readonly image: MailImage | null;
  readonly report: string;
  readonly terms: string;
  /** Address of the shop's own site. */
  readonly ownSite: string | null;
}

export function emailParts(report: Report, absolute: Absolute, version: string): EmailParts {
  const { source, telling, findings } = report;
  const { front, shop, slug } = source;
  const [first] = kitOf(report).offered;
  const answers = toldAnswers(telling);
  const { term, meaning } = likelyMeaning(answers.length);
  return {
    publisher: publisherOf(report),
    title: front.title,
    question: mailWords.question(source),
    interest: { label: mailWords.interest, words: interestSentences(source).join(' ') },
    answers: answers.map(({ title, status, answer, singleShots, cautions: [caution] }) => ({
      title,
      status,
      singleShots,
      answer: answer.join(' '),
      caution: caution === undefined ? null : { label: mailWords.caution, words: caution },
    })),
    facts: [
      { label: mailWords.sure, words: `${term} ${meaning}` },
      { label: mailWords.whom, words: sayWhoHit(whoHit(source, findings), telling.system).join(' ') },
      { label: mailWords.how, words: howHit(report) },
    ],
    image:
      first === undefined
        ? null
        : {
            address: absolute(`/reports/${slug}/charts/${first.figure.id}.png`),
            alt: altText(report, first.figure, longestAlt),
            height: Math.round((exportedHeight(report, first.figure, version) * mailWidth) / exportWidth),
          },
    report: absolute(`/reports/${slug}/`),
    terms: shop?.reuse.terms ?? '',
    ownSite: shop?.brand.site ?? null,
  };
}
