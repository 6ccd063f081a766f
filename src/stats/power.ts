import { normalQuantile } from './distributions/normal.ts';
import { noncentralTUpper } from './distributions/noncentralT.ts';
import { findRoot } from './findRoot.ts';
import { isPaired, type Test } from './judgedBy.ts';
import { requireAtLeast, requireFraction, requirePositive, StatisticsError } from './statisticsError.ts';
import { visitPower } from './visitPower.ts';
import { criticalT, welchPower } from './welchPower.ts';

const MOST_SHOTS = 1_000_000;

/**
 * Chance that the interval of one pair whose true gap is `gap` standard deviations leaves out 0, by what the test is
 * judged by: Welch and Games-Howell on shots (see `welchPower`), Student's t on the differences of rounds, or visits
 * besides (see `visitPower`).
 */
export function power(gap: number, test: Test): number {
  if (test.by?.kind === 'visits') return visitPower(gap, test, test.by.shotsAVisit);
  return isPaired(test) ? pairedPower(gap, test) : welchPower(gap, test);
}

/** Differences of rounds have sqrt(2) times the spread of a shot, and n - 1 df: noncentral t, exact. */
function pairedPower(gap: number, { n, level }: Test): number {
  const critical = criticalT(level, 2, n - 1);
  const delta = gap * Math.sqrt(n / 2);
  return noncentralTUpper(critical, n - 1, delta) + noncentralTUpper(critical, n - 1, -delta);
}

// Every measure of a session asks for the same test.
const known = new Map<string, number>();
const mostKnown = 1000;

/** The gap, in standard deviations, that such a test sees with this chance (0.8: four times in five). */
export function leastGap(test: Test, chance = 0.8): number {
  requireFraction('leastGap', 'chance', chance);
  const key = JSON.stringify([test.n, test.k, test.level, test.by, chance]);
  const found = known.get(key) ?? searchedGap(test, chance);
  if (known.size >= mostKnown) known.clear();
  known.set(key, found);
  return found;
}

function searchedGap(test: Test, chance: number): number {
  const seen = (gap: number): number => power(gap, test) - chance;
  if (seen(0) >= 0) throw new StatisticsError('bad-argument', 'leastGap', `chance ${chance} needs no gap`);
  let high = 4 / Math.sqrt(test.n / 2);
  while (seen(high) < 0) high *= 2;
  return findRoot(seen, 0, high, 1e-12);
}

/**
 * Fewest values a group with which a true gap of `gap` standard deviations is seen with this chance; whole visits where
 * it is judged by visits, three of them or more.
 * @throws StatisticsError `bad-argument` when more than a million would be needed
 */
export function shotsNeeded(gap: number, { k, level, by }: Omit<Test, 'n'>, chance = 0.8): number {
  requirePositive('shotsNeeded', 'gap', gap);
  requireFraction('shotsNeeded', 'chance', chance);
  const length = by?.kind === 'visits' ? by.shotsAVisit : 1;
  const enough = (n: number): boolean => power(gap, { n, k, level, ...(by && { by }) }) >= chance;
  const guess = (normalQuantile(chance) + criticalT(level, k, 60)) / gap;
  return length * fewest('shotsNeeded', (visits) => enough(visits * length), (2 * guess * guess) / length);
}

/**
 * Fewest values a group with which equal groups can be shown to lie within `gap` standard deviations at all: the
 * half-width of the interval of two equal groups is less.
 */
export function shotsToShowLevel(gap: number, { k, level, by }: Omit<Test, 'n'>): number {
  requirePositive('shotsToShowLevel', 'gap', gap);
  const guess = criticalT(level, k, 60) / gap;
  return fewest(
    'shotsToShowLevel',
    (n) => halfWidthInSd({ n, k, level, ...(by && { by }) }) < gap,
    2 * guess * guess,
  );
}

/**
 * Half-width of a pair's interval where the two spreads come out equal, in standard deviations:
 * q(level; k, 2n - 2) / sqrt(n); t with n - 1 df by rounds.
 */
export function halfWidthInSd(test: Test): number {
  const { n, k, level } = test;
  requireFraction('power', 'level', level);
  requireAtLeast('power', 'values a group', n, 2);
  return criticalT(level, k, isPaired(test) ? n - 1 : 2 * n - 2) * Math.sqrt(2 / n);
}

/**
 * Smallest n from 3 that is enough; `enough` never turns false again once true. Looked for on both sides of a guess, in
 * steps that double, then between the last two.
 */
function fewest(name: string, enough: (n: number) => boolean, guess: number): number {
  const tooMany = (): never => {
    throw new StatisticsError('bad-argument', name, `more than ${MOST_SHOTS} values a group would be needed`);
  };
  if (!(guess < MOST_SHOTS) && !enough(MOST_SHOTS)) return tooMany();
  const start = Math.max(3, Math.min(MOST_SHOTS, Math.round(guess)));
  let step = Math.max(1, Math.round(start / 50));
  let tooFew = 2;
  let plenty = MOST_SHOTS;
  if (enough(start)) {
    plenty = start;
    for (let n = start - step; n > 2; n -= step) {
      if (!enough(n)) {
        tooFew = n;
        break;
      }
      plenty = n;
      step *= 2;
    }
  } else {
    tooFew = start;
    for (let n = start + step; ; n = Math.min(MOST_SHOTS, n + step)) {
      if (enough(n)) {
        plenty = n;
        break;
      }
      if (n >= MOST_SHOTS) return tooMany();
      tooFew = n;
      step *= 2;
    }
  }
  while (plenty - tooFew > 1) {
    const middle = (tooFew + plenty) >> 1;
    if (enough(middle)) plenty = middle;
    else tooFew = middle;
  }
  return plenty;
}
