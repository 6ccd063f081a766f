import { betaQuantile, betaUpperQuantile } from './distributions/beta.ts';
import { normalQuantile } from './distributions/normal.ts';
import { requireFraction, StatisticsError } from './statisticsError.ts';

/**
 * Interval of a share: Wilson 1927 (JASA 22), the score interval without continuity correction; near its level
 * on average, not guaranteed for each share.
 *
 * @throws StatisticsError `bad-argument` unless 0 <= successes <= trials are whole and trials >= 1
 */
export function wilsonInterval(successes: number, trials: number, level: number): readonly [number, number] {
  check('wilsonInterval', successes, trials, level);
  const z = normalQuantile((1 + level) / 2);
  const share = successes / trials;
  const denominator = 1 + (z * z) / trials;
  const centre = (share + (z * z) / (2 * trials)) / denominator;
  const half = (z / denominator) * Math.sqrt((share * (1 - share)) / trials + (z / (2 * trials)) ** 2);
  return [successes === 0 ? 0 : centre - half, successes === trials ? 1 : centre + half];
}

/** Exact interval of a share: Clopper & Pearson 1934 (Biometrika 26); never covers less than its level. */
export function clopperPearsonInterval(
  successes: number,
  trials: number,
  level: number,
): readonly [number, number] {
  check('clopperPearsonInterval', successes, trials, level);
  const beyond = (1 - level) / 2;
  const low = successes === 0 ? 0 : betaQuantile(beyond, successes, trials - successes + 1);
  const high = successes === trials ? 1 : betaUpperQuantile(beyond, successes + 1, trials - successes);
  return [low, high];
}

function check(name: string, successes: number, trials: number, level: number): void {
  requireFraction(name, 'level', level);
  const whole = Number.isInteger(successes) && Number.isInteger(trials);
  if (!(whole && successes >= 0 && trials >= 1 && successes <= trials)) {
    throw new StatisticsError(
      'bad-argument',
      name,
      `needs 0 <= successes <= trials, got ${successes} of ${trials}`,
    );
  }
}
