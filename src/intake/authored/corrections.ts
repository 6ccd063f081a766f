import { isoDate, text } from './answers.ts';
import { listOf } from './collections.ts';
import { strict } from './strict.ts';
import type { Schema } from './trouble.ts';

export interface Correction {
  readonly date: string;
  readonly what: string;
  readonly was: string;
  readonly now: string;
}

/** A supplier's answer, printed whole. */
export interface Reply {
  readonly from: string;
  readonly date: string;
  readonly text: string;
}

export const corrections: Schema<readonly Correction[]> = listOf(
  strict({
    date: isoDate,
    what: text('what was corrected'),
    was: text('what stood there'),
    now: text('what stands there now'),
  }),
  'a list of corrections, each with date, what, was and now',
);

export const replies: Schema<readonly Reply[]> = listOf(
  strict({ from: text('who replies'), date: isoDate, text: text('the reply, whole') }),
  'a list of replies, each with from, date and text',
);
