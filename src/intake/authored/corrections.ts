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
    date: isoDate.describe('the day of the correction'),
    what: text('what was corrected'),
    was: text('what stood there'),
    now: text('what stands there now'),
  }),
  'a list of corrections, each with date, what, was and now',
).describe('what was put right after publication; printed on the page and in a feed');

export const replies: Schema<readonly Reply[]> = listOf(
  strict({
    from: text('who replies'),
    date: isoDate.describe('the day of the reply'),
    text: text('the reply, whole'),
  }),
  'a list of replies, each with from, date and text',
).describe('what suppliers or others answer; printed whole');
