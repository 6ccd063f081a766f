import { metricIds, metrics, type MetricId } from '../trade/metrics.ts';
import type { Quantity } from '../intake/authored/quantity.ts';
import { foresee, proposedShots, type Foresight } from '../intake/plan/foresight.ts';
import { orderTrouble, type PlannedTurns } from '../intake/plan/plannedOrder.ts';
import { usualGap } from '../prose/usualGap.ts';
import { askPlainly, type Ask } from './ask.ts';
import type { PlanAnswers } from './planAnswers.ts';
import type { PlanFact } from './planFact.ts';
import { planQuestions } from './planQuestions.ts';
import type { PlanSurroundings } from './planSurroundings.ts';
import {
  checkContenders,
  readContenders,
  readMetric,
  readNoun,
  readOptional,
  readQuantity,
  readShots,
  readTurns,
} from './readings.ts';
import { spreadToPlanWith } from './spreadToPlanWith.ts';

/** All that was decided. */
export interface Decided {
  readonly labels: readonly string[];
  readonly varied: string;
  readonly metric: MetricId;
  readonly matters: Quantity;
  readonly role: string | null;
  readonly turns: PlannedTurns;
  readonly shotsEach: number;
  readonly expectation: string | null;
}

/**
 * Goes through the questions of a plan, telling on the way what follows from the answers; null where one of them has no
 * answer that can be used. Every question is asked that can be asked without that answer.
 */
export async function decidePlan(
  answers: PlanAnswers,
  ask: Ask,
  { shop, past, tell }: PlanSurroundings & { readonly tell: (fact: PlanFact) => void },
): Promise<Decided | null> {
  const put = askPlainly(answers, ask);
  const labels = await ask({
    key: 'contender',
    given: answers.contender?.join(';'),
    question: planQuestions.contender,
    proposed: null,
    read: answers.contender === undefined ? readContenders : () => checkContenders(answers.contender ?? []),
  });
  const varied = await put('varied', { proposed: null, read: readNoun });
  const metric = await put('metric', { proposed: 'carry', choices: metricIds, read: readMetric });
  const matters =
    metric === null
      ? null
      : await ask({
          key: 'matters',
          given: answers.matters,
          question: planQuestions.matters(metrics[metric].name),
          proposed:
            shop?.defaults.matters[metric]?.typed ?? usualGap(metric, shop?.defaults.units ?? 'yards'),
          read: readQuantity(metric),
        });
  const spread =
    metric === null
      ? null
      : await spreadToPlanWith(answers, ask, { metric, labels: labels ?? [], varied, shop, past });
  const prospect =
    labels === null || matters === null || spread === null
      ? null
      : {
          contenders: labels.length,
          sd: spread.sd,
          sdRange: spread.origin.kind === 'own' ? spread.origin.learned.range : null,
          matters: matters.value,
        };
  const ahead = (shotsEach: number, turns: PlannedTurns, contenders?: number): Foresight | null =>
    prospect === null
      ? null
      : foresee({ ...prospect, contenders: contenders ?? prospect.contenders, shotsEach, turns });
  const rotation: PlannedTurns = { kind: 'rotation' };
  const first = ahead(12, rotation);
  if (metric !== null && spread !== null && matters !== null) {
    const { sd, origin, club, role, ownToo } = spread;
    const { name } = metrics[metric];
    tell({
      kind: 'spread',
      facts: { metricName: name, sd, unit: matters.unit, origin, role, club, ownToo },
    });
  }
  if (labels !== null && matters !== null && first !== null) {
    const needed = (contenders: number): number | null => ahead(12, rotation, contenders)?.needed ?? null;
    tell({
      kind: 'needed',
      foresight: first,
      matters: matters.typed,
      contenders: labels.length,
      fewer: [needed(2), needed(3)],
    });
  }
  const turns = await put('order', {
    proposed: 'rotation',
    choices: ['rotation', 'mini-blocks-2', 'mini-blocks-3'],
    read: readTurns,
  });
  const visit = turns?.kind === 'mini-blocks' ? turns.shotsAVisit : 1;
  const inTurns = turns?.kind === 'mini-blocks' ? ahead(4 * visit, turns) : first;
  if (turns?.kind === 'mini-blocks' && inTurns !== null)
    tell({ kind: 'needed-in-visits', needed: inTurns.needed, shotsAVisit: visit });
  const shotsEach =
    turns === null
      ? null
      : await put('shots', {
          proposed: String(proposedShots(labels?.length ?? 2, inTurns?.needed ?? null, visit)),
          read: (typed) => {
            const read = readShots(typed);
            const trouble = 'value' in read ? orderTrouble(read.value, turns) : null;
            return trouble === null ? read : { expected: trouble };
          },
        });
  const foresight = turns === null || shotsEach === null ? null : ahead(shotsEach, turns);
  if (labels !== null && varied !== null && matters !== null && shotsEach !== null && foresight !== null)
    tell({
      kind: 'chosen',
      facts: {
        foresight,
        contenders: labels.length,
        varied,
        shotsEach,
        unit: matters.unit,
        matters: matters.typed,
      },
    });
  const expectation = await put('expectation', { proposed: '', read: readOptional });
  if (labels === null || varied === null || metric === null || matters === null || spread === null)
    return null;
  if (turns === null || shotsEach === null || expectation === null) return null;
  return {
    labels,
    varied,
    metric,
    matters,
    role: spread.role,
    turns,
    shotsEach,
    expectation: expectation.text,
  };
}
