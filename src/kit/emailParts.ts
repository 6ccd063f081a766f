import { imageName, type DrawnFigure } from '../charts/figure.ts';
import { isReadingStated } from '../findings/fairness.ts';
import { answerOf, primaryMetrics } from '../prose/answers.ts';
import { sayCaution } from '../prose/english/cautions.ts';
import { mailWords, type MailFigure } from '../prose/english/kit/mailWords.ts';
import { standingInBrief, standingWords } from '../prose/english/kit/standing.ts';
import { leftOutWords, readingWords } from '../prose/english/kit/whoAndHow.ts';
import { likelyMeaning } from '../prose/english/sure.ts';
import { sayWhoHit } from '../prose/english/whoHit.ts';
import { interestSentences } from '../prose/interest.ts';
import type { Caution } from '../prose/statement.ts';
import { whoHit } from '../prose/whoHit.ts';
import type { Absolute } from './absoluteAddress.ts';
import { emailAnswer, type EmailAnswer } from './emailAnswer.ts';
import { cautionsBesideAnswer, cautionsInPicture } from './emailCautions.ts';
import { emailFigures } from './emailFigures.ts';
import { exportedHeight, exportWidth } from './exportedSvg.ts';
import { pictureName } from './exportForms.ts';
import { metricsIn } from './figureAnswer.ts';
import { publisherOf } from './interestInShort.ts';
import { kitOf } from './kitOf.ts';
import type { Report } from './report.ts';
import { findingTitle } from './shareCardWords.ts';

/** The picture of a mail in both its forms. */
export interface EmailPicture {
  readonly wide: string;
  readonly phone: string;
  readonly alt: string;
  /** Height of the wide form over its width. */
  readonly tall: number;
}

/** A fact with its label. */
export interface MailFact {
  readonly label: string;
  readonly words: string;
}

/** What all parts of a mail say, in the order they say it, each thing once. */
export interface EmailParts {
  /** What a list of mails shows beside the subject: how the report stands, and the finding in brief. */
  readonly preheader: string;
  readonly publisher: string;
  readonly title: string;
  readonly question: string;
  /** "Invented data. Corrected 2 April 2026."; empty for most. */
  readonly standing: string;
  readonly day: string;
  /** Of each main measure, with what to keep in mind. */
  readonly answers: readonly (EmailAnswer & { readonly cautions: readonly string[] })[];
  readonly interest: MailFact;
  readonly picture: EmailPicture | null;
  /** What the picture says besides that bears on no main measure's answer. */
  readonly besidePicture: readonly string[];
  readonly figures: readonly MailFigure[];
  readonly facts: readonly MailFact[];
  readonly report: string;
  readonly terms: string;
  /** Address of the shop's own site. */
  readonly ownSite: string | null;
}

export function emailParts(report: Report, absolute: Absolute): EmailParts {
  const { source, telling, findings } = report;
  const { front, shop, slug } = source;
  const [first] = kitOf(report).offered;
  const figure = first?.figure ?? null;
  const shown = figure === null ? [] : cautionsInPicture(report, figure);
  const measures = primaryMetrics(findings);
  const beside = measures.map((metric) => cautionsBesideAnswer(metric, report, shown));
  const elsewhere = shown.filter(({ about }) => measures.every(({ id }) => id !== about.metric));
  const told = [...beside.flat(), ...elsewhere];
  const say = (caution: Caution): string => sayCaution(caution, telling);
  return {
    preheader: [standingInBrief(front), `${findingTitle(report)}.`].filter((words) => words !== '').join(' '),
    publisher: publisherOf(report),
    title: front.title,
    question: front.question,
    standing: standingWords(source),
    day: mailWords.day(source),
    answers: measures.map((metric, at) => ({
      ...emailAnswer(metric, telling),
      cautions: (beside[at] ?? []).map(say),
    })),
    interest: { label: mailWords.interest, words: interestSentences(source).join(' ') },
    picture: figure === null ? null : pictureOf(report, figure, absolute(`/reports/${slug}/charts/`)),
    besidePicture: elsewhere.map(say),
    figures: emailFigures(report, told),
    facts: [
      { label: mailWords.whom, words: sayWhoHit(whoHit(source, findings), telling.system).join(' ') },
      ...readingsFact(report, figure, told),
      ...sureFact(report),
    ],
    report: absolute(`/reports/${slug}/`),
    terms: shop?.reuse.terms ?? '',
    ownSite: shop?.brand.site ?? null,
  };
}

function pictureOf(report: Report, figure: DrawnFigure, charts: string): EmailPicture {
  return {
    wide: `${charts}${pictureName(figure.id, 'wide', null)}.png`,
    phone: `${charts}${pictureName(figure.id, 'phone', null)}.png`,
    // The words beside it say all that it says.
    alt: `${imageName(figure)}.`,
    tall: exportedHeight(report, figure) / exportWidth,
  };
}

/** What "likely" means, where anything was judged. */
function sureFact({ findings }: Report): readonly MailFact[] {
  const measures = primaryMetrics(findings);
  if (measures.every(({ pairs }) => pairs.every(({ verdict }) => verdict === 'not-judged'))) return [];
  const { term, meaning } = likelyMeaning(measures.length);
  return [{ label: mailWords.sure, words: `${term} ${meaning}` }];
}

/** How many shots were left out, and how the readings came about where no caution or answer says so. */
function readingsFact(
  { source, findings }: Report,
  figure: DrawnFigure | null,
  told: readonly Caution[],
): readonly MailFact[] {
  const shown = figure === null ? [] : metricsIn(findings, figure);
  const untold = [...new Set([...primaryMetrics(findings), ...shown])].filter(
    (metric) =>
      answerOf(metric, findings).calculatedBy === null &&
      !told.some(({ facts, about }) => facts.overlay === 'modelled-reading' && about.metric === metric.id),
  );
  const words = [leftOutWords(findings), readingWords(untold, (id) => isReadingStated(source.front, id))]
    .filter((some) => some !== '')
    .join(' ');
  return words === '' ? [] : [{ label: mailWords.readings, words }];
}
