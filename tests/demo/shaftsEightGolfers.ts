import { writeSession } from './csv.ts';
import { normal, shuffled, uniform } from './random.ts';
import { readingHeadings, readingsOf } from './readings.ts';

/**
 * Invents the shots of `three-shafts-eight-golfers`: one driver head with three shafts, eight golfers of different
 * speed, six rounds each in an order drawn by lot. Run by hand: `node tests/demo/shaftsEightGolfers.ts`.
 * Nothing here was measured.
 */
const next = uniform(20260524);
const gauss = normal(next);
const shafts = [
  { name: 'Rowan', ballSpeed: 0 },
  { name: 'Sorrel', ballSpeed: 3.4 },
  { name: 'Tansy', ballSpeed: 0.7 },
];

const rows: string[][] = [];
for (let golfer = 1; golfer <= 8; golfer++) {
  const usual = 84 + 3.4 * golfer + 1.5 * gauss();
  const liking = shafts.map(() => 0.9 * gauss());
  let shot = 0;
  for (let turn = 1; turn <= 6; turn++) {
    for (const shaft of shuffled(shafts, next)) {
      shot += 1;
      const clubSpeed = usual + 1.1 * gauss();
      const gain = shaft.ballSpeed + (liking[shafts.indexOf(shaft)] ?? 0);
      const ballSpeed = clubSpeed * (1.41 + 0.014 * gauss()) + gain;
      const launch = 13 + 1.3 * gauss();
      const direction = 0.5 + 1.9 * gauss();
      const spin = 2750 + 260 * gauss();
      const axis = 1 + 4 * gauss();
      const swing = {
        clubSpeedMph: clubSpeed,
        ballSpeedMph: ballSpeed,
        launchDeg: launch,
        directionDeg: direction,
        spinRpm: spin,
        axisDeg: axis,
      };
      rows.push([
        `G${golfer}`,
        String(shot),
        String(turn),
        shaft.name,
        ...readingsOf(swing, { carryYd: 1.2, sideYd: 1 }, gauss),
      ]);
    }
  }
}
writeSession('three-shafts-eight-golfers', ['Golfer', 'Shot', 'Round', 'Shaft', ...readingHeadings], rows);
