import type { Session, Shot } from '../intake/session.ts';
import { quantile } from '../stats/quantile.ts';
import type { Design } from './findings.ts';

/** Who hit and how fast, the slowest first, by the counted shots; golfers without a reading of club speed last. */
export function golfersOf({ hitters, shots }: Session): Pick<Design, 'golfers' | 'clubSpeed'> {
  const counted = shots.filter(({ excluded }) => excluded === null);
  const byHitter = Map.groupBy(counted, ({ hitter }) => hitter);
  const golfers = hitters.map((id) => {
    const own = byHitter.get(id) ?? [];
    return { id, clubSpeed: speedRange(own), shots: own.length };
  });
  const speed = ({ clubSpeed }: Design['golfers'][number]): number =>
    clubSpeed === null ? Infinity : clubSpeed.low + clubSpeed.high;
  return {
    golfers: golfers.toSorted((x, y) => (speed(x) < speed(y) ? -1 : speed(x) > speed(y) ? 1 : 0)),
    clubSpeed: speedRange(counted),
  };
}

function speedRange(shots: readonly Shot[]): Design['clubSpeed'] {
  const speeds = shots.flatMap(({ values }) => values.club_speed ?? []);
  return speeds.length === 0 ? null : { low: quantile(speeds, 0.1), high: quantile(speeds, 0.9) };
}
