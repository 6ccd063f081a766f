import type { PairAnswer } from '../statement.ts';
import { counted, countWord, uncapitalised } from '../words.ts';
import { answerWords } from './answerWords.ts';

/** More kinds of answers than these are counted together. */
const mostNamed = 3;

/** Whether an answer says who is ahead. */
export function saysWhoIsAhead({ status }: Pick<PairAnswer, 'status'>): boolean {
  return status === 'clear' || status === 'size-uncertain' || status === 'small';
}

/** Answers without names: "of three pairs one clear, two cannot tell". */
export function toldCounted(answers: readonly PairAnswer[]): string {
  const [first] = answers;
  if (first === undefined) return `of ${counted(0, 'pair')} ${statusesOf(answers)}`;
  const { title, ofAll } = answerWords[first.status];
  if (answers.length === 1) return uncapitalised(title);
  return answers.every(({ status }) => status === first.status)
    ? ofAll(countWord(answers.length))
    : `of ${counted(answers.length, 'pair')} ${statusesOf(answers)}`;
}

/** In the fewest words: how many pairs were told apart; of answers that are alike as `toldCounted` says it. */
export function toldApartOf(answers: readonly PairAnswer[]): string {
  const apart = answers.filter(saysWhoIsAhead).length;
  return apart === 0 || apart === answers.length
    ? toldCounted(answers)
    : `${countWord(apart)} of ${counted(answers.length, 'pair')} told apart`;
}

/** "two clear, 13 cannot tell"; one and the same of all is said once, and of more than three only two are named. */
export function statusesOf(answers: readonly PairAnswer[]): string {
  const groups = [...Map.groupBy(answers, ({ status }) => status)];
  const [only] = groups;
  if (groups.length === 1 && only !== undefined) return answerWords[only[0]].after;
  const named = groups.length > mostNamed ? groups.slice(0, mostNamed - 1) : groups;
  const rest = answers.length - named.reduce((sum, [, own]) => sum + own.length, 0);
  return [
    ...named.map(([status, own]) => `${countWord(own.length)} ${answerWords[status].after}`),
    ...(rest === 0 ? [] : [`${countWord(rest)} otherwise`]),
  ].join(', ');
}
