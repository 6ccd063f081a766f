import { answerOf, primaryMetrics } from '../prose/answers.ts';
import { sayAnswerCounted, sayAnswerInBrief } from '../prose/english/answersInBrief.ts';
import type { BriefForm } from '../prose/english/statementInBrief.ts';
import { pairAnswers } from '../prose/pairAnswer.ts';
import { capitalised, sentence } from '../prose/words.ts';
import { cardWords, findingWithin } from './cardWords.ts';
import type { Report } from './report.ts';

/** Longest finding of a card, words: it is read in passing. */
export const mostWords = 16;

/** Longest title of a shared link, characters: more is cut off by who shows it. */
const longestTitle = 110;

const forms: readonly BriefForm[] = ['sized', 'unsized', 'bare'];

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

/** The card, and every other form of it, for readers who cannot see it. */
export function shareCardAlt(report: Report): string {
  const words = cardWords(report);
  const { stamp, publisher, changes, head, pairs, caution, whom, interest } = words;
  return [
    stamp,
    publisher,
    changes,
    head === '' ? '' : sentence(head),
    findingWithin(words, mostWords),
    pairs[0] ?? '',
    caution?.brief ?? '',
    whom.whole,
    interest.whole,
  ]
    .filter((told) => told !== '')
    .join(' ');
}
