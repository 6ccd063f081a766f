/**
 * Time of one whole analysis, processor time: four contenders by twelve shots of one golfer in rounds, eight metrics
 * (carry primary), one shot left out; and six contenders by forty shots, five each of eight golfers. Run by hand:
 *
 *   node tests/bench/findings.ts
 *
 * Asked for once warm: with flights, for prices of the swing and for where the yards come from, 60 ms or less; eight
 * golfers, 150 ms or less. What else the machine does adds to both: `least` is nearest to an idle one.
 */
import { analyse } from '../../src/findings/analyse.ts';
import { seededRandom, shuffled } from '../../src/stats/random.ts';
import { toCanonical } from '../../src/trade/units.ts';
import { inputFor, yd, type Swing } from '../findings/sessions.ts';

const four = ['a', 'b', 'c', 'd'];
const six = [...four, 'e', 'f'];
const mph = (speed: number): number => toCanonical(speed, 'mph');

interface Kind {
  readonly name: string;
  readonly contenders: readonly string[];
  readonly golfers: number;
  /** Shots of a golfer with each contender. */
  readonly shots: number;
  readonly launchRead: boolean;
}

const kinds: readonly Kind[] = [
  { name: 'statistics', contenders: four, golfers: 1, shots: 12, launchRead: false },
  { name: 'with flights', contenders: four, golfers: 1, shots: 12, launchRead: true },
  { name: 'eight golfers', contenders: six, golfers: 8, shots: 5, launchRead: true },
];

function session(seed: number, { contenders, golfers, shots, launchRead }: Kind): Swing[] {
  const random = seededRandom(`findings ${seed}`);
  const around = (mean: number, sd: number): number => mean + sd * random.normal();
  const rounds = Array.from({ length: golfers }, (_, golfer) => `golfer ${golfer + 1}`).flatMap((hitter) =>
    Array.from({ length: shots }, (_, index) => ({ hitter, index, round: shuffled(contenders, random) })),
  );
  return rounds.flatMap(({ hitter, index, round }) =>
    round.map((contender): Swing => {
      const club = around(96, 1);
      const ball = 1.46 * club + around(2 * contenders.indexOf(contender), 1);
      return {
        contender,
        hitter,
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

for (const kind of kinds) {
  const inputs = Array.from({ length: 40 }, (_, seed) => inputFor(session(seed, kind)));
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
    `${kind.name}: first ${print(times[0])}, warm median ${print(middle)}, least ${print(warm[0])}, slowest ${print(warm.at(-1))}`,
  );
}
