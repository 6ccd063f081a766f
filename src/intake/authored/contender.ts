import type { z } from 'zod';
import { amount, isoDate, oneOf, text, yesOrNo } from './answers.ts';
import { oneOrMore } from './collections.ts';
import { nameOf } from './nameAnswer.ts';
import { answersOf, question, required, type Questions } from './question.ts';
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
  // A draft fills it in.
  label: required(nameOf({ what: 'the name for readers' }), null),
  // Asked where the name is long.
  short: question(
    nameOf({ what: 'a short name', longest: longestShort }).describe(
      'the name where a chart has no room for the label',
    ),
    null,
  ),
  article: question(
    yesOrNo.describe(
      'whether sentences say "the" before the name: `yes` for a plain word, `no` for a proper name',
    ),
    null,
  ),
  // A draft fills it in.
  match: question(
    oneOrMore(text('a name in the CSV'), 'the names in the CSV').describe(
      'further names that the session files use for it',
    ),
    null,
  ),
  // Published item by item.
  build: question(
    sheet.describe('how it is built'),
    'Its build sheet, such as {loft: 9°, loft_measured: 9.5°, head_weight: 198 g, condition: new}?',
  ),
  // Published by its kind and in words.
  supplied_by: required(
    supply.describe('who supplied it: our stock, lent by its distributor'),
    'Who supplied it: our stock, our used stock, lent by its distributor, the hitter?',
  ),
  // Published as one of four words.
  sold_here: required(
    oneOf(['new', 'used', 'both', 'no']).describe('whether the shop sells it'),
    'Is it sold here: new, used, both or no?',
  ),
  // Published by amount, currency and day.
  price: question(
    price.describe('its price'),
    'Its price, such as {amount: 499, currency: GBP, on: 2026-04-11}?',
  ),
} as const satisfies Questions<'published'>;

/** The same shape in a report and in `contenders/<id>.yaml`. */
export const contenderAnswers = strict(answersOf(contenderQuestions));

type ContenderAnswers = z.infer<typeof contenderAnswers>;

export interface Contender extends ContenderAnswers {
  readonly id: string;
}
