import { sideOf, writeSession } from './csv.ts';
import { normal, shuffled, uniform } from './random.ts';

/**
 * Invents the shots of `range-ball-mid-iron`: a range ball and a new ball with a 7-iron outdoors, ten visits of two
 * shots each. Metric units. Run by hand: `node tests/demo/rangeBall.ts`. Nothing here was measured.
 */
const next = uniform(20260701);
const gauss = normal(next);
const balls = [
  { name: 'Range ball', speed: 0, carry: 0 },
  { name: 'New ball', speed: 0.35, carry: 1.1 },
];

const rows: string[][] = [];
for (let visit = 1; visit <= 10; visit++) {
  for (const ball of shuffled(balls, next)) {
    for (let hit = 1; hit <= 2; hit++) {
      const clubSpeed = 35.4 + 0.25 * gauss();
      const ballSpeed = clubSpeed * (1.33 + 0.006 * gauss()) + ball.speed;
      const carry = 139 + ball.carry + 2.6 * (ballSpeed - 47.1 - ball.speed) + 1.1 * gauss();
      rows.push([
        String(rows.length + 1),
        ball.name,
        clubSpeed.toFixed(1),
        ballSpeed.toFixed(1),
        (17.5 + 0.9 * gauss()).toFixed(1),
        (6400 + 300 * gauss()).toFixed(0),
        carry.toFixed(1),
        sideOf(carry, 1.3 * gauss(), 1.5 * gauss()).toFixed(1),
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
    'Spin Rate (rpm)',
    'Carry (m)',
    'Side (m)',
  ],
  rows,
);
