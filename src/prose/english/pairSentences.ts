import type { StatusId } from '../../findings/findings.ts';
import { tooLittle } from './answerWords.ts';
import type { Comparison } from './comparisons.ts';

/** Two things in print, and how one is said to differ from the other. */
export interface NamedPair extends Pick<Comparison, 'verb' | 'verbs' | 'base' | 'alike'> {
  readonly ahead: string;
  readonly behind: string;
  /** *farther*, or *a higher smash factor*: how the one ahead differs. */
  readonly more: string;
}

interface Sizes {
  /** "12 yards" */
  readonly about: string;
  /** "8 to 16" */
  readonly likely: string;
}

/**
 * The sentence of each answer about a pair, without its full stop and with its numbers printed: the one place where it is
 * worded, for reports and for the examples of the method page.
 */
export const pairSentences = {
  clear: ({ ahead, behind, verb, more }: NamedPair, { about, likely }: Sizes, firstLook: boolean): string =>
    `${firstLook ? 'on a first look ' : ''}${ahead} ${verb} ${more} than ${behind}: about ${about}, likely ${likely}`,
  'size-uncertain': ({ ahead, behind, verb, more }: NamedPair, likely: string): string =>
    `${ahead} ${verb} ${more} than ${behind}, by how much is uncertain: likely ${likely}`,
  /** `sized`: "about 2 yards farther". */
  small: ({ ahead, behind, verb }: NamedPair, sized: string): string =>
    `${ahead} ${verb} ${sized} than ${behind}, ${tooLittle}`,
  level: ({ ahead, behind, alike }: NamedPair, matters: string): string =>
    `${ahead} and ${behind} ${alike}: any difference is likely under ${matters}`,
  /** `why`: ": anything from 8 yards for Alder to 3 for Birch". */
  'cannot-tell': ({ ahead, behind, verb, more }: NamedPair, why: string): string =>
    `we cannot tell whether ${ahead} or ${behind} ${verb} ${more}${why}`,
  /** `parts`: "Alder went farther than Birch". */
  'cause-unclear': (parts: string, because: string, cause: string): string =>
    `${parts}, but ${because}, so we cannot say that it was ${cause}`,
  'not-confirmed': ({ ahead, behind, base, more }: NamedPair, checks: string): string =>
    `${ahead} may ${base} ${more} than ${behind}; ${checks}`,
  'not-judged': (whom: string, why: string): string =>
    `we did not judge ${whom}${why === '' ? '' : `: ${why}`}`,
} as const satisfies Readonly<Record<StatusId, (...parts: never[]) => string>>;

/** Of two that cannot be told apart and yet are nearly within what matters of each other. */
export function withinMatters(
  { ahead, behind, verb, more }: NamedPair,
  matters: string,
  measure: string,
): string {
  return `${ahead} and ${behind} were within about ${matters} of each other in ${measure}; we cannot say which ${verb} ${more}`;
}

/** Of two that seem alike, which the checks do not confirm. */
export function alikeNotConfirmed({ ahead, behind, base, verbs, alike }: NamedPair, checks: string): string {
  return `${ahead} and ${behind} may ${alike.replace(verbs, base)}; ${checks}`;
}

/** Of pairs of which the order may hide a difference; `where`: "between Alder and Birch". */
export function noneSeen(measure: string, where: string, couldHide: string): string {
  return `we saw no difference in ${measure} ${where}, though ${couldHide}`;
}

/** "four shots are too few" */
export function tooFewShots(shots: string, one: boolean): string {
  return `${shots} ${one ? 'shot is' : 'shots are'} too few`;
}
