import { at } from '../stats/at.ts';
import { onceEach } from '../stats/onceEach.ts';
import type { Launch } from './launch.ts';
import type { MeanPair } from './meanDraws.ts';

/** What a gap in carry is split over. */
export type PartId = 'ball-speed' | 'club-speed' | 'smash' | 'launch-angle' | 'spin-rate' | 'direction';

/** A shot to account for: canonical units, the carry as it was read. */
export interface AttributionShot {
  readonly launch: Launch;
  readonly clubSpeed: number | null;
  readonly carry: number;
  readonly round: number | null;
}

/** Which parts a pair can be split into. */
export interface AttributionPlan {
  readonly parts: readonly PartId[];
  /** Parts that cannot play because nothing about them varied in any shot. */
  readonly constant: readonly PartId[];
}

/** Where a shot's or a mean's row holds what. */
export const column = {
  clubSpeed: 0,
  ballSpeed: 1,
  launchAngle: 2,
  spinRate: 3,
  spinAxis: 4,
  direction: 5,
  carry: 6,
};

/** Shots as rows of columns. */
export const rowsOf = onceEach((shots: readonly AttributionShot[]) => shots.map(rowOf));

/** A shot as a row of columns; club speed 0 where it was not read. */
function rowOf({ launch, clubSpeed, carry }: AttributionShot): readonly number[] {
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
  return at(a, column.carry) - at(b, column.carry);
}

/** Gap in mean spin, a minus b, rpm. */
export function spinGap({ a, b }: MeanPair): number {
  return at(a, column.spinRate) - at(b, column.spinRate);
}
