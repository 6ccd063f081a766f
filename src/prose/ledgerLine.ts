import { ledgerCount, type Ledger } from '../intake/ledger.ts';
import { counted, sentence } from './words.ts';

/**
 * What became of all the tests that the shop planned: "Planned 14, published 9, dropped 2 (the hitter fell ill; the
 * monitor broke), open 3." Who publishes only what turned out well would show it here.
 */
export function ledgerLine(ledger: Ledger | null): string {
  if (ledger === null)
    return 'No ledger of plans is kept, so how many tests stayed unpublished is not recorded.';
  const { planned, published, dropped, open, unplanned } = ledgerCount(ledger);
  const reasons = [...new Set(dropped.map(({ reason }) => reason.trim().replace(/\.$/, '')))].join('; ');
  const parts = [
    `planned ${planned}`,
    `published ${published}`,
    `dropped ${dropped.length}${reasons === '' ? '' : ` (${reasons})`}`,
    `open ${open}`,
  ];
  const further =
    unplanned === 0
      ? ''
      : ` ${sentence(`${counted(unplanned, 'report')} more ${unplanned === 1 ? 'has' : 'have'} no plan on record`)}`;
  return sentence(`tests ${parts.join(', ')}`) + further;
}

/** What the line means, for the page on method. */
export const ledgerMeaning =
  'Every planned test is put on record before it is hit. A shop that showed only the tests it liked would have ' +
  'many left open: even with equal equipment about five tests in 100 show a gap by luck.';
