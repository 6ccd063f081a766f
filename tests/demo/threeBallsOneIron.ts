import { writeFileSync } from 'node:fs';
import { normal, shuffled, uniform } from './random.ts';

/**
 * Invents the shots of the demo report `three-balls-one-iron`: one golfer, three balls, twelve rounds in random order.
 * Run by hand: `node tests/demo/threeBallsOneIron.ts`. Nothing here was measured.
 */
const next = uniform(20260418);
const gauss = normal(next);

/** Ball speed per club speed and spin of each invented ball with this iron. */
const balls = [
  { name: 'Heron', smash: 1.385, spin: 5150 },
  { name: 'Plover', smash: 1.37, spin: 5450 },
  { name: 'Wren', smash: 1.325, spin: 5050 },
];

const heading =
  'Shot,Round,Ball,Club Speed (mph),Ball Speed (mph),Launch Angle (deg),Launch Direction (deg),Spin Rate (rpm),Carry (yd),Side (yd)';
const rows: string[] = [];
let shot = 0;
for (let round = 1; round <= 12; round++) {
  for (const ball of shuffled(balls, next)) {
    shot += 1;
    const clubSpeed = 84 + gauss();
    const ballSpeed = clubSpeed * (ball.smash + 0.014 * gauss());
    const launch = 14.2 + 1.1 * gauss();
    const direction = 0.4 + 1.6 * gauss();
    const spin = ball.spin + 330 * gauss();
    // A straight line near a mid-iron's usual flight; a scatter for what the columns do not hold.
    const carry =
      171 + 1.75 * (ballSpeed - 115.5) - 0.004 * (spin - 5200) + 1.1 * (launch - 14.2) + 1.6 * gauss();
    const side = carry * Math.tan((direction * Math.PI) / 180) + 4.5 * gauss();
    rows.push(
      [
        shot,
        round,
        ball.name,
        clubSpeed.toFixed(1),
        ballSpeed.toFixed(1),
        launch.toFixed(1),
        direction.toFixed(1),
        spin.toFixed(0),
        carry.toFixed(1),
        side.toFixed(1),
      ].join(','),
    );
  }
}
writeFileSync('content/reports/three-balls-one-iron/shots.csv', `${[heading, ...rows].join('\n')}\n`);
