import type { About } from '../prose/statement.ts';

/** What a sentence that leaves its page renders. */
export type SaidKind =
  'answer' | 'chart' | 'caution' | 'interest' | 'who' | 'reading' | 'sign' | 'stamp' | 'credit';

/** A sentence that leaves its page, with the kind of statement that it renders and what that one is about. */
export interface Said {
  readonly kind: SaidKind;
  readonly about: About;
  readonly text: string;
}

const report: About = { of: 'report' };

/** A sentence; none where there is nothing to say. */
export function said(kind: SaidKind, text: string, about: About = report): readonly Said[] {
  return text === '' ? [] : [{ kind, about, text }];
}

/** Sentences as running text. */
export function textOf(sentences: readonly Said[]): string {
  return sentences.map(({ text }) => text).join(' ');
}
