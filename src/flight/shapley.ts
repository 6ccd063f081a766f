import { at } from '../stats/at.ts';
/**
 * Shapley's split of a difference among players (Shapley 1953, "A value for n-person games"): the mean, over all
 * orders in which the players may be swapped in, of what each adds. `values[set]` is what the players whose bits
 * are set achieve together. The shares add up to the last value minus the first.
 */
export function shapley(players: number): (values: Float64Array, shares: Float64Array) => void {
  const sets = 1 << players;
  // weight of adding one player to a set of a given size: size! (players - size - 1)! / players!
  const weights = Array.from({ length: players }, (_, size) => 1 / (players * choose(players - 1, size)));
  // By player, one after another: the sets without that player, which come before the same sets with.
  const half = sets >> 1;
  const without = Int32Array.from({ length: players * half }, (_, at) => {
    const own = 1 << Math.floor(at / half);
    const rest = at % half;
    return ((rest & ~(own - 1)) << 1) | (rest & (own - 1));
  });
  const weightOf = Float64Array.from(without, (set) => at(weights, bits(set)));
  return (values, shares) => {
    let at = 0;
    for (let player = 0; player < players; player++) {
      const own = 1 << player;
      let share = 0;
      for (const end = at + half; at < end; at++) {
        const set = without[at] ?? 0;
        share += (weightOf[at] ?? 0) * ((values[set | own] ?? 0) - (values[set] ?? 0));
      }
      shares[player] = share;
    }
  };
}

function bits(set: number): number {
  return set === 0 ? 0 : (set & 1) + bits(set >> 1);
}

function choose(n: number, k: number): number {
  let ways = 1;
  for (let i = 1; i <= k; i++) ways = (ways * (n - k + i)) / i;
  return ways;
}
