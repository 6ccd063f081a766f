import { writeSession } from './csv.ts';
import { normal, shuffled, uniform } from './random.ts';
import { readingHeadings, readingsOf } from './readings.ts';

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
    const swing = {
      clubSpeedMph: clubSpeed,
      ballSpeedMph: ballSpeed,
      launchDeg: launch,
      directionDeg: direction,
      spinRpm: spin,
      axisDeg: axis,
    };
    rows.push([
      String(rows.length + 1),
      String(round),
      ball.name,
      ...readingsOf(swing, { carryYd: 1.2, sideYd: 1.2 }, gauss),
    ]);
  }
}
writeSession('three-balls-one-iron', ['Shot', 'Round', 'Ball', ...readingHeadings], rows);
