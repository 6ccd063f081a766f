import { claimStandings } from '../findings/claims.ts';
import type { MetricFindings } from '../findings/findings.ts';
import type { Claim } from '../intake/authored/claims.ts';
import type { Quantity } from '../intake/authored/quantity.ts';
import type { MetricId } from '../trade/metrics.ts';
import { fromCanonical, toCanonical } from '../trade/units.ts';
import { claimOf, type ClaimStatement } from './claims.ts';
import { sayClaim } from './english/claims.ts';
import { pairAnswers } from './pairAnswer.ts';
import { printingFor, type Telling } from './telling.ts';

/** A claim that the shots support, in its own words, with the largest size that they still support. */
export interface SupportedClaim {
  readonly claim: Claim;
  readonly statement: ClaimStatement;
}

/** What is compared with what: without a size, and in no words. */
type Compared = Pick<Claim, 'metric' | 'direction' | 'of' | 'than'>;

/** What claims are held against. */
export interface Holding {
  readonly telling: Telling;
  /** Whether a record shows a rule for leaving shots out from before the session. */
  readonly ruleFirst: boolean;
}

/** The claims that would be supported, of one measure or of where the shots finish beside the line. */
export interface ClaimFamily {
  readonly about: MetricId | 'straighter';
  readonly role: MetricFindings['role'];
  readonly claims: readonly SupportedClaim[];
}

/** The claims that the shots support, family by family: the main measures first, each pair once, the surest first. */
export function supportedClaims(held: Holding): readonly ClaimFamily[] {
  const { metrics, straighter, design } = held.telling.findings;
  const families = metrics.map((metric): ClaimFamily => {
    const pairs = pairAnswers(metric, design);
    const compared = [
      ...pairs.map(({ by, ahead, behind }): Compared => ({
        metric: metric.id,
        direction: by,
        of: ahead,
        than: behind,
      })),
      ...metric.pairs.map(({ a, b }): Compared => ({
        metric: metric.id,
        direction: 'tighter',
        of: a,
        than: b,
      })),
    ];
    return {
      about: metric.id,
      role: metric.role,
      claims: compared.flatMap((one) => supportedClaim(one, held) ?? []),
    };
  });
  if (straighter === null) return families;
  const nearer = straighter.map(({ a, b }): Compared => ({
    metric: 'side',
    direction: 'straighter',
    of: a,
    than: b,
  }));
  const claims = nearer.flatMap((one) => supportedClaim(one, held) ?? []);
  return [...families, { about: 'straighter', role: 'exploratory', claims }];
}

/** The claim on a comparison that the shots support, whichever of the two is ahead; null where they support none. */
export function supportedClaim(
  { metric, direction, of, than }: Compared,
  held: Holding,
): SupportedClaim | null {
  const first = supported({ metric, direction, of, than, byAtLeast: null }, held);
  const shown = first ?? supported({ metric, direction, of: than, than: of, byAtLeast: null }, held);
  if (shown === null) return null;
  for (const byAtLeast of sizesBelow(shown, held.telling)) {
    const sized = supported({ ...shown.claim, byAtLeast }, held);
    if (sized !== null) return sized;
  }
  return shown;
}

function supported(
  compared: Compared & Pick<Claim, 'byAtLeast'>,
  { telling, ruleFirst }: Holding,
): SupportedClaim | null {
  const byAtLeast = compared.byAtLeast?.value ?? 0;
  const claim = { ...compared, say: sayClaim({ ...compared, byAtLeast }, telling), allowUnproven: false };
  const [standing] = claimStandings([claim], telling.findings, ruleFirst);
  return standing?.standing === 'borne-out'
    ? { claim, statement: claimOf(standing, telling.findings) }
    : null;
}

/** The two largest sizes, in whole steps of the shop's unit, that the lower limit of a difference reaches. */
function sizesBelow({ claim, statement }: SupportedClaim, telling: Telling): readonly Quantity[] {
  const { gap } = statement.claim;
  if (gap === null) return [];
  const { unit, step } = printingFor(claim.metric, telling);
  const most = Math.floor(Number((fromCanonical(gap.ci[0], unit) / step.step).toFixed(9)));
  return [most, most - 1].flatMap((steps): Quantity[] => {
    if (steps <= 0) return [];
    const size = (steps * step.step).toFixed(step.decimals);
    return [{ value: toCanonical(Number(size), unit), unit, typed: unit === '1' ? size : `${size} ${unit}` }];
  });
}
