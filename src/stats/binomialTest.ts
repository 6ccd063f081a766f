import { at } from './at.ts';
import { compensatedSum } from './compensatedSum.ts';
import { greatestOf } from './extremes.ts';
import { StatisticsError } from './statisticsError.ts';

/**
 * Exact two-sided binomial test (sign test at share 1/2): the probability, were the share `share`, of all
 * counts no likelier than the one seen. As `binom.test` of R, whose 1e-7 allowance for rounding it shares.
 *
 * @throws StatisticsError `bad-argument` unless 0 <= successes <= trials are whole, 0 < share < 1
 */
export function binomialTwoSided(successes: number, trials: number, share = 0.5): number {
  const whole = Number.isInteger(successes) && Number.isInteger(trials);
  if (!(whole && successes >= 0 && trials >= 1 && successes <= trials && share > 0 && share < 1)) {
    throw new StatisticsError(
      'bad-argument',
      'binomialTwoSided',
      `needs 0 <= successes <= trials and 0 < share < 1, got ${successes} of ${trials}, ${share}`,
    );
  }
  const odds = share / (1 - share);
  const logs = [0];
  for (let count = 1; count <= trials; count++) {
    logs.push(at(logs, count - 1) + Math.log(((trials - count + 1) / count) * odds));
  }
  const highest = greatestOf(logs);
  const weights = logs.map((log) => Math.exp(log - highest));
  const limit = at(weights, successes) * (1 + 1e-7);
  return Math.min(1, compensatedSum(weights.filter((weight) => weight <= limit)) / compensatedSum(weights));
}
