import type {
  ClaimStanding,
  ContenderSummary,
  Findings,
  Interval,
  MetricFindings,
  OverlayId,
  PairFindings,
} from '../findings/findings.ts';
import { fewestForSpread } from '../findings/thresholds.ts';
import { pairAnswer } from './pairAnswer.ts';
import { nearerOf, type Nearer } from './straighter.ts';
import type { Difference, PairAnswer } from './statement.ts';

/** A spread with its likely range, SI. */
export interface Spread {
  readonly of: string;
  readonly sd: number;
  readonly ci: Interval | null;
}

/** What the shots support of a claim; ids and SI. */
type Support =
  | {
      /** A difference the claimed way, credited to what is claimed, unless something beside it holds it back. */
      readonly kind: 'claimed-way';
      readonly difference: Difference;
      readonly small: boolean;
      readonly heldBack: readonly HoldingBack[];
    }
  /** Whatever else the answer about the pair is. */
  | { readonly kind: 'answer'; readonly answer: PairAnswer }
  | { readonly kind: 'straighter'; readonly nearer: Nearer }
  | { readonly kind: 'straighter-unsure'; readonly judged: boolean; readonly open: boolean }
  | {
      readonly kind: 'steadier';
      readonly steadier: Spread;
      readonly other: Spread;
      /** Whether the order of the shots may be the cause. */
      readonly open: boolean;
    }
  | { readonly kind: 'spread-unsure' }
  | {
      readonly kind: 'spread-not-judged';
      readonly because: 'several-golfers' | 'too-few-shots' | 'no-spread';
      readonly fewest: number;
    }
  | { readonly kind: 'nothing' };

/** A claim of the shop with what the shots support. */
export interface ClaimStatement {
  readonly kind: 'claim';
  readonly claim: ClaimStanding;
  readonly support: Support;
  readonly explored: Findings['explored'];
}

/** What keeps a difference that was seen from supporting a claim, the gravest first. */
const holdingBack = [
  'mixed-with-swing',
  'depends-on-left-out',
  'rests-on-one-shot',
  'near-device',
  'uneven-readings',
] as const satisfies readonly OverlayId[];

export type HoldingBack = (typeof holdingBack)[number];

/** A claim with what the shots support. */
export function claimOf(claim: ClaimStanding, findings: Findings): ClaimStatement {
  return { kind: 'claim', claim, support: supportOf(claim, findings), explored: findings.explored };
}

/** The claims of a report, in the order in which the shop makes them. */
export function claimsOf(findings: Findings): readonly ClaimStatement[] {
  return findings.claims.map((claim) => claimOf(claim, findings));
}

function supportOf(claim: ClaimStanding, findings: Findings): Support {
  const metric = findings.metrics.find(({ id }) => id === claim.metric);
  const pairs = (claim.direction === 'straighter' ? findings.straighter : metric?.pairs) ?? [];
  const pair = pairs.find(
    ({ a, b }) => (a === claim.of && b === claim.than) || (a === claim.than && b === claim.of),
  );
  if (metric === undefined || pair === undefined) return { kind: 'nothing' };
  switch (claim.direction) {
    case 'tighter':
      return spreadSupport(claim, metric, pair, findings);
    case 'straighter': {
      const nearer = nearerOf(pair);
      return nearer === null
        ? { kind: 'straighter-unsure', judged: pair.estimate !== null, open: pair.credit === 'open' }
        : { kind: 'straighter', nearer };
    }
    case 'more':
    case 'less':
      return gapSupport(claim, metric, pair, findings);
  }
}

function gapSupport(
  { gap, standing }: ClaimStanding,
  metric: MetricFindings,
  pair: PairFindings,
  { design }: Findings,
): Support {
  const answer = pairAnswer(pair, metric, design);
  const sure = answer.status === 'clear' || answer.status === 'size-uncertain' || answer.status === 'small';
  if (gap === null || !sure || gap.ci[0] <= 0) return { kind: 'answer', answer };
  return {
    kind: 'claimed-way',
    difference: gap,
    small: answer.status === 'small',
    heldBack: standing === 'not-shown' ? holdingBack.filter((id) => pair.overlays.includes(id)) : [],
  };
}

function spreadSupport(
  { of, than, spread }: ClaimStanding,
  metric: MetricFindings,
  pair: PairFindings,
  { design }: Findings,
): Support {
  const summary = (id: string): ContenderSummary | undefined =>
    metric.byContender.find((own) => own.id === id);
  if (spread === null) {
    const counts = [of, than].map((id) => summary(id)?.n ?? 0);
    const fewest = Math.min(...counts);
    const few = fewest < fewestForSpread ? 'too-few-shots' : 'no-spread';
    return { kind: 'spread-not-judged', because: design.hitters > 1 ? 'several-golfers' : few, fewest };
  }
  const clear = metric.spread?.pairs.find(
    ({ a, b }) => (a === of && b === than) || (a === than && b === of),
  )?.clear;
  const spreads = (spread.tighter === 'of' ? [of, than] : [than, of]).map((id) => spreadOf(summary(id)));
  const [steadier, other] = spreads;
  return clear !== true || steadier == null || other == null
    ? { kind: 'spread-unsure' }
    : { kind: 'steadier', steadier, other, open: pair.credit === 'open' };
}

function spreadOf(summary: ContenderSummary | undefined): Spread | null {
  return summary === undefined || summary.sd === null
    ? null
    : { of: summary.id, sd: summary.sd, ci: summary.sdCi };
}
