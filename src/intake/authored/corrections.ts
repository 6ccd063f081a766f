import type { z } from 'zod';
import { isoDate, text } from './answers.ts';
import { listOf } from './collections.ts';
import { strict } from './strict.ts';

const correction = strict({
  date: isoDate.describe('the day of the correction'),
  what: text('what was corrected'),
  was: text('what stood there'),
  now: text('what stands there now'),
});

export type Correction = z.infer<typeof correction>;

export const corrections = listOf(
  correction,
  'a list of corrections, each with date, what, was and now',
).describe('what was put right after publication; printed on the page and in a feed');

const reply = strict({
  from: text('who replies'),
  date: isoDate.describe('the day of the reply'),
  text: text('the reply, whole'),
});

export const replies = listOf(reply, 'a list of replies, each with from, date and text').describe(
  'what suppliers or others answer; printed whole',
);
