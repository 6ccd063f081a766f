import { writeSession } from './csv.ts';
import { normal, uniform } from './random.ts';
import { readingHeadings, readingsOf } from './readings.ts';

/**
 * Invents the shots of `three-irons-after-work`: three 7-irons in visits of three shots by a golfer who did not warm up
 * and swings faster from visit to visit; the third iron came back from another customer only after a third of the
 * session. Run by hand: `node tests/demo/ironsAfterWork.ts`. Nothing here was measured.
 */
const gauss = normal(uniform(260326014));
const irons = {
  Nettle: { smash: 1.36, spin: 6300 },
  Teasel: { smash: 1.325, spin: 6500 },
  Yarrow: { smash: 1.365, spin: 6250 },
};
const visits = [
  'Nettle',
  'Teasel',
  'Nettle',
  'Teasel',
  'Yarrow',
  'Nettle',
  'Teasel',
  'Yarrow',
  'Nettle',
  'Yarrow',
  'Teasel',
  'Yarrow',
] as const;

const rows: string[][] = [];
for (const [visit, name] of visits.entries()) {
  const iron = irons[name];
  const spell = 0.9 * gauss();
  for (let hit = 1; hit <= 3; hit++) {
    const clubSpeed = 77 + 0.13 * rows.length + spell + 0.7 * gauss();
    const ballSpeed = clubSpeed * (iron.smash + 0.01 * gauss());
    const launch = 17 + 0.8 * gauss();
    const direction = -0.4 + 1.5 * gauss();
    const spin = iron.spin + 280 * gauss();
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
      String(visit + 1),
      name,
      ...readingsOf(swing, { carryYd: 0.9, sideYd: 0.8 }, gauss),
    ]);
  }
}
writeSession('three-irons-after-work', ['Shot', 'Visit', 'Head', ...readingHeadings], rows);
