import { fromCanonical, toCanonical } from '../../src/trade/units.ts';
import { writeSession } from './csv.ts';
import { flown } from './flown.ts';
import { normal, shuffled, uniform } from './random.ts';

/**
 * Invents the shots of `range-ball-mid-iron`: a range ball and a new ball with a 7-iron outdoors, ten visits of two
 * shots each. Metric units. Run by hand: `node tests/demo/rangeBall.ts`. Nothing here was measured.
 */
const next = uniform(20260701);
const gauss = normal(next);
const balls = [
  { name: 'Range ball', smash: 1.326 },
  { name: 'New ball', smash: 1.337 },
];
const inMetres = (yards: number): string => toCanonical(yards, 'yd').toFixed(1);
const inMetresPerSecond = (mph: number): string => toCanonical(mph, 'mph').toFixed(1);

const rows: string[][] = [];
for (let visit = 1; visit <= 10; visit++) {
  for (const ball of shuffled(balls, next)) {
    for (let hit = 1; hit <= 2; hit++) {
      const clubSpeed = fromCanonical(35.4 + 0.25 * gauss(), 'mph');
      const ballSpeed = clubSpeed * (ball.smash + 0.006 * gauss());
      const launch = 17.5 + 0.7 * gauss();
      const direction = 1.3 * gauss();
      const spin = 6400 + 260 * gauss();
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
        ball.name,
        inMetresPerSecond(clubSpeed),
        inMetresPerSecond(ballSpeed),
        launch.toFixed(1),
        direction.toFixed(1),
        spin.toFixed(0),
        axis.toFixed(1),
        inMetres(carryYd + 0.9 * gauss()),
        inMetres(sideYd + 0.9 * gauss()),
      ]);
    }
  }
}
writeSession(
  'range-ball-mid-iron',
  [
    'Shot',
    'Ball',
    'Club Speed (m/s)',
    'Ball Speed (m/s)',
    'Launch Angle (deg)',
    'Launch Direction (deg)',
    'Spin Rate (rpm)',
    'Spin Axis (deg)',
    'Carry (m)',
    'Side (m)',
  ],
  rows,
);
