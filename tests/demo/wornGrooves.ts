import { writeSession } from './csv.ts';
import { flown } from './flown.ts';
import { normal, uniform } from './random.ts';

/**
 * Invents the shots of `worn-grooves-wet-rough`: a wedge with fresh, used and worn grooves, hit one after another, as
 * hasty tests often are. Run by hand: `node tests/demo/wornGrooves.ts`. Nothing here was measured.
 */
const gauss = normal(uniform(20260307));
const wedges = [
  { name: 'Fresh', spin: 7300, launch: 27.5 },
  { name: 'Used', spin: 6650, launch: 28.6 },
  { name: 'Worn', spin: 4650, launch: 31.2 },
];

const rows: string[][] = [];
for (const wedge of wedges) {
  for (let hit = 1; hit <= 9; hit++) {
    const clubSpeed = 74 + 1.1 * gauss();
    const ballSpeed = clubSpeed * (1.12 + 0.015 * gauss());
    const launch = wedge.launch + 1.2 * gauss();
    const direction = 0.3 + 1.4 * gauss();
    const spin = wedge.spin + 560 * gauss();
    const axis = 2 * gauss();
    const { carryYd, sideYd } = flown({
      ballSpeedMph: ballSpeed,
      launchDeg: launch,
      directionDeg: direction,
      spinRpm: spin,
      axisDeg: axis,
    });
    rows.push([
      String(rows.length + 1),
      wedge.name,
      clubSpeed.toFixed(1),
      ballSpeed.toFixed(1),
      launch.toFixed(1),
      direction.toFixed(1),
      spin.toFixed(0),
      axis.toFixed(1),
      (carryYd + 0.8 * gauss()).toFixed(1),
      (sideYd + 0.6 * gauss()).toFixed(1),
    ]);
  }
}
writeSession(
  'worn-grooves-wet-rough',
  [
    'Shot',
    'Grooves',
    'Club Speed (mph)',
    'Ball Speed (mph)',
    'Launch Angle (deg)',
    'Launch Direction (deg)',
    'Spin Rate (rpm)',
    'Spin Axis (deg)',
    'Carry (yd)',
    'Side (yd)',
  ],
  rows,
);
