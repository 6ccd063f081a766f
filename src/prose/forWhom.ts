import type { Session } from '../intake/session.ts';
import type { Source } from '../intake/authored/source.ts';
import type { OrderKind } from '../findings/findings.ts';
import { primaryMetrics } from './answer.ts';
import { shotsEach } from './pairSentence.ts';
import { formatNumber } from './numbers.ts';
import { toReader, unitFor, withUnit } from './readerUnits.ts';
import type { Telling } from './telling.ts';
import { capitalised, counted, listed } from './words.ts';

/** How the shots followed one another, as it ends a sentence that counts them. */
const orderWords: Readonly<Record<OrderKind, string>> = {
  'one-after-another': 'one after another',
  'mini-blocks': 'in turns of a few shots',
  'rotation-same-order': 'in turn, in the same order every time',
  'rotation-order-changed': 'in turn, in changing order',
  counterbalanced: 'in orders that even out from golfer to golfer',
  mixed: 'in mixed order',
  'planned-random': 'in random order, drawn beforehand',
  'stated-random': 'in random order (the shop states this; it cannot be checked)',
  'stated-rotation': 'in turn (the shop states this; it cannot be checked)',
  'stated-mini-blocks': 'in turns of a few shots (the shop states this; it cannot be checked)',
  'stated-one-after-another': 'one after another (as the shop states)',
  unknown: 'in an order that is not known',
};

/** The order of the shots in words. */
export function orderInWords(order: OrderKind): string {
  return orderWords[order];
}

/** For whom the answer holds: who hit, how fast, how many shots, in which order. */
export function forWhom(source: Source, session: Session, telling: Telling): readonly string[] {
  const { design } = telling.findings;
  const [metric] = primaryMetrics(telling.findings);
  const counts = metric?.byContender.map(({ n }) => n) ?? [];
  const one = design.hitters === 1;
  const who = one ? oneGolfer(source) : `${capitalised(counted(design.hitters, 'golfer'))}`;
  const speed = speedRange(session, telling);
  const each = one ? shotsEach(counts, telling.noun) : shotsEachGolfer(session, telling);
  const parts = [who, ...(speed === null ? [] : [speed]), each];
  return [
    `${parts.join(', ')} ${orderInWords(design.order)}.`,
    one
      ? 'Yours may differ in size or direction.'
      : `What holds for ${design.unit === 'hitter' ? 'golfers like these' : 'these golfers'} need not hold for you.`,
    `One example of each ${telling.noun}.`,
  ];
}

/** "six shots each with every shaft": counted shots of each golfer with each contender. */
function shotsEachGolfer({ hitters, contenders, shots }: Session, { noun }: Telling): string {
  const counts = hitters.flatMap((hitter) =>
    contenders.map(
      (contender) =>
        shots.filter(
          (shot) => shot.hitter === hitter && shot.contender === contender && shot.excluded === null,
        ).length,
    ),
  );
  const [least, most] = [Math.min(...counts), Math.max(...counts)];
  return least === most
    ? `${counted(least, 'shot')} each with every ${noun}`
    : `${least} to ${most} shots each with every ${noun}`;
}

function oneGolfer({ front }: Source): string {
  const [hitter] = front.hitters;
  const hand = hitter?.hand === undefined ? '' : `${hitter.hand}-handed `;
  const role = hitter?.role === undefined ? '' : ` (${hitter.role})`;
  return `One ${hand}golfer${role}`;
}

/** "club speed 96 to 100 mph": from the slowest to the fastest tenth of the counted shots. */
function speedRange(session: Session, telling: Telling): string | null {
  const speeds = session.shots
    .flatMap(({ values, excluded }) =>
      excluded === null && typeof values.club_speed === 'number' ? [values.club_speed] : [],
    )
    .sort((x, y) => x - y);
  const slow = speeds[Math.floor(speeds.length * 0.1)];
  const fast = speeds[Math.ceil(speeds.length * 0.9) - 1];
  if (slow === undefined || fast === undefined) return null;
  const print = (speed: number): string => formatNumber(toReader(speed, 'club_speed', telling.system), 0);
  const unit = unitFor('club_speed', telling.system);
  return print(slow) === print(fast)
    ? `club speed about ${withUnit(print(slow), unit)}`
    : `club speed ${print(slow)} to ${withUnit(print(fast), unit)}`;
}

/** Contenders with their labels, for a sentence. */
export function contendersListed({ front }: Source): string {
  return listed(front.contenders.map(({ label }) => label));
}
