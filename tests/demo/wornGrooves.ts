import { writeSession } from './csv.ts';
import { normal, uniform } from './random.ts';
import { readingHeadings, readingsOf } from './readings.ts';

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
      wedge.name,
      ...readingsOf(swing, { carryYd: 0.8, sideYd: 0.6 }, gauss),
    ]);
  }
}
writeSession('worn-grooves-wet-rough', ['Shot', 'Grooves', ...readingHeadings], rows);
