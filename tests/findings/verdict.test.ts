import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isGap, verdictOf, type VerdictId } from '../../src/findings/verdict.ts';

/** A hair: the next number above, so that "at" and "just beyond" are one apart. */
const above = (value: number): number => value + Math.max(Math.abs(value), 1e-300) * Number.EPSILON;
const below = (value: number): number => -above(-value);

/** The rules of the seven verdicts, with m = 5: limits, estimate, verdict. Strict on both sides. */
const cases: readonly (readonly [string, number, number, number, VerdictId])[] = [
  ['well beyond m', 7, 12, 18, 'clear'],
  ['well beyond m, the other way', -18, -12, -7, 'clear'],
  ['lower limit a hair above m', above(5), 8, 11, 'clear'],
  ['lower limit at m', 5, 8, 11, 'size-unsure'],
  ['upper limit a hair below -m', -11, -8, below(-5), 'clear'],
  ['upper limit at -m', -11, -8, -5, 'size-unsure'],
  ['estimate at m', 1, 5, 9, 'size-unsure'],
  ['estimate a hair below m', 1, below(5), 9, 'maybe-small'],
  ['estimate at -m', -9, -5, -1, 'size-unsure'],
  ['estimate a hair above -m', -9, above(-5), -1, 'maybe-small'],
  ['lower limit a hair above 0, inside m', above(0), 2, 4, 'small'],
  ['lower limit at 0, inside m', 0, 2, 4, 'level'],
  ['upper limit at 0, inside m', -4, -2, 0, 'level'],
  ['upper limit a hair below 0, inside m', -4, -2, below(0), 'small'],
  ['excludes 0, upper limit at m: not inside', 1, 3, 5, 'maybe-small'],
  ['excludes 0, upper limit a hair below m', 1, 3, below(5), 'small'],
  ['includes 0, upper limit at m: not inside', -1, 2, 5, 'too-close'],
  ['includes 0, upper limit a hair below m', -1, 1.9, below(5), 'level'],
  ['includes 0, lower limit at -m', -5, -2, 1, 'too-close'],
  ['includes 0, lower limit a hair above -m', above(-5), -2, 1, 'level'],
  ['includes 0, reaches beyond m both ways', -7, 0, 7, 'too-close'],
  ['at 0 and beyond m', 0, 4, 8, 'too-close'],
  ['a point at 0', 0, 0, 0, 'level'],
];

describe('verdict of a gap', () => {
  test.each(cases)('%s', (_name, lower, estimate, upper, verdict) => {
    expect(verdictOf(estimate, [lower, upper], 5)).toBe(verdict);
  });

  const gaps = fc
    .tuple(
      fc.double({ min: -30, max: 30, noNaN: true }),
      fc.double({ min: 0, max: 30, noNaN: true }),
      fc.double({ min: 0.01, max: 15, noNaN: true }),
    )
    .map(([estimate, half, matters]) => ({
      estimate,
      ci: [estimate - half, estimate + half] as const,
      matters,
    }));

  test('does not depend on which of the two is named first', () => {
    fc.assert(
      fc.property(gaps, ({ estimate, ci, matters }) => {
        expect(verdictOf(-estimate, [-ci[1], -ci[0]], matters)).toBe(verdictOf(estimate, ci, matters));
      }),
    );
  });

  test('says that there is a gap exactly where 0 lies outside the interval', () => {
    fc.assert(
      fc.property(gaps, ({ estimate, ci, matters }) => {
        expect(isGap(verdictOf(estimate, ci, matters))).toBe(ci[0] > 0 || ci[1] < 0);
      }),
    );
  });

  test('a shorter interval round the same gap never says less', () => {
    const known: Readonly<Record<VerdictId, number>> = {
      clear: 2,
      small: 2,
      level: 2,
      'size-unsure': 1,
      'maybe-small': 1,
      'too-close': 0,
      'not-judged': 0,
    };
    fc.assert(
      fc.property(
        gaps,
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        ({ estimate, ci, matters }, part) => {
          const half = ((ci[1] - ci[0]) / 2) * part;
          const wide = verdictOf(estimate, ci, matters);
          const short = verdictOf(estimate, [estimate - half, estimate + half], matters);
          // `level` may turn out to be a real gap too small to matter, but no answer becomes unknown again
          expect(known[short]).toBeGreaterThanOrEqual(known[wide]);
        },
      ),
    );
  });

  test('an answer that is judged is never "not judged"', () => {
    expect(isGap('not-judged')).toBe(false);
  });
});
