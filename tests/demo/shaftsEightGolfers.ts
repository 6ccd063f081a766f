import { sideOf, writeSession } from './csv.ts';
import { normal, shuffled, uniform } from './random.ts';

/**
 * Invents the shots of `three-shafts-eight-golfers`: one driver head with three shafts, eight golfers of different
 * speed, six turns each in an order drawn by lot. Run by hand: `node tests/demo/shaftsEightGolfers.ts`.
 * Nothing here was measured.
 */
const next = uniform(20260524);
const gauss = normal(next);
const shafts = [
  { name: 'Rowan', gain: 0 },
  { name: 'Sorrel', gain: 5.5 },
  { name: 'Tansy', gain: 1.5 },
];

const rows: string[][] = [];
for (let golfer = 1; golfer <= 8; golfer++) {
  const usual = 84 + 3.4 * golfer + 1.5 * gauss();
  const liking = shafts.map(() => 2 * gauss());
  let shot = 0;
  for (let turn = 1; turn <= 6; turn++) {
    for (const shaft of shuffled(shafts, next)) {
      shot += 1;
      const clubSpeed = usual + 1.1 * gauss();
      const ballSpeed = clubSpeed * (1.45 + 0.018 * gauss());
      const launch = 13 + 1.3 * gauss();
      const spin = 2750 + 260 * gauss();
      const carry =
        1.6 * ballSpeed +
        shaft.gain +
        (liking[shafts.indexOf(shaft)] ?? 0) +
        0.6 * (launch - 13) +
        4.5 * gauss() -
        12;
      const direction = 0.5 + 1.9 * gauss();
      rows.push([
        `G${golfer}`,
        String(shot),
        String(turn),
        shaft.name,
        clubSpeed.toFixed(1),
        ballSpeed.toFixed(1),
        launch.toFixed(1),
        spin.toFixed(0),
        carry.toFixed(1),
        sideOf(carry, direction, 6 * gauss()).toFixed(1),
      ]);
    }
  }
}
writeSession(
  'three-shafts-eight-golfers',
  [
    'Golfer',
    'Shot',
    'Round',
    'Shaft',
    'Club Speed (mph)',
    'Ball Speed (mph)',
    'Launch Angle (deg)',
    'Spin Rate (rpm)',
    'Carry (yd)',
    'Side (yd)',
  ],
  rows,
);
