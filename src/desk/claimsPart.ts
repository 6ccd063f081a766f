import { claimChange } from './claimChange.ts';
import { claimsPage } from './claimsPage.ts';
import type { ReportPart } from './reportPart.ts';

/** What the shop says of what it tested, each sentence held against the shots. */
export const claimsPart: ReportPart = {
  id: 'claims',
  heading: 'Claims',
  besideLivePage: true,
  done: {
    added: 'Added. Your report prints it with what the shots make of it.',
    taken: 'Taken: the claim says what the shots support.',
    unproven: 'Your report prints the claim, and with it that the shots do not show it.',
    out: 'Taken out.',
  },
  page: claimsPage,
  change: claimChange,
};
