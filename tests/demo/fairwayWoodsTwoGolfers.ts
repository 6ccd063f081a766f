import { writeSession } from './csv.ts';
import { normal, uniform } from './random.ts';
import { readingHeadings, readingsOf } from './readings.ts';

/**
 * Invents the shots of `fairway-woods-two-golfers`: three fairway woods, two golfers who
 * share one bay, so that each has only two spells of five shots with every wood. Run by hand:
 * `node tests/demo/fairwayWoodsTwoGolfers.ts`. Nothing here was measured.
 */
const gauss = normal(uniform(260208003));
const woods = [
  { name: 'Bracken', smash: 1.45 },
  { name: 'Clover', smash: 1.415 },
  { name: 'Fennel', smash: 1.44 },
];
const golfers = [
  { name: 'One', clubSpeed: 86, direction: -0.8, axis: -2 },
  { name: 'Two', clubSpeed: 93, direction: 0.5, axis: 2 },
];
const visits = [
  [0, 1, 2],
  [1, 0, 2],
];

const shots = new Map<string, number>();
const rows: string[][] = [];
for (const [visit, order] of visits.entries()) {
  for (const wood of order.flatMap((index) => woods[index] ?? [])) {
    for (const golfer of golfers) {
      const spell = 0.7 * gauss();
      for (let hit = 1; hit <= 5; hit++) {
        const shot = (shots.get(golfer.name) ?? 0) + 1;
        shots.set(golfer.name, shot);
        const clubSpeed = golfer.clubSpeed + spell + 0.9 * gauss();
        const ballSpeed = clubSpeed * (wood.smash + 0.013 * gauss());
        const launch = 12.2 + gauss();
        const direction = golfer.direction + 1.7 * gauss();
        const spin = 3700 + 300 * gauss();
        const axis = golfer.axis + 3 * gauss();
        const swing = {
          clubSpeedMph: clubSpeed,
          ballSpeedMph: ballSpeed,
          launchDeg: launch,
          directionDeg: direction,
          spinRpm: spin,
          axisDeg: axis,
        };
        rows.push([
          golfer.name,
          String(shot),
          String(visit + 1),
          wood.name,
          ...readingsOf(swing, { carryYd: 1.2, sideYd: 1 }, gauss),
        ]);
      }
    }
  }
}
writeSession('fairway-woods-two-golfers', ['Golfer', 'Shot', 'Visit', 'Club', ...readingHeadings], rows);
