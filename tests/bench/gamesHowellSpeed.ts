/** Ten thousand Games-Howell analyses of 4 x 12 shots, timed. Run by hand: node tests/bench/gamesHowellSpeed.ts */
import { gamesHowell } from '../../src/stats/gamesHowell.ts';
import { moments } from '../../src/stats/moments.ts';
import { seededRandom } from '../../src/stats/random.ts';
import { normalShots } from './simulation/shots.ts';

const random = seededRandom('speed');
const sessions = Array.from({ length: 10_000 }, () =>
  Array.from({ length: 4 }, () => normalShots(12, 230, 8, random)),
);
const started = process.cpuUsage();
let gaps = 0;
for (const groups of sessions)
  gaps += gamesHowell(
    groups.map((group) => moments(group)),
    0.95,
  ).length;
const { user, system } = process.cpuUsage(started);
console.log(`${gaps} gaps in ${((user + system) / 1e6).toFixed(2)} s of processor time`);
