/**
 * Time of one whole analysis: one golfer, four contenders by twelve shots in rounds, eight metrics (carry primary),
 * one shot left out. Run by hand:
 *
 *   node tests/bench/findings.ts
 *
 * Asked of the statistics: under 50 ms once warm, aim 30. Where launch and spin were read, flights are worked out
 * as well, for prices of the swing and for where the yards come from; they are timed apart.
 */
import { analyse } from '../../src/findings/analyse.ts';
import { seededRandom, shuffled } from '../../src/stats/random.ts';
import { toCanonical } from '../../src/trade/units.ts';
import { inputFor, yd, type Swing } from '../findings/sessions.ts';

const contenders = ['a', 'b', 'c', 'd'];
const mph = (speed: number): number => toCanonical(speed, 'mph');

function session(seed: number, launchRead: boolean): Swing[] {
  const random = seededRandom(`findings ${seed}`);
  const around = (mean: number, sd: number): number => mean + sd * random.normal();
  return Array.from({ length: 12 }, () => shuffled(contenders, random)).flatMap((round, index) =>
    round.map((contender): Swing => {
      const club = around(96, 1);
      const ball = 1.46 * club + around(2 * contenders.indexOf(contender), 1);
      return {
        contender,
        round: index + 1,
        leftOut: index === 5 && contender === 'b',
        values: {
          carry: yd(1.65 * ball + around(0, 5)),
          side: yd(around(0, 12)),
          ...(launchRead
            ? {
                club_speed: mph(club),
                ball_speed: mph(ball),
                smash: ball / club,
                launch_angle: around(12, 1),
                launch_direction: around(0, 1.5),
                spin_rate: around(2600, 250),
              }
            : {
                total: yd(1.75 * ball + around(0, 8)),
                curve: yd(around(0, 8)),
                apex: yd(around(30, 3)),
                descent_angle: around(38, 3),
                hang_time: around(6, 0.3),
                dynamic_loft: around(13, 1),
              }),
        },
      };
    }),
  );
}

const print = (time: number | undefined): string => `${(time ?? Number.NaN).toFixed(1)} ms`;

for (const launchRead of [false, true]) {
  const inputs = Array.from({ length: 40 }, (_, seed) => inputFor(session(seed, launchRead)));
  const times = inputs.map((input) => {
    // Processor time: the machine may have other work to do.
    const start = process.cpuUsage();
    analyse(input, []);
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1000;
  });
  const warm = times.slice(20).toSorted((x, y) => x - y);
  const middle = warm[Math.floor(warm.length / 2)];
  console.log(
    `${launchRead ? 'with flights' : 'statistics'}: first ${print(times[0])}, warm median ${print(middle)}, slowest warm ${print(warm.at(-1))}`,
  );
}
