import { plannedOrder } from '../../src/intake/plan/plannedOrder.ts';
import { writeSession } from './csv.ts';
import { normal, uniform } from './random.ts';
import { readingHeadings, readingsOf } from './readings.ts';

/**
 * Invents the shots of `inch-off-the-driver`: one driver head on three lengths of shaft, twenty turns in an order drawn
 * beforehand from the seed that its plan names, after ten warm-up swings with another club. The golfer swings a longer
 * shaft faster and sprays it wider, and strikes three balls off the heel with the middle one. Run by hand:
 * `node tests/demo/driverLengths.ts`. Nothing here was measured.
 */
const gauss = normal(uniform(20260711));
const lengths = [
  { id: 'long', name: 'Long', clubSpeed: 97.4, smash: 1.442, spray: 1.4 },
  { id: 'middle', name: 'Middle', clubSpeed: 96.2, smash: 1.445, spray: 1 },
  { id: 'short', name: 'Short', clubSpeed: 95.2, smash: 1.443, spray: 0.6 },
];
/** Rounds in which the golfer finds the heel, all with the middle length. */
const heelRounds = [5, 11, 16];
const order = plannedOrder({
  contenders: lengths.map(({ id }) => id),
  shotsEach: 20,
  turns: { kind: 'rotation' },
  seed: 'driver-lengths',
});
if (order === null) throw new Error('The plan of the driver lengths leaves no order.');

interface Swing {
  readonly clubSpeed: number;
  readonly smash: number;
  readonly launch: number;
  readonly spin: number;
  /** How far balls start off line and curve, beside the golfer's usual. */
  readonly spray: number;
}

function rowOf(
  shot: number,
  what: readonly string[],
  { clubSpeed, smash, launch, spin, spray }: Swing,
): string[] {
  const ballSpeed = clubSpeed * smash;
  const directionDeg = 0.6 + 2.1 * spray * gauss();
  const axisDeg = 1 + 3.5 * spray * gauss();
  const read = { clubSpeedMph: clubSpeed, ballSpeedMph: ballSpeed, launchDeg: launch, spinRpm: spin };
  const [club = '', ball = '', ...rest] = readingsOf(
    { ...read, directionDeg, axisDeg },
    { carryYd: 1, sideYd: 1 },
    gauss,
  );
  return [String(shot), ...what, club, ball, (Number(ball) / Number(club)).toFixed(3), ...rest];
}

const warmUps = Array.from({ length: 10 }, (_, index) =>
  rowOf(index + 1, ['', 'Own driver', 'yes'], {
    clubSpeed: 92 + 0.4 * index + gauss(),
    smash: 1.43 + 0.015 * gauss(),
    launch: 12.5 + 1.3 * gauss(),
    spin: 2700 + 250 * gauss(),
    spray: 1,
  }),
);
const tested = order.flatMap(({ shot, round, contender }) => {
  const length = lengths.find(({ id }) => id === contender);
  if (length === undefined) return [];
  const heel = contender === 'middle' && heelRounds.includes(round);
  return [
    rowOf(warmUps.length + shot, [String(round), length.name, 'no'], {
      clubSpeed: length.clubSpeed + 1.1 * gauss(),
      smash: length.smash + 0.012 * gauss() - (heel ? 0.15 : 0),
      launch: 12.8 + 1.1 * gauss() - (heel ? 2 : 0),
      spin: 2650 + 230 * gauss() + (heel ? 700 : 0),
      spray: length.spray,
    }),
  ];
});
writeSession(
  'inch-off-the-driver',
  [
    'Shot',
    'Round',
    'Club',
    'Warm-up',
    ...readingHeadings.slice(0, 2),
    'Smash Factor',
    ...readingHeadings.slice(2),
  ],
  [...warmUps, ...tested],
);
