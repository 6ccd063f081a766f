import type { z } from 'zod';
import { amount, isoDate, oneOf, text, yesOrNo } from './answers.ts';
import { oneOrMore } from './collections.ts';
import { nameOf } from './nameAnswer.ts';
import { answersOf, type PublishedQuestion } from './question.ts';
import { sheet } from './sheet.ts';
import { strict } from './strict.ts';
import { supply } from './supply.ts';

const longestShort = 16;

const price = strict({
  amount: amount('the price in digits'),
  currency: text('the currency, such as EUR'),
  on: isoDate.describe('the day on which it was the price'),
});

export type Price = z.infer<typeof price>;

/** What is asked of each of the things compared. */
export const contenderQuestions = {
  label: {
    answer: nameOf({ what: 'the name for readers' }),
    // A draft fills it in.
    drafted: null,
    published: null,
  },
  short: {
    answer: nameOf({ what: 'a short name', longest: longestShort })
      .describe('the name where a chart has no room for the label')
      .exactOptional(),
    // Asked where the name is long.
    drafted: null,
    published: null,
  },
  article: {
    answer: yesOrNo
      .describe('whether sentences say "the" before the name: `yes` for a plain word, `no` for a proper name')
      .exactOptional(),
    drafted: null,
    published: null,
  },
  match: {
    answer: oneOrMore(text('a name in the CSV'), 'the names in the CSV')
      .describe('further names that the session files use for it')
      .exactOptional(),
    // A draft fills it in.
    drafted: null,
    published: null,
  },
  build: {
    answer: sheet.describe('how it is built').exactOptional(),
    drafted: 'Its build sheet, such as {loft: 9°, loft_measured: 9.5°, head_weight: 198 g, condition: new}?',
    // Item by item.
    published: null,
  },
  supplied_by: {
    answer: supply.describe('who supplied it: our stock, lent by its distributor'),
    drafted: 'Who supplied it: our stock, our used stock, lent by its distributor, the hitter?',
    // By its kind and in words.
    published: null,
  },
  sold_here: {
    answer: oneOf(['new', 'used', 'both', 'no']).describe('whether the shop sells it'),
    drafted: 'Is it sold here: new, used, both or no?',
    // As one of four words.
    published: null,
  },
  price: {
    answer: price.describe('its price').exactOptional(),
    drafted: 'Its price, such as {amount: 499, currency: GBP, on: 2026-04-11}?',
    // By amount, currency and day.
    published: null,
  },
} as const satisfies Readonly<Record<string, PublishedQuestion>>;

/** The same shape in a report and in `contenders/<id>.yaml`. */
export const contenderAnswers = strict(answersOf(contenderQuestions));

type ContenderAnswers = z.infer<typeof contenderAnswers>;

export interface Contender extends ContenderAnswers {
  readonly id: string;
}
