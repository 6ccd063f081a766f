import type { MetricFindings } from '../findings/findings.ts';
import { answerOf, primaryMetrics } from '../prose/answers.ts';
import { cautionsFor, gravestBeside } from '../prose/cautions.ts';
import { sayAnswer, sayAnswerAlone } from '../prose/english/answers.ts';
import { interestInFewWords } from '../prose/english/interestInFewWords.ts';
import { sayInterestBriefly } from '../prose/english/kit/interestInCaption.ts';
import { readAloud } from '../prose/english/kit/spokenMarks.ts';
import {
  answerInABreath,
  moreAloud,
  openingAloud,
  openingInABreath,
  pairsInABreath,
  standingAloud,
} from '../prose/english/kit/spokenWords.ts';
import { sayWhoHit } from '../prose/english/whoHit.ts';
import { interestSentences } from '../prose/interest.ts';
import { interestsOf, shortNames } from '../prose/interestStatements.ts';
import { pairAnswers } from '../prose/pairAnswer.ts';
import { whoHit } from '../prose/whoHit.ts';
import { decides, cautionForms } from './figureSentences.ts';
import { always, fitParts, withRoom, type Form, type Part } from './fitParts.ts';
import { publisherOf, weighs } from './interestInShort.ts';
import type { Report } from './report.ts';
import { said, textOf, type Said } from './said.ts';
import { countsIn } from './whoAndHow.ts';

/**
 * Words a presenter speaks in a minute. Handbooks of radio ask for 160 to 180 (as counted by E. Rodero, "A comparative
 * analysis of speech rate and perception in radio bulletins", Text & Talk 32(3), 2012, 391-411); figures take longer to
 * hear, so somewhat fewer.
 */
const wordsPerMinute = 150;

/** Seconds that a script lasts. */
export const scriptSeconds = { short: 20, long: 60 } as const;

export type ScriptLength = keyof typeof scriptSeconds;

/** The most words that a script may have. */
export const mostScriptWords = (length: ScriptLength): number =>
  Math.floor((scriptSeconds[length] * wordsPerMinute) / 60);

/** What a presenter says of a report, in 20 seconds and in 60: as it is read aloud, without a mark or figure. */
export type SpokenScripts = Readonly<Record<ScriptLength, string>>;

/** The scripts of a report, with the shop speaking; empty for one that was taken back. */
export function spokenScripts(report: Report): SpokenScripts {
  const { short, long } = scriptSentences(report);
  return { short: readAloud(textOf(short)), long: readAloud(textOf(long)) };
}

/** The same sentence by sentence as they are written, each with what it renders. */
export function scriptSentences(report: Report): Readonly<Record<ScriptLength, readonly Said[]>> {
  const { findings, source } = report;
  const [main, ...others] = primaryMetrics(findings);
  if (main === undefined || source.front.status === 'withdrawn') return { short: [], long: [] };
  return {
    short: fitParts(
      [
        // First, as what is heard before it is taken for real.
        always(said('stamp', standingAloud(source.front))),
        [
          { weight: 0, said: said('who', openingInABreath(report.telling, findings.contenders.length)) },
          { weight: 1.4, said: said('who', openingAloud(report.telling, countsIn(report, main))) },
        ],
        answerPart(main, report, [1, 2]),
        cautionPart(main, report, null),
        interestPart(report, { few: 1.5, whole: null }),
      ],
      lasts('short'),
    ),
    long: fitParts(
      [
        always(said('stamp', standingAloud(source.front))),
        whoPart(report, main),
        answerPart(main, report, [0.5, 1]),
        cautionPart(main, report, 4),
        ...others.flatMap((metric) => [answerAlonePart(metric, report), cautionPart(metric, report, 5)]),
        interestPart(report, { few: 0.7, whole: 3 }),
        withRoom(7, said('credit', moreAloud(publisherOf(report)))),
      ],
      lasts('long'),
    ),
  };
}

/** Whether sentences can be spoken in their time. */
function lasts(length: ScriptLength): (sentences: readonly Said[]) => boolean {
  return (sentences) => wordsOf(readAloud(textOf(sentences))) <= mostScriptWords(length);
}

