import type { z } from 'zod';
import { text } from './answers.ts';
import { gifts, type Gifts } from './gifts.ts';
import { payment, type Payment } from './payment.ts';
import { seenBefore, type SeenBefore } from './seenBefore.ts';
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

const openQuestion = <T>(key: InterestQuestion, schema: Schema<T>) =>
  schema
    .describe(`${interestQuestions[key]}. Must be answered, in the report or in \`shop.yaml\``)
    .exactOptional();

/** Interests as far as one file answers them. */
export const interestAnswers = strict({
  supplied: text('who supplied the contenders')
    .describe('a sentence on where the contenders came from')
    .exactOptional(),
  paid_by: openQuestion('paid_by', payment),
  commission_or_gifts: openQuestion('commission_or_gifts', gifts),
  seen_before: openQuestion('seen_before', seenBefore),
  sentence: text("the shop's standing sentence on its interests").exactOptional(),
});

export type InterestAnswers = z.infer<typeof interestAnswers>;

/** Interests with the three questions answered. */
export interface Interests extends InterestAnswers {
  readonly paidBy: Payment;
  readonly commissionOrGifts: Gifts;
  readonly seenBefore: SeenBefore;
}

/** The report's answers, else the shop's, which may go by its name; null while a question is open. */
export function completeInterests(
  report: InterestAnswers,
  shop: { readonly name: string; readonly interests: InterestAnswers } | null,
): Interests | null {
  const all = { ...shop?.interests, ...report };
  const { paidBy, commissionOrGifts, seenBefore: seen } = all;
  if (paidBy === undefined || commissionOrGifts === undefined || seen === undefined) return null;
  const byShop = paidBy.kind === 'others' && paidBy.words === shop?.name;
  return {
    ...all,
    paidBy: byShop ? { kind: 'shop', words: paidBy.words } : paidBy,
    commissionOrGifts,
    seenBefore: seen,
  };
}
