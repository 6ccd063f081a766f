import type { ClaimStanding } from '../findings/findings.ts';
import { claimOf } from './claims.ts';
import { supportClause } from './english/claims.ts';
import type { Telling } from './telling.ts';

/** What could be said instead of a claim, as a clause without its full stop. */
export function whatTheShotsBear(claim: ClaimStanding, telling: Telling): string {
  return supportClause(claimOf(claim, telling.findings), telling);
}
