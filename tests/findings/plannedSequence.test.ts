import { describe, expect, test } from 'vitest';
import { reproducesPlan } from '../../src/findings/plannedSequence.ts';
import { plannedOrder, type PlannedTurns } from '../../src/intake/plan/plannedOrder.ts';
import { orderInWords } from '../../src/prose/english/order.ts';
import { around, reportOf } from './reportOf.ts';

const seed = 'spring test';
const heads = ['alder', 'birch', 'cedar'];

/** Invented carries in the order that the seed gives. */
function csv(turns: PlannedTurns, change: (order: string[]) => string[] = (order) => order): string {
  const planned = plannedOrder({ contenders: heads, shotsEach: 12, turns, seed }) ?? [];
  const order = change(planned.map(({ contender }) => contender));
  const carries = around(230);
  const rows = order.map(
    (head, index) => `${index + 1},${head},${((carries[index % 12] ?? 0) + heads.indexOf(head)).toFixed(1)}`,
  );
  return ['Shot,Head,Carry (yd)', ...rows, ''].join('\n');
}

const plan = `{shots_per_contender: 12, order: random rotation, seed: ${seed}}`;

describe('the seed of the plan', () => {
  test.each<PlannedTurns>([{ kind: 'rotation' }, { kind: 'mini-blocks', shotsAVisit: 2 }])(
    'that reproduces the order makes it known as random ($kind)',
    (turns) => {
      const { findings, telling } = reportOf({ front: { plan }, csv: csv(turns) });
      expect(findings.design.order).toBe('planned-random');
      expect(findings.metrics[0]?.pairs.map(({ credit }) => credit)).toEqual(Array(3).fill('contender'));
      expect(orderInWords(telling.findings.design.order)).toBe('in random order, drawn beforehand');
    },
  );

  test('does not make shots of one visit tell more: a gap must show from visit to visit, and more is needed to find it', () => {
    const turns = { kind: 'mini-blocks', shotsAVisit: 3 } as const;
    const own = csv(turns);
    const planned = reportOf({ front: { plan }, csv: own }).findings;
    const unplanned = reportOf({ csv: own }).findings;
    expect([planned.design.order, unplanned.design.order]).toEqual(['planned-random', 'mini-blocks']);
    const [ofPlan, ofRows] = [planned.metrics[0], unplanned.metrics[0]];
    expect(ofPlan?.detectable).toBe(ofRows?.detectable);
    expect(ofPlan?.pairs.map(({ verdict, overlays }) => [verdict, overlays])).toEqual(
      ofRows?.pairs.map(({ verdict, overlays }) => [verdict, overlays]),
    );
  });

  test('says nothing where one shot stands elsewhere, or the seed is another', () => {
    const swapped = csv({ kind: 'rotation' }, ([first = '', second = '', ...rest]) => [
      second,
      first,
      ...rest,
    ]);
    expect(reportOf({ front: { plan }, csv: swapped }).findings.design.order).not.toBe('planned-random');
    const other = reportOf({
      front: { plan: plan.replace(seed, 'another') },
      csv: csv({ kind: 'rotation' }),
    });
    expect(other.findings.design.order).not.toBe('planned-random');
    expect(reproducesPlan(null, other.session)).toBe(false);
  });
});
