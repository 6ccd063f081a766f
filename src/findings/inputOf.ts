import type { Source } from '../intake/authored/source.ts';
import type { Quantity } from '../intake/authored/quantity.ts';
import type { Session } from '../intake/session.ts';
import { metricIds, type MetricId } from '../trade/metrics.ts';
import { reproducesPlan } from './plannedSequence.ts';
import type { AnalysisInput, StatedOrder } from './analysisInput.ts';
import type { PlanStanding } from './findings.ts';

/**
 * What the analysis needs of a report, taken from its front matter and session.
 *
 * @param plan what the ledger of plans says of this one
 */
export function analysisInput(
  { slug, front, files, shop }: Source,
  session: Session,
  plan: PlanStanding,
): AnalysisInput {
  return {
    slug,
    title: front.title,
    date: front.date,
    contenders: front.contenders.map(({ id, label }) => ({ id, label })),
    primaries: front.primary,
    better: front.better,
    matters: canonicalValues(front.matters),
    // Where the report has none of its own, it holds the shop's very answer.
    mattersOfShop: metricIds.filter(
      (id) => front.matters[id] !== undefined && front.matters[id] === shop?.defaults.matters[id],
    ),
    accuracy: canonicalValues(front.conditions.monitor?.statedAccuracy?.byMetric ?? {}),
    statedOrder: front.rowsInHitOrder ? null : statedOrder(front.plan?.order ?? ''),
    orderReproduced: front.rowsInHitOrder && reproducesPlan(front.plan, session),
    plan,
    claims: front.claims,
    written: front,
    session,
    seed: files
      .map(({ sha256 }) => sha256)
      .join('')
      .slice(0, 16),
  };
}

function canonicalValues(
  quantities: Readonly<Partial<Record<MetricId, Quantity>>>,
): Readonly<Partial<Record<MetricId, number>>> {
  const values: Partial<Record<MetricId, number>> = {};
  for (const metric of metricIds) {
    const quantity = quantities[metric];
    if (quantity !== undefined) values[metric] = quantity.value;
  }
  return values;
}

/** The order class behind the shop's own words; words that name none leave the order unknown. */
export function statedOrder(words: string): StatedOrder {
  if (/one after (another|the other)|one club at a time|blocked/i.test(words)) return 'one-after-another';
  if (/mini[- ]?blocks?|visits?/i.test(words)) return 'mini-blocks';
  if (/rotat|latin square|alternat/i.test(words)) return 'rotation';
  if (/random|drawn by lot|shuffl/i.test(words)) return 'random';
  return 'unknown';
}
