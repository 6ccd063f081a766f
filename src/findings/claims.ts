import type { Claim } from '../intake/authored/claims.ts';
import type { Plan } from '../intake/authored/plan.ts';
import type {
  ClaimedSpread,
  ClaimStanding,
  Findings,
  Interval,
  OverlayId,
  PairFindings,
  StandingId,
} from './findings.ts';

/** What claims are held against. */
type Judged = Pick<Findings, 'metrics' | 'straighter'>;

/** A pair found the way a claim names it: `sign` turns `a` minus `b` into the gap that is claimed. */
interface ClaimedPair {
  readonly pair: PairFindings;
  readonly sign: 1 | -1;
  readonly planned: boolean;
}

/** Whether the files hold what a claim is about; a claim that they do not is refused, not judged. */
export function isMeasured({ metric, direction }: Claim, { metrics, straighter }: Judged): boolean {
  return direction === 'straighter' ? straighter !== null : metrics.some(({ id }) => id === metric);
}

/** Whether a record shows a rule for leaving shots out from before the session. */
export const isRuleFirst = (
  planOnRecord: boolean,
  plan: Pick<Plan, 'exclusionRule'> | null | undefined,
): boolean => planOnRecord && plan?.exclusionRule !== undefined;

/**
 * Each claim with what the shots make of it; claims on what was not measured are left to `isMeasured`.
 *
 * @param ruleFirst whether a record shows a rule for leaving shots out from before the session
 */
export function claimStandings(
  claims: readonly Claim[],
  judged: Judged,
  ruleFirst = false,
): readonly ClaimStanding[] {
  return claims.flatMap((claim) => {
    const found = claimedPair(claim, judged);
    return found === null ? [] : [standingOf(claim, found, judged, ruleFirst)];
  });
}

/** Pairs are stored one way round only, and "less" or "straighter" counts downwards. */
function claimedPair(
  { metric, direction, of, than }: Claim,
  { metrics, straighter }: Judged,
): ClaimedPair | null {
  const own = metrics.find(({ id }) => id === metric);
  const pairs = (direction === 'straighter' ? straighter : own?.pairs) ?? [];
  const pair = pairs.find(({ a, b }) => (a === of && b === than) || (a === than && b === of));
  if (pair === undefined) return null;
  const named = pair.a === of ? 1 : -1;
  const counted = direction === 'less' || direction === 'straighter' ? -1 : 1;
  return {
    pair,
    sign: named === counted ? 1 : -1,
    planned: direction !== 'straighter' && own?.role === 'primary',
  };
}

function standingOf(claim: Claim, found: ClaimedPair, judged: Judged, ruleFirst: boolean): ClaimStanding {
  const { say, metric, direction, of, than } = claim;
  const byAtLeast = claim.byAtLeast?.value ?? 0;
  const { pair, planned } = found;
  const said = { say, metric, direction, of, than, byAtLeast, planned };
  if (direction === 'tighter') {
    const spread = claimedSpread(claim, judged);
    return { ...said, standing: spreadStanding(spread, pair), gap: null, spread: spread?.spread ?? null };
  }
  const gap = claimedGap(found);
  return { ...said, standing: gapStanding(gap?.ci ?? null, byAtLeast, pair, ruleFirst), gap, spread: null };
}

function claimedGap({ pair, sign }: ClaimedPair): ClaimStanding['gap'] {
  if (pair.estimate === null || pair.ci === null) return null;
  const [lower, upper] = pair.ci;
  return { estimate: sign * pair.estimate, ci: sign === 1 ? [lower, upper] : [-upper, -lower] };
}

/**
 * A claim that the whole interval speaks against is contradicted, whatever else; one is borne out only by a gap that
 * nothing else could have made.
 *
 * @param byAtLeast what is claimed at least, 0 where no size is claimed; SI
 */
function gapStanding(
  ci: Interval | null,
  byAtLeast: number,
  pair: PairFindings,
  ruleFirst: boolean,
): StandingId {
  if (ci === null) return 'not-shown';
  const [lower, upper] = ci;
  if (byAtLeast > 0 ? upper < byAtLeast : upper < 0) return 'contradicted';
  if (!supports(pair, ruleFirst) || lower <= 0) return 'not-shown';
  return lower > byAtLeast ? 'borne-out' : 'weaker-than-said';
}

/** With one of these beside it a gap is not settled, or not surely the contender's. */
const unsettling: readonly OverlayId[] = [
  'visits-alike',
  'leans',
  'mixed-with-swing',
  'near-device',
  'rests-on-one-shot',
  'uneven-readings',
];

/** Whether a gap may support a claim: its cause is not open, and neither swing, monitor, one shot nor what is missing made it. */
function supports({ credit, overlays }: PairFindings, ruleFirst: boolean): boolean {
  if (credit === 'open' || unsettling.some((overlay) => overlays.includes(overlay))) return false;
  return ruleFirst || !overlays.includes('depends-on-left-out');
}

function claimedSpread(
  { metric, of, than }: Claim,
  { metrics }: Judged,
): { readonly spread: ClaimedSpread; readonly clear: boolean } | null {
  const pairs = metrics.find(({ id }) => id === metric)?.spread?.pairs ?? [];
  const pair = pairs.find(({ a, b }) => (a === of && b === than) || (a === than && b === of));
  if (pair === undefined) return null;
  const straight = pair.a === of;
  const spread: ClaimedSpread = {
    ratio: straight ? pair.ratio : 1 / pair.ratio,
    p: pair.p,
    tighter: (pair.tighter === 'a') === straight ? 'of' : 'than',
  };
  return { spread, clear: pair.clear };
}

/** Spreads are judged from twelve shots on only: with fewer there is none here, and nothing is shown. */
function spreadStanding(
  found: ReturnType<typeof claimedSpread>,
  { credit, overlays }: PairFindings,
): StandingId {
  if (found === null || !found.clear) return 'not-shown';
  if (found.spread.tighter === 'than') return 'contradicted';
  return credit === 'contender' && !overlays.includes('visits-alike') ? 'borne-out' : 'not-shown';
}
