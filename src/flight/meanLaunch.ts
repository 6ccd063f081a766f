import { meanOf } from '../stats/moments.ts';
import type { Launch } from './launch.ts';

/** Mean of each quantity. @throws StatisticsError `sample-too-small` without launches */
export function meanLaunch(launches: readonly Launch[]): Launch {
  const mean = (key: keyof Launch): number => meanOf(launches.map((launch) => launch[key]));
  return {
    ballSpeed: mean('ballSpeed'),
    launchAngle: mean('launchAngle'),
    launchDirection: mean('launchDirection'),
    spinRate: mean('spinRate'),
    spinAxis: mean('spinAxis'),
  };
}
