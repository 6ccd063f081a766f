import { amount, isoDate, oneOf, text, yesOrNo } from './answers.ts';
import { oneOrMore } from './collections.ts';
import { nameOf } from './nameAnswer.ts';
import { sheet, type Sheet } from './sheet.ts';
import { strict } from './strict.ts';
import { supply, type Supply } from './supply.ts';
import type { Schema } from './trouble.ts';

export interface Price {
  readonly amount: number;
  readonly currency: string;
  /** The day on which it was the price. */
  readonly on: string;
}

/** One of the things compared; the same shape in a report and in `contenders/<id>.yaml`. */
export interface ContenderAnswers {
  readonly label: string;
  /** For narrow places, 16 characters at most. */
  readonly short?: string;
  /** Whether the label takes an article in a sentence: "the hybrid"; absent where it is left to its look. */
  readonly article?: boolean;
  /** Further names in the CSV, compared as raw text. */
  readonly match?: readonly string[];
  readonly build?: Sheet;
  readonly suppliedBy: Supply;
  readonly soldHere: 'new' | 'used' | 'both' | 'no';
  readonly price?: Price;
}

export interface Contender extends ContenderAnswers {
  readonly id: string;
}

const longestShort = 16;

export const contenderAnswers: Schema<ContenderAnswers> = strict({
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
  price: strict({
    amount: amount('the price in digits'),
    currency: text('the currency, such as EUR'),
    on: isoDate.describe('the day on which it was the price'),
  })
    .describe('its price')
    .exactOptional(),
});
