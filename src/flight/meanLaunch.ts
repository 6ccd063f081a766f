import { compensatedSumOf } from '../stats/compensatedSum.ts';
import { requireAtLeast } from '../stats/statisticsError.ts';
import type { Launch } from './launch.ts';

/** Mean of each quantity. @throws StatisticsError `sample-too-small` without launches */
export function meanLaunch(launches: readonly Launch[]): Launch {
  requireAtLeast('meanLaunch', 'values', launches.length, 1);
  const mean = (key: keyof Launch): number =>
    compensatedSumOf(launches, (launch) => launch[key]) / launches.length;
  return {
    ballSpeed: mean('ballSpeed'),
    launchAngle: mean('launchAngle'),
    launchDirection: mean('launchDirection'),
    spinRate: mean('spinRate'),
    spinAxis: mean('spinAxis'),
  };
}
