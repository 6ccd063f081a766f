import type { PlanStanding } from '../findings/findings.ts';
import type { Source } from '../intake/authored/source.ts';
import type { Ledger } from '../intake/ledger.ts';
import type { Session } from '../intake/session.ts';
import { planHash } from './ledger.ts';

/**
 * When the plan of a report was written, as far as the ledger shows: on an earlier day, or on the day itself at a time
 * before that of the first shot. Without a time on both sides a plan of the day itself is not one before.
 */
export function planStanding(
  { slug, front }: Pick<Source, 'slug' | 'front'>,
  shots: Session['shots'],
  ledger: Ledger | null,
): PlanStanding {
  const own = ledger?.plans.filter((entry) => entry.slug === slug) ?? [];
  const first = firstTime(shots, front.date);
  const earlier = own.filter(({ date }) => date < front.date);
  const thatDay = own.filter(
    ({ date, time }) => date === front.date && time !== undefined && first !== null && time < first,
  );
  const hash = planHash(front);
  const holds = (entries: typeof own): boolean =>
    hash !== null && entries.some((entry) => entry.hash === hash);
  if (holds(earlier)) return 'on-record';
  if (holds(thatDay)) return 'on-record-that-day';
  if (earlier.length > 0 || thatDay.length > 0) return 'changed';
  const stated = front.plan?.date;
  if (stated === undefined) return 'not-said';
  return stated < front.date ? 'stated' : 'afterwards';
}

const clockTime = /^(?:(\d{4}-\d{2}-\d{2})T)?(\d{2}:\d{2})/;

/** Hour and minute of the first shot on that day where the shop is; null unless every shot has one without another zone. */
function firstTime(shots: Session['shots'], day: string): string | null {
  const times = shots.map(({ time }) => {
    const [, date, clock] = clockTime.exec(time ?? '') ?? [];
    const elsewhere = /(?:Z|[+-]\d{2}:?\d{2})$/.test(time ?? '');
    return clock === undefined || elsewhere || (date ?? day) !== day ? null : clock;
  });
  const known = times.filter((time) => time !== null).toSorted();
  return known.length < times.length ? null : (known[0] ?? null);
}
