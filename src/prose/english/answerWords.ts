import type { StatusId } from '../../findings/findings.ts';
import type { PairAnswer } from '../statement.ts';

/** One answer in the words of each of its places. */
interface AnswerWords {
  /** Over a report, in lists and tables. */
  readonly title: string;
  /** Where it ends a sentence: "two size uncertain". */
  readonly after: string;
  /** Of several pairs with this one answer; `count` as a word. */
  readonly ofAll: (count: string) => string;
}

/** Said wherever a difference is smaller than what matters. */
export const tooLittle = 'too little to matter';

export const answerWords: Readonly<Record<StatusId, AnswerWords>> = {
  clear: {
    title: 'Clear difference',
    after: 'clear',
    ofAll: (count) => `all ${count} pairs clearly apart`,
  },
  'size-uncertain': {
    title: 'Difference, size uncertain',
    after: 'size uncertain',
    ofAll: (count) => `all ${count} pairs apart, size uncertain`,
  },
  small: {
    title: 'Too little to matter',
    after: 'too small to matter',
    ofAll: (count) => `all ${count} pairs apart by ${tooLittle}`,
  },
  level: {
    title: 'No difference that matters',
    after: 'alike',
    ofAll: (count) => `all ${count} pairs alike`,
  },
  'cannot-tell': {
    title: 'Cannot tell',
    after: 'cannot tell',
    ofAll: (count) => `none of ${count} pairs can be told apart`,
  },
  'cause-unclear': {
    title: 'Difference seen, cause unclear',
    after: 'cause unclear',
    ofAll: (count) => `differences in all ${count} pairs, cause unclear`,
  },
  'not-confirmed': {
    title: 'Not confirmed',
    after: 'not confirmed',
    ofAll: (count) => `no difference confirmed in ${count} pairs`,
  },
  'not-judged': {
    title: 'Not judged',
    after: 'not judged',
    ofAll: (count) => `none of ${count} pairs judged`,
  },
};

/** An answer as it is spoken of: "Cannot tell" with its quotation marks. */
export const quoted = (status: StatusId): string => `"${answerWords[status].title}"`;

/** The status of a pair with what weakens it: "Clear difference, first look". */
export function sayShort({ status, firstLook }: Pick<PairAnswer, 'status' | 'firstLook'>): string {
  return `${answerWords[status].title}${firstLook && status === 'clear' ? ', first look' : ''}`;
}

/** The same beside a bar that is drawn shot by shot: what else was counted, where that decides. */
export function sayBesideBar(answer: PairAnswer): string {
  const bySpells = answer.status === 'cannot-tell' && answer.spellsAlike;
  return bySpells ? `${sayShort(answer)}, each spell counted as one` : sayShort(answer);
}
