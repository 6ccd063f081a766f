import { flown } from '../demo/flown.ts';
import { normal, uniform } from '../demo/random.ts';

/** A club as it was swung and struck; what is not said is usual. */
export interface Club {
  readonly name: string;
  readonly clubSpeed?: number;
  readonly smash?: number;
  readonly spin?: number;
  /** Yards added to the carry that the launch gives. */
  readonly extra?: number;
}

const read = (value: number, decimals = 1): string => value.toFixed(decimals);

/** Twelve turns of invented drives, flown by our own model, so that launches and carries hang together. */
export function drives(
  clubs: readonly Club[],
  options: { readonly scale?: number; readonly scatter?: number } = {},
): string {
  const { scale = 1, scatter = 0.5 } = options;
  const gauss = normal(uniform(7));
  const rows: string[] = [
    'Shot,Head,Club Speed (mph),Ball Speed (mph),Launch Angle (deg),Launch Direction (deg),Spin Rate (rpm),Spin Axis (deg),Carry (yd),Side (yd)',
  ];
  for (let turn = 0; turn < 12; turn++) {
    for (const { name, clubSpeed = 98, smash = 1.42, spin = 2700, extra = 0 } of clubs) {
      const club = clubSpeed + 0.6 * gauss();
      const ball = club * (smash + 0.008 * gauss());
      const launch = {
        launchDeg: 13 + 0.8 * gauss(),
        directionDeg: gauss(),
        spinRpm: spin + 150 * gauss(),
        axisDeg: 2 * gauss(),
      };
      const { carryYd, sideYd } = flown({ ballSpeedMph: ball, ...launch });
      rows.push(
        [
          rows.length,
          name,
          read(club),
          read(ball),
          read(launch.launchDeg),
          read(launch.directionDeg),
          read(launch.spinRpm, 0),
          read(launch.axisDeg),
          read(carryYd * scale + extra + scatter * gauss()),
          read(sideYd),
        ].join(','),
      );
    }
  }
  return `${rows.join('\n')}\n`;
}
