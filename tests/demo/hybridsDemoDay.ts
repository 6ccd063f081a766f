import { writeSession } from './csv.ts';
import { normal, uniform } from './random.ts';
import { readingHeadings, readingsOf } from './readings.ts';

/**
 * Invents the shots of `hybrids-at-a-demo-day`: three hybrids whose shots were saved in a file for each club, so that
 * their order is lost. One thin shot is far from all others, and rain ended the third club after four. Run by hand:
 * `node tests/demo/hybridsDemoDay.ts`. Nothing here was measured.
 */
const gauss = normal(uniform(260509022));
const hybrids = [
  { name: 'Juniper 4', file: 'juniper.csv', shots: 11, smash: 1.427, thin: 0 },
  { name: 'Larch 4', file: 'larch.csv', shots: 10, smash: 1.405, thin: 6 },
  { name: 'Mallow 4', file: 'mallow.csv', shots: 4, smash: 1.42, thin: 0 },
];

for (const hybrid of hybrids) {
  const rows: string[][] = [];
  for (let shot = 1; shot <= hybrid.shots; shot++) {
    const thin = shot === hybrid.thin;
    const clubSpeed = 83 + 0.9 * gauss();
    const ballSpeed = clubSpeed * (hybrid.smash + 0.011 * gauss() - (thin ? 0.05 : 0));
    const launch = 13.8 + 0.9 * gauss() - (thin ? 2.5 : 0);
    const direction = 0.3 + 1.6 * gauss();
    const spin = 4500 + 280 * gauss() - (thin ? 500 : 0);
    const axis = 1 + 3 * gauss();
    const swing = {
      clubSpeedMph: clubSpeed,
      ballSpeedMph: ballSpeed,
      launchDeg: launch,
      directionDeg: direction,
      spinRpm: spin,
      axisDeg: axis,
    };
    rows.push([hybrid.name, ...readingsOf(swing, { carryYd: 1, sideYd: 1 }, gauss).slice(1)]);
  }
  writeSession('hybrids-at-a-demo-day', ['Club', ...readingHeadings.slice(1)], rows, hybrid.file);
}
