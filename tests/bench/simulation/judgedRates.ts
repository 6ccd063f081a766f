import { plannedOrder, type PlannedTurns } from '../../../src/intake/plan/plannedOrder.ts';
import { foresee } from '../../../src/intake/plan/foresight.ts';
import type { VerdictId } from '../../../src/findings/verdict.ts';
import { leastGap } from '../../../src/stats/power.ts';
import { seededRandom, shuffled, type Random } from '../../../src/stats/random.ts';
import { judgedSession, seen, wrong, type Golfer, type JudgedPair } from './judgedSession.ts';
import { CARRY_SD, MATTERS } from './shots.ts';
import { percent } from './tally.ts';

/** Rates of made-up sessions that were judged as a report is; distances in yards, rates in per cent. */
export interface JudgedRates {
  readonly sessions: number;
  readonly identicalGolfers: readonly { readonly golfers: number; readonly toldApart: number }[];
  /** Eight golfers who hit one thing after the other, half of them the other way round; both equal. */
  readonly counterbalanced: readonly {
    readonly drift: number;
    /** Standard deviation over golfers. */
    readonly ownDrift: number;
    readonly falseGaps: number;
    readonly credited: number;
  }[];
  /** Eight golfers, all shots of each shuffled. */
  readonly shuffled: { readonly gap: number; readonly found: number; readonly creditedOfFound: number };
  readonly pairedRounds: readonly {
    readonly rounds: number;
    readonly drift: number;
    readonly correlation: number;
    readonly falseGaps: number;
  }[];
  /** Three golfers, two things equal on average over all golfers. */
  readonly eachGolfer: readonly {
    readonly golfers: number;
    readonly shots: number;
    /** Standard deviation over golfers of what suits each. */
    readonly ownGap: number;
    /** Sessions of which it is said that nothing matters. */
    readonly nothingMatters: number;
    /** Of all sessions: said so, though it does matter to one of these golfers. */
    readonly falsely: number;
    /** The same if the mean over the golfers alone decided. */
    readonly falselyByMean: number;
  }[];
  readonly plans: readonly {
    readonly order: 'rotation' | 'mini-blocks';
    readonly contenders: number;
    readonly shots: number;
    readonly shotsAVisit: number;
    readonly gap: number;
    readonly promised: number;
    readonly found: number;
  }[];
  /** Equal things in mini-blocks. */
  readonly alikeVisits: readonly {
    readonly contenders: number;
    readonly shots: number;
    readonly shotsAVisit: number;
    readonly correlation: number;
    readonly ofSpell: number;
    readonly falseGaps: number;
  }[];
  /** Two equal things in twelve rounds, so many independent measures besides the main one. */
  readonly exploratory: readonly {
    readonly measures: number;
    readonly showing: number;
    readonly anyOfSession: number;
  }[];
}

const isLittle = (verdict?: VerdictId): boolean => verdict === 'level' || verdict === 'small';

type Order = Golfer['order'];

const two = ['a', 'b'];
const many = <Of>(count: number, of: (index: number) => Of): readonly Of[] =>
  Array.from({ length: count }, (_, index) => of(index));
const inRounds = (n: number, random: Random): Order =>
  many(n, () => shuffled(two, random))
    .flat()
    .map((contender) => ({ contender }));
const oneThenOther = (n: number, first: string, second: string): Order =>
  [...many(n, () => first), ...many(n, () => second)].map((contender) => ({ contender }));

function planned(
  contenders: readonly string[],
  shotsEach: number,
  turns: PlannedTurns,
  random: Random,
): Order {
  const order = plannedOrder({ contenders, shotsEach, turns, seed: String(random.uniform()) });
  if (order === null) throw new Error('no order');
  return order.map(({ contender, round }) => ({ contender, round }));
}