/** Words as they are counted for the time that they take. */
export const wordsOf = (spoken: string): number =>
  spoken.split(/[\s-]+/).filter((word) => word !== '').length;

function whoPart(report: Report, main: MetricFindings): Part {
  const { telling, source, findings } = report;
  const hit = sayWhoHit(whoHit(source, findings), telling.system).flatMap((text) => said('who', text));
  const opening = said('who', openingAloud(telling, countsIn(report, main)));
  return [
    { weight: 0, said: opening },
    { weight: 6, said: [...opening, ...hit] },
  ];
}

/** The answer of the main measure, behind how many golfers hit. */
function answerPart(
  metric: MetricFindings,
  { telling, findings }: Report,
  weights: readonly [number, number],
): Part {
  const block = answerOf(metric, findings);
  const tell = (weight: number, sentences: readonly string[]): Form => ({
    weight,
    said: sentences.flatMap((text) => said('answer', text, block.about)),
  });
  const [first = '', ...rest] = sayAnswer(block, telling);
  return [
    tell(0, [pairsInABreath(metric.id, pairAnswers(metric, findings.design))]),
    tell(0.05, [answerInABreath(block, telling, 'bare')]),
    tell(weights[0] / 2, [answerInABreath(block, telling, 'sized')]),
    // One sentence may leave somebody out who is as good as the one ahead.
    ...(rest.length === 0 ? [tell(weights[0], [first])] : []),
    tell(weights[1], [first, ...rest]),
  ];
}

/** The answer of a further measure, which says its golfers itself. */
function answerAlonePart(metric: MetricFindings, { telling, findings }: Report): Part {
  const block = answerOf(metric, findings);
  return [
    {
      weight: 0,
      said: said('answer', pairsInABreath(metric.id, pairAnswers(metric, findings.design)), block.about),
    },
    { weight: 0.05, said: said('answer', answerInABreath(block, telling, 'bare'), block.about) },
    {
      weight: 2,
      said: sayAnswerAlone(block, telling).flatMap((text) => said('answer', text, block.about)),
    },
  ];
}

/** The caution under which the answer would be another one, else the gravest that it does not say itself. */
function cautionPart(metric: MetricFindings, { telling, findings }: Report, whole: number | null): Part {
  const cautions = cautionsFor(metric, findings);
  const caution = cautions.find(decides) ?? gravestBeside(cautions);
  // An answer that says its own doubt can go without another one.
  const doubted = metric.pairs.some(({ status }) => status === 'cause-unclear' || status === 'not-confirmed');
  const brief = doubted && caution !== null && !decides(caution) ? 1.8 : 0;
  return cautionForms(caution, telling, { brief, whole });
}

/** The shop's interest: what comes from outside at least, all that weighs, word for word as its page has it. */
function interestPart(
  { source, telling }: Report,
  { few, whole }: { readonly few: number; readonly whole: number | null },
): Part {
  const { front } = source;
  const own = {
    speaker: 'we',
    nameOf: shortNames(front.contenders),
    nouns: [telling.noun, telling.nouns],
  } as const;
  const weighing = interestsOf(front).filter(weighs);
  const outside = weighing.filter((one) => one.outside && one.kind !== 'seen');
  const tell = (weight: number, sentences: readonly string[]): Form => ({
    weight,
    said: sentences.flatMap((text) => said('interest', text)),
  });
  const least = outside.length === 0 ? weighing.slice(0, 1) : outside;
  const briefly = least.map((one) => sayInterestBriefly(one, own));
  return [
    tell(
      0,
      briefly.flatMap(([shortest]) => shortest ?? []),
    ),
    tell(
      0.1,
      briefly.flatMap((forms) => forms.slice(-2).slice(0, 1)),
    ),
    tell(0.2, interestInFewWords(least, own)),
    tell(few, interestInFewWords(weighing, own)),
    ...(whole === null ? [] : [tell(whole, interestSentences(source))]),
  ];
}
