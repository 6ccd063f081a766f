import { sideOf, writeSession } from './csv.ts';
import { normal, uniform } from './random.ts';

/**
 * Invents the shots of `two-clubs-for-200`: a hybrid and a fairway wood in turn, seven shots each, one of them a thin
 * strike after a ball fell off its tee. Run by hand: `node tests/demo/twoLongClubs.ts`. Nothing here was measured.
 */
const gauss = normal(uniform(20260615));
const clubs = [
  { name: 'Hybrid', carry: 178, launch: 13.5, descent: 44 },
  { name: 'Fairway wood', carry: 181, launch: 12, descent: 39.5 },
];

const rows: string[][] = [];
for (let turn = 1; turn <= 7; turn++) {
  for (const club of clubs) {
    const shot = rows.length + 1;
    const thin = shot === 9;
    const clubSpeed = 83.5 + 0.9 * gauss();
    const ballSpeed = clubSpeed * ((thin ? 1.25 : 1.44) + 0.014 * gauss());
    const launch = club.launch + 1.1 * gauss() - (thin ? 5 : 0);
    const carry = club.carry + 1.7 * (ballSpeed - 120.2) + 2.8 * gauss();
    rows.push([
      String(shot),
      String(turn),
      club.name,
      clubSpeed.toFixed(1),
      ballSpeed.toFixed(1),
      launch.toFixed(1),
      (3900 + 330 * gauss()).toFixed(0),
      carry.toFixed(1),
      sideOf(carry, 0.2 + 1.7 * gauss(), 3 * gauss()).toFixed(1),
      (club.descent + 1.6 * gauss()).toFixed(1),
    ]);
  }
}
writeSession(
  'two-clubs-for-200',
  [
    'Shot',
    'Round',
    'Club',
    'Club Speed (mph)',
    'Ball Speed (mph)',
    'Launch Angle (deg)',
    'Spin Rate (rpm)',
    'Carry (yd)',
    'Side (yd)',
    'Descent Angle (deg)',
  ],
  rows,
);
