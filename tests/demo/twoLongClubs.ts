import { writeSession } from './csv.ts';
import { flown } from './flown.ts';
import { normal, uniform } from './random.ts';
import { readingHeadings, readingsOf } from './readings.ts';

/**
 * Invents the shots of `two-clubs-for-200`: a hybrid and a fairway wood in turn, seven shots each, one of them a thin
 * strike after a ball fell off its tee. Run by hand: `node tests/demo/twoLongClubs.ts`. Nothing here was measured.
 */
const gauss = normal(uniform(20260615));
const clubs = [
  { name: 'Hybrid', smash: 1.42, launch: 14.5, spin: 4700 },
  { name: 'Fairway wood', smash: 1.44, launch: 12, spin: 3500 },
];

const rows: string[][] = [];
for (let turn = 1; turn <= 7; turn++) {
  for (const club of clubs) {
    const shot = rows.length + 1;
    const thin = shot === 9;
    const clubSpeed = 84.5 + 0.9 * gauss();
    const ballSpeed = clubSpeed * ((thin ? 1.25 : club.smash) + 0.014 * gauss());
    const launch = club.launch + 1.1 * gauss() - (thin ? 5 : 0);
    const direction = 0.2 + 1.7 * gauss();
    const spin = club.spin + 330 * gauss();
    const axis = 3 * gauss();
    const swing = {
      clubSpeedMph: clubSpeed,
      ballSpeedMph: ballSpeed,
      launchDeg: launch,
      directionDeg: direction,
      spinRpm: spin,
      axisDeg: axis,
    };
    rows.push([
      String(shot),
      String(turn),
      club.name,
      ...readingsOf(swing, { carryYd: 1, sideYd: 1 }, gauss),
      (flown(swing).descentDeg + 0.4 * gauss()).toFixed(1),
    ]);
  }
}
writeSession('two-clubs-for-200', ['Shot', 'Round', 'Club', ...readingHeadings, 'Descent Angle (deg)'], rows);
