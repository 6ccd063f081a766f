import type { Source } from '../intake/authored/source.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';
import type { OrderKind } from './findings.ts';
import { statedOrder } from './inputOf.ts';

const takenTurns: readonly OrderKind[] = [
  'rotation-same-order',
  'rotation-order-changed',
  'mixed',
  'mini-blocks',
];

/** The order that was planned beside the order of the rows (C20): only an outright contradiction is one. */
export function checkPlannedOrder({ front, placeOf }: Source, found: OrderKind): readonly Problem[] {
  const planned = front.plan?.order;
  if (planned === undefined || !front.rowsInHitOrder) return [];
  const stated = statedOrder(planned);
  const contradicts =
    (stated !== 'unknown' && stated !== 'one-after-another' && found === 'one-after-another') ||
    (stated === 'one-after-another' && takenTurns.includes(found)) ||
    (stated === 'rotation' && found === 'mini-blocks');
  if (!contradicts) return [];
  return [
    makeProblem('order-differs-from-plan', placeOf(['plan', 'order']), {
      expected: `shots in the planned order: ${planned}`,
      found:
        found === 'one-after-another'
          ? 'rows in which the shots stand one after another'
          : 'rows in another order',
      cure: 'If the rows are not in hit order, write "rows: not-in-hit-order"; else say why the plan was not kept.',
      forReader: `Planned was: ${planned}. The rows of the file stand in another order.`,
    }),
  ];
}
