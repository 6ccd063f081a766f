import { greatestOf } from './extremes.ts';
import { pairsOf } from './gapInterval.ts';
import { shuffled, type Random } from './random.ts';
import { requireAtLeast, requireFinite, StatisticsError } from './statisticsError.ts';

/** `p` of the widest gap of means; `pairs` by the same distribution, so that they hold together (max T). */
export interface Permutation {
  readonly p: number;
  readonly pairs: readonly { readonly a: number; readonly b: number; readonly p: number }[];
  /** rearrangements looked at: all there are, or those drawn */
  readonly arrangements: number;
  readonly method: 'exact' | 'drawn';
}

const MOST_FOR_EXACT = 200_000;

/**
 * Reshuffling test of k treatments in rounds: were they alike, every order of a round's values would be as
 * likely (Fisher 1935; Westfall & Young 1993 for the pairs). The statistic is the widest gap between treatment
 * means. All (k!)^(rounds - 1) arrangements are listed when there are 200,000 at most (the first round can stay:
 * renaming all treatments alike changes nothing), else `draws` are drawn and p = (1 + hits) / (1 + draws).
 *
 * @param rounds complete rounds, one value a treatment, all of one length
 * @throws StatisticsError `sample-too-small` under two rounds or treatments, `bad-argument` for ragged rounds
 */
export function permutationWithinRounds(
  rounds: readonly (readonly number[])[],
  random: Random,
  draws = 9999,
): Permutation {
  requireAtLeast('permutationWithinRounds', 'rounds', rounds.length, 2);
  const k = rounds[0]?.length ?? 0;
  requireAtLeast('permutationWithinRounds', 'treatments', k, 2);
  if (rounds.some((round) => round.length !== k)) {
    throw new StatisticsError('bad-argument', 'permutationWithinRounds', 'rounds differ in length');
  }
  rounds.forEach((round) => requireFinite('permutationWithinRounds', round));
  const centred = rounds.map((round) => {
    const mean = round.reduce((sum, value) => sum + value, 0) / k;
    return round.map((value) => value - mean);
  });
  const sums = totals(centred, k);
  const seen = pairsOf(k).map(([a, b]) => ({ a, b, gap: Math.abs((sums[a] ?? 0) - (sums[b] ?? 0)) }));
  // sums of the same numbers in another order differ by rounding: count those as equal
  const slack = 1e-10 * greatestOf(centred.flat().map(Math.abs)) * rounds.length;
  const widestSeen = Math.max(...seen.map(({ gap }) => gap));

  const exact = factorial(k) ** (rounds.length - 1) <= MOST_FOR_EXACT;
  const widest = exact ? everyWidest(centred) : drawnWidest(centred, k, random, draws);
  const extra = exact ? 0 : 1;
  const share = (gap: number): number =>
    (widest.filter((range) => range >= gap - slack).length + extra) / (widest.length + extra);
  return {
    p: share(widestSeen),
    pairs: seen.map(({ a, b, gap }) => ({ a, b, p: share(gap) })),
    arrangements: widest.length,
    method: exact ? 'exact' : 'drawn',
  };
}

function everyWidest(rounds: readonly (readonly number[])[]): readonly number[] {
  const [first = [], ...rest] = rounds;
  let reached: readonly (readonly number[])[] = [first];
  for (const round of rest) {
    const orders = ordersOf(round);
    reached = reached.flatMap((sums) => orders.map((order) => sums.map((sum, i) => sum + (order[i] ?? 0))));
  }
  return reached.map((sums) => range(sums));
}

function drawnWidest(
  rounds: readonly (readonly number[])[],
  k: number,
  random: Random,
  draws: number,
): readonly number[] {
  return Array.from({ length: draws }, () => {
    const arranged = rounds.map((round) => shuffled(round, random));
    return range(totals(arranged, k));
  });
}

function totals(rounds: readonly (readonly number[])[], k: number): readonly number[] {
  return Array.from({ length: k }, (_, i) => rounds.reduce((sum, round) => sum + (round[i] ?? 0), 0));
}

function range(sums: readonly number[]): number {
  return Math.max(...sums) - Math.min(...sums);
}

function ordersOf(values: readonly number[]): readonly (readonly number[])[] {
  if (values.length <= 1) return [values];
  return values.flatMap((value, i) => ordersOf(values.toSpliced(i, 1)).map((rest) => [value, ...rest]));
}

function factorial(k: number): number {
  return k <= 1 ? 1 : k * factorial(k - 1);
}
