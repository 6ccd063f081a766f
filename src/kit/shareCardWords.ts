import { answerOf, primaryMetrics } from '../prose/answers.ts';
import { cautionsFor, gravestBeside } from '../prose/cautions.ts';
import { sayNumbers } from '../prose/english/answers.ts';
import {
  headOf,
  sayAnswerCounted,
  sayAnswerInBrief,
  toldCounted,
  toldInBrief,
  type BriefForm,
} from '../prose/english/answersInBrief.ts';
import { findingInRow } from '../prose/english/findingInRow.ts';
import { sayCautionInBrief } from '../prose/english/kit/cautionsInBrief.ts';
import { golfers } from '../prose/english/kit/whoAndHow.ts';
import { standingWords } from '../prose/english/kit/standing.ts';
import { sayWhoHit } from '../prose/english/whoHit.ts';
import { pairAnswers } from '../prose/pairAnswer.ts';
import type { Caution } from '../prose/statement.ts';
import { whoHit } from '../prose/whoHit.ts';
import { capitalised, sentence } from '../prose/words.ts';
import { interestInBrief, publisherOf } from './interestInShort.ts';
import type { Report } from './report.ts';

/** Longest finding of a card, words: it is read in passing. */
export const mostWords = 16;

/** Longest title of a shared link, characters: more is cut off by who shows it. */
const longestTitle = 110;

/** What the card of a report says, each in whole sentences. */
export interface ShareCardWords {
  readonly publisher: string;
  /** "Invented data. Corrected 2 April 2026."; empty for most. */
  readonly standing: string;
  /** "Carry of balls, one golfer" */
  readonly head: string;
  readonly finding: string;
  /** Of the first pair: "Heron over Wren: about 12 yards, likely 8 to 15."; null where none was judged. */
  readonly pair: string | null;
  /** What to keep in mind; empty where nothing weighs on the answer. */
  readonly caution: string;
  /** Whether the answer would be another one without it. */
  readonly cautionDecides: boolean;
  /** In whole, and in the fewest words that are as true. */
  readonly whom: readonly [whole: string, brief: string];
  readonly interest: string;
}

/** Cautions under which the answer itself would be another one. */
const decisive: readonly Caution['facts']['overlay'][] = ['depends-on-left-out', 'rests-on-one-shot'];

const forms: readonly BriefForm[] = ['sized', 'unsized', 'bare'];

/** The words of a report's card: of its first main measure alone, as another one has a page of its own. */
export function shareCardWords(report: Report): ShareCardWords {
  const { source, findings, telling } = report;
  const [metric] = primaryMetrics(findings);
  const common = {
    publisher: publisherOf(report),
    standing: standingWords(source),
    whom: [sayWhoHit(whoHit(source, findings), telling.system)[0] ?? '', `${golfers(findings)}.`] as const,
    interest: interestInBrief(report),
  };
  if (metric === undefined) {
    const none = { head: '', pair: null, caution: '', cautionDecides: false };
    return { ...common, ...none, finding: findingInRow(telling) };
  }
  const block = answerOf(metric, findings);
  const answers = pairAnswers(metric, findings.design);
  const judged = answers.find(({ difference }) => difference !== null);
  const caution = gravestBeside(cautionsFor(metric, findings));
  const told = [
    findingInRow(telling),
    ...forms.map((form) => sentence(toldInBrief(block, telling, form))),
    sentence(toldCounted(answers)),
  ];
  return {
    ...common,
    head: headOf(block, telling),
    finding: told.find((words) => countOf(words) <= mostWords) ?? told.at(-1) ?? '',
    pair:
      judged === undefined
        ? null
        : sentence(
            `${telling.the(judged.ahead)} over ${telling.the(judged.behind)}: ${sayNumbers(judged, telling)}`,
          ),
    caution: caution === null ? '' : sayCautionInBrief(caution, telling),
    cautionDecides: caution !== null && decisive.includes(caution.facts.overlay),
  };
}

const countOf = (words: string): number => words.split(' ').length;

/** The finding as the title of a page and of a shared link; it says of how many golfers it speaks. */
export function findingTitle({ source, findings, telling }: Report): string {
  if (source.front.status === 'withdrawn') return `Withdrawn: ${source.front.title}`;
  const [metric] = primaryMetrics(findings);
  if (metric === undefined) return source.front.title;
  const block = answerOf(metric, findings);
  const told = forms.map((form) => sayAnswerInBrief(block, telling, form));
  const counted = sayAnswerCounted(block, pairAnswers(metric, findings.design), telling);
  const title = told.find((words) => words.length <= longestTitle) ?? counted;
  return capitalised(title.slice(0, -1));
}

/** The card for readers who cannot see it. */
export function shareCardAlt(report: Report): string {
  const { publisher, standing, head, finding, pair, caution, whom, interest } = shareCardWords(report);
  return [
    sentence(publisher),
    standing,
    head === '' ? '' : sentence(head),
    finding,
    pair ?? '',
    caution,
    whom[0],
    interest,
  ]
    .filter((words) => words !== '')
    .join(' ');
}
