import { describe, expect, test } from 'vitest';
import { hitOrder } from '../../src/findings/hitOrder.ts';
import { reproducesPlan, withPlannedRounds } from '../../src/findings/plannedSequence.ts';
import type { Plan } from '../../src/intake/authored/plan.ts';
import { plannedOrder, type PlannedTurns } from '../../src/intake/plan/plannedOrder.ts';
import type { Session } from '../../src/intake/session.ts';
import { orderInWords } from '../../src/prose/english/order.ts';
import { around, reportOf } from './reportOf.ts';
import { sessionOf, yd, type Swing } from './sessions.ts';

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

/** The same rows with the number of their set of visits. */
function withRounds(text: string, turns: PlannedTurns): string {
  const planned = plannedOrder({ contenders: heads, shotsEach: 12, turns, seed }) ?? [];
  return text
    .split('\n')
    .map((row, line) =>
      row === '' ? row : `${row},${line === 0 ? 'Round' : (planned[line - 1]?.round ?? '')}`,
    )
    .join('\n');
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
    const unplanned = reportOf({ csv: withRounds(own, turns) }).findings;
    expect([planned.design.order, unplanned.design.order]).toEqual(['planned-random', 'mini-blocks']);
    const [ofPlan, ofRows] = [planned.metrics[0], unplanned.metrics[0]];
    expect(ofPlan?.detectable).toBe(ofRows?.detectable);
    const inRotation = reportOf({ front: { plan }, csv: csv({ kind: 'rotation' }) }).findings.metrics[0];
    expect(ofPlan?.detectable).toBeGreaterThan(inRotation?.detectable ?? Infinity);
    // Two visits that touch are one where nothing tells them apart, and fewer visits find less.
    const joined = reportOf({ csv: own }).findings.metrics[0];
    expect(ofPlan?.detectable).toBeLessThan(joined?.detectable ?? 0);
    expect(ofPlan?.pairs.map(({ verdict, overlays }) => [verdict, overlays])).toEqual(
      ofRows?.pairs.map(({ verdict, overlays }) => [verdict, overlays]),
    );
  });

  test('tells where visits end that the order alone would join, as the round column of an order sheet does', () => {
    const two = heads.slice(0, 2);
    const turns = { kind: 'mini-blocks', shotsAVisit: 3 } as const;
    const touching = { seed: 'b', shotsEach: 12 };
    const order = plannedOrder({ contenders: two, turns, ...touching }) ?? [];
    const swings = order.map(({ contender, round }): Swing => ({
      contender,
      round,
      values: { carry: yd(220) },
    }));
    const visitsIn = (session: Session): unknown => [
      hitOrder(session, null).fewestVisits,
      hitOrder(session, null).turns[0]?.turns.complete,
    ];
    const withoutRounds = sessionOf(
      swings.map(({ contender, values }) => ({ contender, values })),
      { contenders: two },
    );
    const plan: Plan = { seed: touching.seed, shotsPerContender: touching.shotsEach };
    expect(visitsIn(withoutRounds)).toEqual([3, 3]);
    expect(visitsIn(sessionOf(swings, { contenders: two }))).toEqual([4, 4]);
    expect(visitsIn(withPlannedRounds(plan, withoutRounds))).toEqual([4, 4]);
    expect(withPlannedRounds({ ...plan, seed: 'another' }, withoutRounds)).toBe(withoutRounds);
    const numbered = sessionOf(swings, { contenders: two });
    expect(withPlannedRounds(plan, numbered)).toBe(numbered);
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
