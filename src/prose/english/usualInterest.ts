import type { InterestAnswers } from '../../intake/authored/interests.ts';
import { sentence } from '../words.ts';

/** What `shop.yaml` says of the interest behind every report, in sentences; what it does not say is not recorded. */
export function usualInterest({
  paidBy,
  commissionOrGifts,
  seenBefore,
  supplied,
  sentence: words,
}: InterestAnswers): readonly string[] {
  return [
    ...[words, supplied].flatMap((own) => (own === undefined ? [] : [sentence(own)])),
    paidBy === undefined
      ? 'Who usually pays for a test is not recorded here.'
      : paidBy.kind === 'shop'
        ? 'We usually pay for our tests ourselves.'
        : paidBy.kind === 'in-words'
          ? `Of the payment for tests we state: “${paidBy.words}”.`
          : `Our tests are usually paid for by ${paidBy.words}.`,
    commissionOrGifts === undefined
      ? 'Whether we usually take commission, sponsorship or gifts is not recorded here.'
      : commissionOrGifts.kind === 'none'
        ? 'We usually take no commission, sponsorship or gifts.'
        : `Of commission, sponsorship and gifts we state: “${commissionOrGifts.words}”.`,
    seenBefore === undefined
      ? 'Who usually sees a report before you do is not recorded here.'
      : seenBefore.kind === 'nobody-outside'
        ? 'Nobody outside the shop usually sees a report before you do.'
        : seenBefore.kind === 'others'
          ? `Before publication our reports are usually seen by ${seenBefore.words}.`
          : `Of readers before publication we state: “${seenBefore.words}”.`,
  ];
}