/** @param seed with the name of each row a stream of its own, so that a new row changes no other */
export function judgedRates(sessions: number, seed: string, told: (row: string) => void): JudgedRates {
  const run = (
    name: string,
    contenders: readonly string[],
    golfersOf: (random: Random) => readonly Golfer[],
  ): readonly (readonly JudgedPair[])[] => {
    told(name);
    const random = seededRandom(`${seed} / ${name}`);
    return many(sessions, () => judgedSession(contenders, golfersOf(random), random));
  };
  const share = (all: readonly (readonly JudgedPair[])[], counts: (pair: JudgedPair) => boolean): number =>
    percent(all.filter((pairs) => pairs.some(counts)).length, all.length);
  /** Of the first pair alone. */
  const first = (all: readonly (readonly JudgedPair[])[], counts: (pair: JudgedPair) => boolean): number =>
    share(
      all.map((pairs) => pairs.slice(0, 1)),
      counts,
    );

  const identicalGolfers = [2, 3, 5, 8, 12].map((golfers) => {
    const all = run(`identical golfers ${golfers}`, two, (random) =>
      many(golfers, () => ({ order: inRounds(8, random), gap: 3 })),
    );
    return { golfers, toldApart: share(all, ({ golfersApart }) => golfersApart) };
  });

  const counterbalanced = [0, 8].map((ownDrift) => {
    const all = run(`counterbalanced ${ownDrift}`, two, (random) =>
      many(8, (index) => ({
        order: index % 2 === 0 ? oneThenOther(8, 'a', 'b') : oneThenOther(8, 'b', 'a'),
        gap: 0,
        drift: 8 + ownDrift * random.normal(),
      })),
    );
    return {
      drift: 8,
      ownDrift,
      falseGaps: share(all, wrong),
      credited: share(all, ({ credited }) => credited),
    };
  });

  const shuffledGap = 8;
  const shuffledAll = run('shuffled', two, (random) =>
    many(8, () => ({ order: shuffled(oneThenOther(8, 'a', 'b'), random), gap: shuffledGap })),
  );
  const foundOnes = shuffledAll.filter((pairs) => pairs.some(seen));

  const pairedRounds = [8, 12, 20].flatMap((rounds) =>
    [0, 8, 16].flatMap((drift) =>
      [0, 0.2, 0.4].map((correlation) => {
        const all = run(`paired rounds ${rounds} ${drift} ${correlation}`, two, (random) => [
          { order: inRounds(rounds, random), gap: 0, drift, correlation },
        ]);
        return { rounds, drift, correlation, falseGaps: share(all, wrong) };
      }),
    ),
  );

  const eachGolfer = [
    [3, 60, 0],
    [3, 60, 4],
    [3, 60, 8],
  ].map(([golfers = 3, shots = 60, ownGap = 0]) => {
    const name = `each golfer ${golfers} ${shots} ${ownGap}`;
    told(name);
    const random = seededRandom(`${seed} / ${name}`);
    const all = many(sessions, () => {
      const own = many(golfers, () => ({ order: inRounds(shots, random), gap: ownGap * random.normal() }));
      const [pair] = judgedSession(two, own, random);
      const matters = own.some(({ gap }) => Math.abs(gap) >= MATTERS);
      const [said, byMean] = [isLittle(pair?.verdict), isLittle(pair?.ofGapAlone)];
      return { said, falsely: said && matters, falselyByMean: byMean && matters };
    });
    return {
      golfers,
      shots,
      ownGap,
      nothingMatters: percent(all.filter(({ said }) => said).length, sessions),
      falsely: percent(all.filter(({ falsely }) => falsely).length, sessions),
      falselyByMean: percent(all.filter(({ falselyByMean }) => falselyByMean).length, sessions),
    };
  });

  const plans = (
    [
      [2, 5, 1],
      [2, 8, 1],
      [2, 12, 1],
      [2, 20, 1],
      [3, 12, 1],
      [4, 12, 1],
      [2, 9, 3],
      [2, 12, 2],
      [2, 12, 3],
      [2, 18, 3],
      [2, 24, 3],
      [3, 12, 3],
      [3, 18, 2],
    ] as const
  ).map(([k, shots, shotsAVisit]) => {
    const turns: PlannedTurns =
      shotsAVisit === 1 ? { kind: 'rotation' } : { kind: 'mini-blocks', shotsAVisit };
    const contenders = ['a', 'b', 'c', 'd'].slice(0, k);
    // The same for every order of so many shots: the gap that shots alone would find seven times in ten.
    const gap = Number((CARRY_SD * leastGap({ n: shots, k, level: 0.95 }, 0.7)).toFixed(1));
    const all = run(`plan ${k} ${shots} ${shotsAVisit}`, contenders, (random) => [
      { order: planned(contenders, shots, turns, random), gap },
    ]);
    const foresight = foresee({
      contenders: k,
      shotsEach: shots,
      turns,
      sd: CARRY_SD,
      sdRange: null,
      matters: gap,
    });
    return {
      order: turns.kind,
      contenders: k,
      shots,
      shotsAVisit,
      gap,
      promised: percent(foresight.power, 1),
      found: first(all, wrong),
    };
  });

  const alikeVisits = (
    [
      [2, 12],
      [2, 18],
      [3, 12],
    ] as const
  ).flatMap(([k, shots]) =>
    (
      [
        [0, 0],
        [0.2, 0],
        [0.4, 0],
        [0, 4],
      ] as const
    ).map(([correlation, ofSpell]) => {
      const contenders = ['a', 'b', 'c'].slice(0, k);
      const all = run(`alike visits ${k} ${shots} ${correlation} ${ofSpell}`, contenders, (random) => [
        {
          order: planned(contenders, shots, { kind: 'mini-blocks', shotsAVisit: 3 }, random),
          gap: 0,
          correlation,
          ofSpell,
        },
      ]);
      return { contenders: k, shots, shotsAVisit: 3, correlation, ofSpell, falseGaps: share(all, wrong) };
    }),
  );

  const exploratory = [6, 18].map((measures) => {
    const name = `exploratory ${measures}`;
    told(name);
    const random = seededRandom(`${seed} / ${name}`);
    const showing = many(sessions, () => {
      const order = inRounds(12, random);
      return many(measures, () => judgedSession(two, [{ order, gap: 0 }], random)).filter((pairs) =>
        pairs.some(seen),
      ).length;
    });
    const sum = showing.reduce((total, own) => total + own, 0);
    return {
      measures,
      showing: percent(sum, 100 * sessions),
      anyOfSession: percent(showing.filter((own) => own > 0).length, sessions),
    };
  });

  return {
    sessions,
    identicalGolfers,
    counterbalanced,
    shuffled: {
      gap: shuffledGap,
      found: percent(foundOnes.length, sessions),
      creditedOfFound: percent(foundOnes.filter((pairs) => pairs.some(wrong)).length, foundOnes.length),
    },
    pairedRounds,
    eachGolfer,
    plans,
    alikeVisits,
    exploratory,
  };
}
