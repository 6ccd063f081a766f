import type { z } from 'zod';
import { amount, isoDate, oneOf, text, yesOrNo } from './answers.ts';
import { oneOrMore } from './collections.ts';
import { nameOf } from './nameAnswer.ts';
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

/** One of the things compared; the same shape in a report and in `contenders/<id>.yaml`. */
export const contenderAnswers = strict({
  label: nameOf({ what: 'the name for readers' }),
  short: nameOf({ what: 'a short name', longest: longestShort })
    .describe('the name where a chart has no room for the label')
    .exactOptional(),
  article: yesOrNo
    .describe('whether sentences say "the" before the name: `yes` for a plain word, `no` for a proper name')
    .exactOptional(),
  match: oneOrMore(text('a name in the CSV'), 'the names in the CSV')
    .describe('further names that the session files use for it')
    .exactOptional(),
  build: sheet.describe('how it is built').exactOptional(),
  supplied_by: supply.describe('who supplied it: our stock, lent by its distributor'),
  sold_here: oneOf(['new', 'used', 'both', 'no']).describe('whether the shop sells it'),
  price: price.describe('its price').exactOptional(),
});

type ContenderAnswers = z.infer<typeof contenderAnswers>;

export interface Contender extends ContenderAnswers {
  readonly id: string;
}
