import { text } from './answers.ts';
import { strict } from './strict.ts';
import type { Schema } from './trouble.ts';

/** The three questions about money that every report answers, in the report or for all reports in `shop.yaml`. */
export const interestQuestions = {
  paid_by: 'who paid for the test',
  commission_or_gifts:
    'whether there is a commission, sponsorship or gift, and which; "none" if there is none',
  seen_before:
    'who outside the shop saw the report, or had a say in it, before it was published; "nobody" if so',
} as const;

export type InterestQuestion = keyof typeof interestQuestions;

export const interestKeys = Object.keys(interestQuestions) as readonly InterestQuestion[];

/** Interests as far as one file answers them. */
export interface InterestAnswers {
  /** A sentence of the shop's own about where the contenders came from. */
  readonly supplied?: string;
  readonly paidBy?: string;
  readonly commissionOrGifts?: string;
  readonly seenBefore?: string;
  /** The shop's standing sentence on its interests. */
  readonly sentence?: string;
}

/** Interests with the three questions answered. */
export interface Interests extends InterestAnswers {
  readonly paidBy: string;
  readonly commissionOrGifts: string;
  readonly seenBefore: string;
}

const openQuestion = (key: InterestQuestion) =>
  text(interestQuestions[key])
    .describe(`${interestQuestions[key]}. Must be answered, in the report or in \`shop.yaml\``)
    .exactOptional();

export const interestAnswers: Schema<InterestAnswers> = strict({
  supplied: text('who supplied the contenders')
    .describe('a sentence on where the contenders came from')
    .exactOptional(),
  paid_by: openQuestion('paid_by'),
  commission_or_gifts: openQuestion('commission_or_gifts'),
  seen_before: openQuestion('seen_before'),
  sentence: text("the shop's standing sentence on its interests").exactOptional(),
});

/** The report's answers, else the shop's; null while a question is open. */
export function completeInterests(report: InterestAnswers, shop: InterestAnswers): Interests | null {
  const all = { ...shop, ...report };
  const { paidBy, commissionOrGifts, seenBefore } = all;
  if (paidBy === undefined || commissionOrGifts === undefined || seenBefore === undefined) return null;
  return { ...all, paidBy, commissionOrGifts, seenBefore };
}
