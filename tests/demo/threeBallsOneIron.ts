import { writeSession } from './csv.ts';
import { flown } from './flown.ts';
import { normal, shuffled, uniform } from './random.ts';

/**
 * Invents the shots of `three-balls-one-iron`: one golfer, three balls, twelve rounds in an order drawn by lot.
 * Run by hand: `node tests/demo/threeBallsOneIron.ts`. Nothing here was measured.
 */
const next = uniform(20260418);
const gauss = normal(next);
const balls = [
  { name: 'Heron', smash: 1.385, spin: 5150 },
  { name: 'Plover', smash: 1.37, spin: 5450 },
  { name: 'Wren', smash: 1.325, spin: 5050 },
];

const rows: string[][] = [];
for (let round = 1; round <= 12; round++) {
  for (const ball of shuffled(balls, next)) {
    const clubSpeed = 84 + gauss();
    const ballSpeed = clubSpeed * (ball.smash + 0.014 * gauss());
    const launch = 14.2 + 1.1 * gauss();
    const direction = 0.4 + 1.6 * gauss();
    const spin = ball.spin + 330 * gauss();
    const axis = 2.5 * gauss();
    const { carryYd, sideYd } = flown({
      ballSpeedMph: ballSpeed,
      launchDeg: launch,
      directionDeg: direction,
      spinRpm: spin,
      axisDeg: axis,
    });
    rows.push([
      String(rows.length + 1),
      String(round),
      ball.name,
      clubSpeed.toFixed(1),
      ballSpeed.toFixed(1),
      launch.toFixed(1),
      direction.toFixed(1),
      spin.toFixed(0),
      axis.toFixed(1),
      (carryYd + 1.2 * gauss()).toFixed(1),
      (sideYd + 1.2 * gauss()).toFixed(1),
    ]);
  }
}
writeSession(
  'three-balls-one-iron',
  [
    'Shot',
    'Round',
    'Ball',
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
