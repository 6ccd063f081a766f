import { at } from '../stats/at.ts';
import { contenderIds } from '../intake/draft/contenderIds.ts';
import { draftReport } from '../intake/draft/draftReport.ts';
import { freeSlug, shortSlug, slugOf } from '../intake/draft/slugOf.ts';
import { understand } from '../intake/draft/understood.ts';
import type { Shop } from '../intake/authored/shop.ts';
import type { RecordedPlan } from '../intake/ledger.ts';
import { orderSheetCsv } from '../intake/plan/orderSheetCsv.ts';
import { plannedAnswers } from '../intake/plan/plannedAnswers.ts';
import { plannedOrder, turnsInWords } from '../intake/plan/plannedOrder.ts';
import { hittingSheet } from '../kit/hittingSheet.ts';
import { usualGap } from '../prose/usualGap.ts';
import { listed } from '../prose/words.ts';
import { planHash } from '../site/ledger.ts';
import { metrics } from '../trade/metrics.ts';
import type { Decided } from './decidePlan.ts';
import type { PlanAnswers } from './planAnswers.ts';
import { usualExclusionRule, usualStoppingRule, usualWarmUp } from './usualRules.ts';

/** Names of the files of a plan beside its `report.md`. */
export const orderFile = 'order.csv';
export const sheetFile = 'hitting-sheet.html';

/** When a plan is made. */
export interface PlanClock {
  /** The day where the shop is, ISO. */
  readonly today: string;
  /** Hour and minute there, "14:05". */
  readonly time: string;
}

/** Why a plan that was decided cannot be written. */
export type UnwritablePlan =
  | { readonly kind: 'name-unusable'; readonly name: string }
  /** The counts leave no order that would be known for what it is. */
  | { readonly kind: 'no-order' }
  | { readonly kind: 'no-plan' };

/** What a plan becomes: its entry in the ledger, and the files of its folder by name. */
interface PlannedFiles {
  readonly kind: 'files';
  readonly plan: RecordedPlan;
  readonly files: Readonly<Record<string, string>>;
}

interface ToBeWritten {
  readonly answers: PlanAnswers;
  readonly decided: Decided;
  readonly shop: Shop | null;
  readonly clock: PlanClock;
  /** Whether there is a report of a name. */
  readonly isTaken: (name: string) => boolean;
}

/** The files of a plan; a name that was not chosen gives way to one that is taken. */
export function plannedFiles({
  answers,
  decided,
  shop,
  clock: { today, time },
  isTaken,
}: ToBeWritten): PlannedFiles | UnwritablePlan {
  const { labels, varied, metric, matters, role, turns, shotsEach, expectation } = decided;
  const title = answers.title ?? listed(labels);
  const wanted = answers.slug ?? (shortSlug(title) || 'plan');
  if (slugOf(wanted) !== wanted) return { kind: 'name-unusable', name: wanted };
  const slug = answers.slug ?? freeSlug(wanted, isTaken);
  const seed = answers.seed ?? `${slug}-${today}`;
  const ids = contenderIds(labels);
  const order = plannedOrder({ contenders: ids, shotsEach, turns, seed });
  if (order === null) return { kind: 'no-order' };
  const labelOf = (id: string): string => at(labels, ids.indexOf(id));
  const plan = {
    date: today,
    shotsEach,
    order: turnsInWords(turns),
    seed,
    exclusionRule: answers['exclusion-rule'] ?? usualExclusionRule,
    stoppingRule: answers['stopping-rule'] ?? usualStoppingRule(shotsEach),
    expectation,
    warmUp: answers['warm-up'] ?? usualWarmUp,
  };
  const report = draftReport({
    slug,
    title,
    dateInName: null,
    varied,
    session: [],
    understood: {
      ...understand([]),
      contenders: labels.map((name) => ({ name, spellings: [name], shots: 0 })),
    },
    openColumns: [],
    usualGap: (own) => usualGap(own, shop?.defaults.units ?? 'yards'),
    shop,
    planned: {
      plan,
      question: answers.question ?? null,
      primary: metric,
      matters: matters.typed,
      orderSheet: orderFile,
      hitterRole: role,
    },
  });
  const bound = plannedAnswers(`reports/${slug}/report.md`, report);
  const hash = bound === null ? null : planHash(bound);
  if (hash === null) return { kind: 'no-plan' };
  return {
    kind: 'files',
    plan: { slug, date: today, time, hash },
    files: {
      'report.md': report,
      [orderFile]: orderSheetCsv(order, labelOf),
      [sheetFile]: hittingSheet({
        ...plan,
        title,
        varied,
        metric: metrics[metric].name,
        matters: matters.typed,
        turns: plan.order,
        order: order.map(({ shot, round, contender }) => ({ shot, round, label: labelOf(contender) })),
      }),
    },
  };
}
