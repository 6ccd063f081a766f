import type { Source } from '../intake/authored/source.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';
import type { Session } from '../intake/session.ts';
import type { OrderKind } from './findings.ts';
import { protectedKinds, type HitOrder } from './hitOrder.ts';
import { statedOrder } from './inputOf.ts';
import { numbersFall } from './numbersFall.ts';
import { reproducesPlan } from './plannedSequence.ts';
import { firstLookShots } from './thresholds.ts';

/** Rows and shot numbers that tell two orders: until the shop says which holds, the order is not known. */
export function checkRowNumbers({ front }: Source, session: Session): readonly Problem[] {
  const falling = front.rowsInHitOrder && !reproducesPlan(front.plan, session) ? numbersFall(session) : null;
  if (falling === null) return [];
  const { file, line } = falling.place;
  return [
    makeProblem(
      'rows-not-by-number',
      { file, line },
      {
        expected: 'rows in the order of hitting, so that shot numbers rise',
        found: `shot ${falling.shotNo ?? ''} below a later one`,
        cure: 'If the numbers are the order of hitting, sort the rows by them; if the rows are, number them as they stand. If neither is, write "rows: not-in-hit-order" and the order under plan.',
        forReader: 'Rows and shot numbers tell two orders, so the order of the shots is not known.',
      },
    ),
  ];
}

const takenTurns: readonly OrderKind[] = [...protectedKinds, 'mixed', 'mini-blocks'];

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

/** The shots of the session where they were hit one after another, so few that they credit nothing. */
export function checkShotsCredit({ contenders, shots }: Session, { kind }: HitOrder): readonly Problem[] {
  const [first] = shots;
  if (first === undefined || (kind !== 'one-after-another' && kind !== 'stated-one-after-another')) return [];
  return creditsNothing(
    first.place.file,
    contenders.map((id) => shots.filter(({ contender }) => contender === id).length),
  );
}

/**
 * Shots hit one after another leave the cause of every gap open; so few of them are sooner hit again than written up.
 *
 * @param shots with each contender
 */
export function creditsNothing(file: string, shots: readonly number[]): readonly Problem[] {
  const fewest = Math.min(...shots);
  if (shots.length < 2 || fewest >= firstLookShots) return [];
  const most = Math.max(...shots);
  return [
    makeProblem(
      'order-credits-nothing',
      { file },
      {
        expected: `shots in turns; one after another, and with under ${firstLookShots} shots each, no difference is put down to what was tested, whatever the truth`,
        found: `all shots with one, then all with the next: ${fewest === most ? fewest : `${fewest} to ${most}`} each`,
        cure: 'Hit the test again in an order of turns: npm run plan writes one, and says how many shots it takes. A report of these shots can only say that the cause is open.',
        cureAtDesk:
          'Plan the test again and hit it in turns: the plan writes the order, and says how many shots it takes. A report of these shots can only say that the cause is open.',
      },
    ),
  ];
}
