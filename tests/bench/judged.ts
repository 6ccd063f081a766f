import { analyse } from '../../src/findings/analyse.ts';
import type { PairFindings } from '../../src/findings/findings.ts';
import { isGap } from '../../src/findings/verdict.ts';
import { leastGap, power } from '../../src/stats/power.ts';
import { plannedOrder } from '../../src/intake/plan/plannedOrder.ts';
import { seededRandom, shuffled, type Random } from '../../src/stats/random.ts';
import type { MetricId } from '../../src/trade/metrics.ts';
import { inputFor, yd, type Swing } from '../findings/sessions.ts';

/**
 * How often the whole analysis is wrong about invented sessions whose truth is known, carry sd 8 yards, 5 matter. By hand:
 * `node tests/bench/judged.ts 400` (sessions a row).
 */
const sessions = Number(process.argv[2] ?? 200);
const sd = 8;

interface Golfer {
  readonly order: readonly string[];
  readonly gap: number;
  /** Yards from first to last shot. */
  readonly drift: number;
  /** Of one shot with the next. */
  readonly correlation?: number;
}

function hit({ order, gap, drift, correlation = 0 }: Golfer, hitter: string, random: Random): Swing[] {
  let before = random.normal();
  return order.map((contender, place): Swing => {
    before = correlation * before + Math.sqrt(1 - correlation ** 2) * random.normal();
    const mean = 220 + (contender === 'a' ? gap : 0) + (drift * place) / (order.length - 1);
    return { contender, hitter, values: { carry: yd(Number((mean + sd * before).toFixed(1))) } };
  });
}

function judged(name: string, golfersOf: (random: Random) => readonly Golfer[]): readonly PairFindings[] {
  return Array.from({ length: sessions }, (_, seed) => {
    const random = seededRandom(`${name} ${seed}`);
    const swings = golfersOf(random).flatMap((golfer, index) => hit(golfer, `g${index}`, random));
    const [pair] = analyse(inputFor(swings, { contenders: ['a', 'b'] }), []).metrics[0]?.pairs ?? [];
    if (pair === undefined) throw new Error('no pair');
    return pair;
  });
}

const many = <Of>(count: number, of: (index: number) => Of): Of[] =>
  Array.from({ length: count }, (_, i) => of(i));
const rounds = (n: number, random: Random): string[] => many(n, () => shuffled(['a', 'b'], random)).flat();
const blocks = (n: number, first: string): string[] => [
  ...many(n, () => first),
  ...many(n, () => (first === 'a' ? 'b' : 'a')),
];
const credited = ({ credit }: PairFindings): boolean => credit === 'contender';
const seen = (pair: PairFindings): boolean => isGap(pair.verdict);
const wrong = (pair: PairFindings): boolean => seen(pair) && credited(pair);

function tell(name: string, pairs: readonly PairFindings[], counts: (pair: PairFindings) => boolean): void {
  const share = (100 * pairs.filter(counts).length) / pairs.length;
  console.log(`${share.toFixed(1).padStart(6)} %  ${name}`);
}

console.log(`${sessions} sessions a row`);
for (const golfers of [2, 3, 5, 8, 12]) {
  const name = `identical golfers told apart: ${golfers}`;
  const pairs = judged(name, (random) =>
    many(golfers, () => ({ order: rounds(8, random), gap: 3, drift: 0 })),
  );
  tell(name, pairs, ({ hittersDiffer }) => hittersDiffer.length > 0);
}
for (const spread of [0, 8]) {
  const name = `false, eight counterbalanced golfers, 8 yd drift, own part sd ${spread}`;
  const pairs = judged(name, (random) =>
    many(8, (i) => ({
      order: blocks(8, i % 2 === 0 ? 'a' : 'b'),
      gap: 0,
      drift: 8 + spread * random.normal(),
    })),
  );
  tell(name, pairs, wrong);
  tell('  of them credited', pairs, credited);
}
const shuffledName = 'eight golfers fully shuffled, true gap 8 yd: credited where it is found';
const shuffledPairs = judged(shuffledName, (random) =>
  many(8, () => ({
    order: shuffled([...many(8, () => 'a'), ...many(8, () => 'b')], random),
    gap: 8,
    drift: 0,
  })),
);
tell(shuffledName, shuffledPairs.filter(seen), credited);
tell('  found', shuffledPairs, seen);
for (const n of [8, 12, 20])
  for (const drift of [0, 8, 16])
    for (const correlation of [0, 0.4]) {
      const name = `false, paired rounds: ${n}, drift ${drift}, correlation ${correlation}`;
      const pairs = judged(name, (random) => [{ order: rounds(n, random), gap: 0, drift, correlation }]);
      tell(name, pairs, wrong);
    }
for (const drift of [0, 16]) {
  const name = `found, paired rounds: 8, drift ${drift}, true gap 12 yd`;
  tell(
    name,
    judged(name, (random) => [{ order: rounds(8, random), gap: 12, drift }]),
    seen,
  );
}
for (const own of [0, 8]) {
  const name = `nothing that matters said of three golfers, true gaps of sd ${own} round 0, sd of a shot 8, 30 shots`;
  const pairs = judged(name, (random) =>
    many(3, () => ({ order: rounds(30, random), gap: own * random.normal(), drift: 0 })),
  );
  tell(name, pairs, ({ verdict }) => verdict === 'level' || verdict === 'small');
}
for (const [n, shotsAVisit] of [
  [9, 3],
  [12, 2],
  [12, 3],
  [18, 3],
] as const) {
  const by = { kind: 'visits', shotsAVisit } as const;
  const gap = leastGap({ n, k: 2, level: 0.95 }, 0.83);
  const promised = (100 * power(gap, { n, k: 2, level: 0.95, by })).toFixed(1);
  for (const correlation of [0, 0.2]) {
    const name = `found, ${n} shots in visits of ${shotsAVisit}, correlation ${correlation}: promised ${promised} (83 by shots)`;
    const pairs = judged(name, (random) => {
      const turns = { kind: 'mini-blocks', shotsAVisit } as const;
      const order = plannedOrder({
        contenders: ['a', 'b'],
        shotsEach: n,
        turns,
        seed: String(random.uniform()),
      });
      if (order === null) throw new Error('no order');
      return [{ order: order.map(({ contender }) => contender), gap: sd * gap, drift: 0, correlation }];
    });
    tell(name, pairs, seen);
  }
}
const looked: readonly MetricId[] = [
  'ball_speed',
  'launch_angle',
  'spin_rate',
  'apex',
  'descent_angle',
  'side',
];
const families = many(sessions, (seed) => {
  const random = seededRandom(`exploratory ${seed}`);
  const swings = rounds(12, random).map((contender): Swing => ({
    contender,
    values: Object.fromEntries(['carry', ...looked].map((id) => [id, 100 + random.normal()])),
  }));
  const { metrics } = analyse(inputFor(swings, { contenders: ['a', 'b'], step: 0.001 }), []);
  return metrics.filter(({ role, pairs }) => role === 'exploratory' && pairs.some(seen)).length;
});
const found = families.reduce((sum, own) => sum + own, 0);
console.log(
  `${(found / sessions).toFixed(2).padStart(6)}    of ${looked.length} measures besides carry show a difference between equals (told: ${(0.05 * looked.length).toFixed(2)})`,
);
console.log(
  `${((100 * families.filter((own) => own > 0).length) / sessions).toFixed(1).padStart(6)} %  of such sessions show any`,
);
