import { expect, test } from 'vitest';
import { meanInterval, nextValueInterval } from '../../src/stats/meanInterval.ts';
import { randomEffects } from '../bench/simulation/randomEffects.ts';
import reference from '../reference/statistics.json' with { type: 'json' };
import { at, expectClose, expectInterval } from './close.ts';

test.each(reference.pools.map((set) => [set.name, set] as const))('%s', (_name, set) => {
  // formulas of the papers written out in R (tests/reference/statistics.R), t.test for the unweighted
  const studies = set.estimates.map((estimate, i) => ({
    estimate,
    standardError: at(set.standardErrors, i),
  }));
  const own = randomEffects(studies, 0.95);
  expectClose(own.between, set.between, 1e-10, Math.max(set.between, 1));
  expectClose(own.heterogeneity.q, set.q, 1e-10);
  expectClose(own.heterogeneity.p, set.qP, 1e-9);
  expectClose(own.wald.estimate, set.estimate, 1e-10);
  expectClose(own.wald.standardError, set.standardError, 1e-10);
  expectInterval(own.wald.ci, set.wald, 1e-10);
  expectInterval(own.hartungKnapp.ci, set.hartungKnapp, 1e-10);
  expectClose(own.hartungKnapp.p, set.hartungKnappP, 1e-9);
  expectInterval(own.prediction ?? [NaN, NaN], set.prediction, 1e-10);

  const alike = meanInterval(set.estimates, 0.95);
  expectInterval(alike.ci, set.unweighted, 1e-10);
  expectClose(alike.p, set.unweightedP, 1e-9);
  expectInterval(nextValueInterval(set.estimates, 0.95), set.nextValue, 1e-10);
});

test('BCG vaccine, thirteen trials: the published pooled value', () => {
  // Colditz et al. 1994; -0.7141 (-1.0644 to -0.3638), DerSimonian & Laird, in the tests of the R package metafor
  const set = at(reference.pools, 0);
  const own = randomEffects(
    set.estimates.map((estimate, i) => ({ estimate, standardError: at(set.standardErrors, i) })),
    0.95,
  );
  expect(own.wald.estimate.toFixed(4)).toBe('-0.7141');
  expect(own.wald.ci.map((end) => end.toFixed(4))).toEqual(['-1.0644', '-0.3638']);
  expect(own.heterogeneity.q.toFixed(3)).toBe('152.233');
});

test('two studies have no prediction interval', () => {
  const two = [
    { estimate: 1, standardError: 1 },
    { estimate: 3, standardError: 1 },
  ];
  expect(randomEffects(two, 0.95).prediction).toBeNull();
});
