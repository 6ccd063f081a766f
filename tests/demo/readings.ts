import { flown, type ReadLaunch } from './flown.ts';

/** An invented swing: the speed of the club beside the launch. */
export interface Swing extends ReadLaunch {
  readonly clubSpeedMph: number;
}

/** How exactly the monitor reads where a ball came down: standard deviations, yd. */
export interface ReadingError {
  readonly carryYd: number;
  readonly sideYd: number;
}

/** Columns of `readingsOf`, as a file would head them. */
export const readingHeadings = [
  'Club Speed (mph)',
  'Ball Speed (mph)',
  'Launch Angle (deg)',
  'Launch Direction (deg)',
  'Spin Rate (rpm)',
  'Spin Axis (deg)',
  'Carry (yd)',
  'Side (yd)',
] as const;

/** What a monitor would read of a swing, cell by cell. */
export function readingsOf(swing: Swing, error: ReadingError, gauss: () => number): string[] {
  const { carryYd, sideYd } = flown(swing);
  return [
    swing.clubSpeedMph.toFixed(1),
    swing.ballSpeedMph.toFixed(1),
    swing.launchDeg.toFixed(1),
    swing.directionDeg.toFixed(1),
    swing.spinRpm.toFixed(0),
    swing.axisDeg.toFixed(1),
    (carryYd + error.carryYd * gauss()).toFixed(1),
    (sideYd + error.sideYd * gauss()).toFixed(1),
  ];
}
