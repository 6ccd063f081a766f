import { dateInWords } from '../date.ts';
import type { Payment } from '../../intake/authored/payment.ts';
import type { Notice } from '../notices.ts';
import { counted, sentence } from '../words.ts';

/** A notice in the line under the title: what it is, then what there is to say of it. */
interface NoticeWords {
  readonly label: string;
  /** Empty where the label says it. */
  readonly words: string;
}

interface NoticeTelling {
  readonly locale: string;
  /** Title of the report that took this one's place, where it is known. */
  readonly newer: string | null;
}

/** Beyond so many words the line only says that there is something, and the whole stands where it leads. */
const mostWords = { payer: 8, correction: 12 } as const;

const isShort = (words: string, most: number): boolean => words.split(' ').length <= most;

/** "Corrected 2 April 2026:" "the loft was that of another head." */
export function sayNotice(notice: Notice, { locale, newer }: NoticeTelling): NoticeWords {
  switch (notice.kind) {
    case 'draft':
      return {
        label: 'Draft.',
        words: 'It appears here only; set status to published to put it on the site.',
      };
    case 'withdrawn':
      return { label: `Withdrawn ${dateInWords(notice.date, locale)}.`, words: sentence(notice.reason) };
    case 'replaced':
      return { label: 'Replaced by a newer report:', words: newer ?? notice.by ?? '' };
    case 'outside-money':
      return { label: paidBy(notice.payment), words: '' };
    case 'corrected': {
      const more = notice.more === 0 ? '' : ` and ${counted(notice.more, 'time')} before`;
      return {
        label: `Corrected ${dateInWords(notice.date, locale)}${more}.`,
        words: isShort(notice.what, mostWords.correction) ? sentence(notice.what) : '',
      };
    }
    case 'replied':
      return { label: `Reply from ${notice.from}, ${dateInWords(notice.date, locale)}.`, words: '' };
  }
}

/** Never names anybody else than the line does; a long line stands whole beside the answer. */
function paidBy(payment: Payment): string {
  const others = payment.kind === 'shared' ? payment.by : payment.words;
  const part = payment.kind === 'shared' ? ' in part' : '';
  return others === null || !isShort(others, mostWords.payer)
    ? `Paid for${part} by others.`
    : sentence(`Paid for${part} by ${others}`);
}
