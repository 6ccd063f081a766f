import type { Front } from '../intake/authored/front.ts';
import type { Payment } from '../intake/authored/payment.ts';

/** What a reader must know of a report before its answer; ids, days and authored words. */
export type Notice =
  | { readonly kind: 'draft' }
  | { readonly kind: 'withdrawn'; readonly date: string; readonly reason: string }
  | { readonly kind: 'replaced'; readonly by: string | null }
  /** Others paid, alone or with the shop. */
  | { readonly kind: 'outside-money'; readonly payment: Payment }
  | { readonly kind: 'corrected'; readonly date: string; readonly what: string; readonly more: number }
  | { readonly kind: 'replied'; readonly from: string; readonly date: string };

/** The notices of a report, gravest first; none where nothing is due. */
export function noticesOf(front: Front): readonly Notice[] {
  const { status, withdrawn, supersededBy, date, corrections, replies } = front;
  if (status === 'withdrawn')
    return [{ kind: 'withdrawn', date: withdrawn?.date ?? date, reason: withdrawn?.reason ?? '' }];
  const [latest, ...earlier] = corrections.toSorted((one, other) => other.date.localeCompare(one.date));
  const { paidBy: payment } = front.interests;
  const isOutside = payment.kind === 'others' || payment.kind === 'shared';
  return [
    ...(status === 'draft' ? [{ kind: 'draft' } as const] : []),
    ...(status === 'superseded' ? [{ kind: 'replaced', by: supersededBy } as const] : []),
    ...(isOutside ? [{ kind: 'outside-money', payment } as const] : []),
    ...(latest === undefined
      ? []
      : [{ kind: 'corrected', date: latest.date, what: latest.what, more: earlier.length } as const]),
    ...replies.map(({ from, date: on }) => ({ kind: 'replied', from, date: on }) as const),
  ];
}
