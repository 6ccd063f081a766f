import { sentence } from '../../words.ts';

/** Fixed words of the feeds. */
export const feedWords = {
  about: 'Equipment compared, shot by shot, with what the shots can tell and what they cannot.',
  correctionsTitle: (publisher: string): string => `Corrections, ${publisher}`,
  correctionsAbout: 'What was corrected, withdrawn or replaced, with what it said and what it says now.',
  interest: (sentences: readonly string[]): string => `Our interest: ${sentences.join(' ')}`,
  corrected: (title: string): string => `Corrected: ${title}`,
  replaced: (title: string): string => `Replaced: ${title}`,
  gone: (title: string): string => `Withdrawn: ${title}`,
  replacement: (title: string): string => `A newer report replaces it: ${sentence(title)}`,
  wholeReport: (title: string): string => `The whole report, with every shot: ${title}`,
} as const;

/** A correction in three sentences: what was put right, what it said, what it says. */
export function correctionWords({
  what,
  was,
  now,
}: {
  readonly what: string;
  readonly was: string;
  readonly now: string;
}): string {
  return `${sentence(what)} It said: ${sentence(was)} It now says: ${sentence(now)}`;
}
