import type { Launch } from './launch.ts';
import type { MeanPair } from './meanDraws.ts';
import { meanLaunchSize } from './smoothedCarry.ts';

/** What a gap in carry is split over. */
export type PartId = 'ball-speed' | 'club-speed' | 'smash' | 'launch-angle' | 'spin-rate' | 'direction';

/** A shot to account for: canonical units, the carry as it was read. */
export interface AttributionShot {
  readonly launch: Launch;
  readonly clubSpeed: number | null;
  readonly carry: number;
  readonly round: number | null;
}

/** Which parts a pair can be split into, and how a coalition's mean launch is put together. */
export interface AttributionPlan {
  readonly parts: readonly PartId[];
  /** Parts that cannot play because nothing about them varied in any shot. */
  readonly constant: readonly PartId[];
}

const column = {
  clubSpeed: 0,
  ballSpeed: 1,
  launchAngle: 2,
  spinRate: 3,
  spinAxis: 4,
  direction: 5,
  carry: 6,
};

/** A shot as a row of columns; club speed 0 where it was not read. */
export function rowOf({ launch, clubSpeed, carry }: AttributionShot): readonly number[] {
  const { ballSpeed, launchAngle, spinRate, spinAxis, launchDirection } = launch;
  return [clubSpeed ?? 0, ballSpeed, launchAngle, spinRate, spinAxis, launchDirection, carry];
}

/** Ball speed is split into club speed and smash factor where every shot has a club speed and it varies. */
export function attributionPlan(shots: readonly AttributionShot[]): AttributionPlan {
  const varies = (of: (shot: AttributionShot) => number | null): boolean =>
    new Set(shots.map(of)).size > 1 && shots.every((shot) => of(shot) !== null);
  const split = varies(({ clubSpeed }) => clubSpeed);
  const speed: readonly PartId[] = split ? ['club-speed', 'smash'] : ['ball-speed'];
  const speedVaries = split || varies(({ launch }) => launch.ballSpeed);
  const candidates: readonly (readonly [readonly PartId[], boolean])[] = [
    [speed, speedVaries],
    [['launch-angle'], varies(({ launch }) => launch.launchAngle)],
    [['spin-rate'], varies(({ launch }) => launch.spinRate)],
    [
      ['direction'],
      varies(({ launch }) => launch.launchDirection) || varies(({ launch }) => launch.spinAxis),
    ],
  ];
  return {
    parts: candidates.filter(([, played]) => played).flatMap(([parts]) => parts),
    constant: candidates.filter(([, played]) => !played).flatMap(([parts]) => parts),
  };
}

/** Gap in the carry that was read, a minus b, metres. */
export function carryGap({ a, b }: MeanPair): number {
  return (a[column.carry] ?? 0) - (b[column.carry] ?? 0);
}

/** Gap in mean spin, a minus b, rpm. */
export function spinGap({ a, b }: MeanPair): number {
  return (a[column.spinRate] ?? 0) - (b[column.spinRate] ?? 0);
}

/**
 * Mean launches of all coalitions of a pair, written one after another into `out` as `MeanCarry` takes them: bit i of the coalition says that part i is a's, else b's. The smash factor is the
 * ratio of the means, so that club speed times smash factor is the mean ball speed.
 */
export function coalitionLaunches(plan: AttributionPlan): (pair: MeanPair, out: Float64Array) => void {
  const bit = (id: PartId): number => {
    const at = plan.parts.indexOf(id);
    return at < 0 ? 0 : 1 << at;
  };
  const club = bit('club-speed');
  const smash = bit('smash');
  const ball = bit('ball-speed');
  const angle = bit('launch-angle');
  const spin = bit('spin-rate');
  const direction = bit('direction');
  const coalitions = 1 << plan.parts.length;
  return ({ a, b }, out) => {
    const clubA = a[column.clubSpeed] ?? 0;
    const clubB = b[column.clubSpeed] ?? 0;
    const ballA = a[column.ballSpeed] ?? 0;
    const ballB = b[column.ballSpeed] ?? 0;
    const turnA = ((a[column.direction] ?? 0) * Math.PI) / 180;
    const turnB = ((b[column.direction] ?? 0) * Math.PI) / 180;
    const cosineA = Math.cos(turnA);
    const sineA = Math.sin(turnA);
    const cosineB = Math.cos(turnB);
    const sineB = Math.sin(turnB);
    for (let set = 0; set < coalitions; set++) {
      const at = set * meanLaunchSize;
      out[at] =
        club === 0
          ? (set & ball) !== 0
            ? ballA
            : ballB
          : ((set & club) !== 0 ? clubA : clubB) * ((set & smash) !== 0 ? ballA / clubA : ballB / clubB);
      out[at + 1] = ((set & angle) !== 0 ? a : b)[column.launchAngle] ?? 0;
      out[at + 2] = ((set & spin) !== 0 ? a : b)[column.spinRate] ?? 0;
      const turnedA = (set & direction) !== 0;
      out[at + 3] = (turnedA ? a : b)[column.spinAxis] ?? 0;
      out[at + 4] = turnedA ? cosineA : cosineB;
      out[at + 5] = turnedA ? sineA : sineB;
    }
  };
}
