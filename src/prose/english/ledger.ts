import { ledgerCount, type Ledger } from '../../intake/ledger.ts';
import { counted, countWord, listed, sentence } from '../words.ts';

/**
 * What became of all the tests that the shop planned: "We planned 14 tests: we published nine, dropped two (the golfer
 * fell ill; the monitor broke) and have three open." Who publishes only what turned out well would show it here.
 */
export function ledgerLine(ledger: Ledger | null): string {
  if (ledger === null)
    return 'We keep no register of planned tests, so we cannot say how many we left unpublished.';
  const { planned, published, dropped, open, unplanned } = ledgerCount(ledger);
  const reasons = [...new Set(dropped.map(({ reason }) => reason.trim().replace(/\.$/, '')))].join('; ');
  const parts = [
    ...(published > 0 ? [`published ${countWord(published)}`] : []),
    ...(dropped.length > 0 ? [`dropped ${countWord(dropped.length)} (${reasons})`] : []),
    ...(open > 0 ? [`have ${countWord(open)} open`] : []),
  ];
  return [
    planned === 0
      ? 'No planned test is on record.'
      : `We planned ${counted(planned, 'test')}: we ${listed(parts)}.`,
    ...(unplanned === 0
      ? []
      : [
          sentence(
            `${counted(unplanned, 'further report')} ${unplanned === 1 ? 'has' : 'have'} no plan on record`,
          ),
        ]),
  ].join(' ');
}

/** What the line means, for the page on method. */
export const ledgerMeaning =
  'We put every planned test on record before we hit it. A shop that showed only the tests it liked would have ' +
  'many left open: even when everything is equal, about five tests in 100 show a difference by luck.';
