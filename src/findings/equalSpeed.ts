import type { Session } from '../intake/session.ts';
import { meanOf } from '../stats/moments.ts';
import type { Interval, MetricFindings, PairFindings, SwingFindings } from './findings.ts';
import { gapsOf } from './gapsOf.ts';
import type { HitOrder } from './hitOrder.ts';
import { findGap } from './judgedGap.ts';
import { samplesOf } from './samples.ts';

/** The gap of a pair at equal club speed; null where that has no price. */
type AtEqualSpeed = (pair: Pick<PairFindings, 'a' | 'b'>) => PairFindings['atEqualSpeed'];

/**
 * The gaps of a metric at equal club speed: the judged method on reading less price times club speed, shot by shot, once for
 * each end of the price's range, and the wider limits of the two. Shots without either reading drop out. One golfer. Never
 * instead of the gap as it was swung: club speed is partly the club's doing.
 */
export function atEqualSpeed(
  session: Session,
  { id, level, step }: { readonly id: MetricFindings['id']; readonly level: number; readonly step: number },
  order: HitOrder,
  swing: SwingFindings | null,
): AtEqualSpeed {
  const speed = swing?.measures.find((measure) => measure.id === 'club_speed');
  if (swing === null || speed === undefined || speed.perUnit === null || swing.metric !== id)
    return () => null;
  const byPrice = speed.perUnit.map((price) => {
    const atOneSpeed = withoutSpeed(session, id, price);
    const samples = samplesOf(atOneSpeed, id);
    const byHitter = session.hitters.map((hitter) => ({ hitter, samples }));
    return gapsOf({ session: atOneSpeed, metric: id, order, samples, byHitter, level, step }).gaps;
  });
  return ({ a, b }) => {
    const lines = byPrice.flatMap((gaps) => findGap(gaps, a, b) ?? []);
    if (lines.length < byPrice.length) return null;
    const ci: Interval = [
      Math.min(...lines.map((line) => line.ci[0])),
      Math.max(...lines.map((line) => line.ci[1])),
    ];
    return { estimate: meanOf(lines.map((line) => line.estimate)), ci };
  };
}

function withoutSpeed(session: Session, metric: MetricFindings['id'], price: number): Session {
  const speeds = session.shots.flatMap(({ values, excluded }) =>
    excluded === null ? (values.club_speed ?? []) : [],
  );
  const usual = speeds.length === 0 ? 0 : meanOf(speeds);
  return {
    ...session,
    shots: session.shots.map((shot) => {
      const [reading, speed] = [shot.values[metric], shot.values.club_speed];
      const value =
        typeof reading === 'number' && typeof speed === 'number' ? reading - price * (speed - usual) : null;
      return { ...shot, values: { ...shot.values, [metric]: value } };
    }),
  };
}
