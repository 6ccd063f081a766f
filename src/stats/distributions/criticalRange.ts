import { chebyshevSeries, evaluateChebyshev, type ChebyshevSeries } from '../chebyshev.ts';
import { studentizedRangeQuantile } from './studentizedRange.ts';

/**
 * `studentizedRangeQuantile`, to 12 digits, for those who ask it at one level and one number of groups for many
 * degrees of freedom, as a family of intervals does: its logarithm hangs so smoothly on 1 / df that thirteen quantiles
 * make a Chebyshev series for all df of 16 and more, and thirteen more for each halving below. What a table cannot hold
 * is worked out. The same question has the same answer to the last bit, whatever was asked before.
 *
 * @throws StatisticsError `bad-argument` outside the domain
 */
export function criticalRange(p: number, k: number, df: number): number {
  if (!(p >= least && p <= most && k >= 2 && k <= mostGroups && df >= leastDf)) {
    return studentizedRangeQuantile(p, k, df);
  }
  const inverse = 1 / df;
  const halving = inverse <= 1 / plenty ? 0 : Math.ceil(Math.log2(plenty * inverse));
  return Math.exp(evaluateChebyshev(piece(p, k, halving), inverse));
}

const least = 0.5;
const most = 0.9999;
const mostGroups = 12;
const leastDf = 2;
/** df from which one series serves. */
const plenty = 16;
const degree = 12;

const known = new Map<string, ChebyshevSeries>();
const mostKnown = 500;

/** The series for 1 / df up to 1/16, or between two halvings of 16. */
function piece(p: number, k: number, halving: number): ChebyshevSeries {
  const key = `${p} ${k} ${halving}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const to = 2 ** halving / plenty;
  const made = chebyshevSeries(halving === 0 ? 0 : to / 2, to, degree, (inverse) =>
    Math.log(studentizedRangeQuantile(p, k, 1 / inverse)),
  );
  if (known.size >= mostKnown) known.clear();
  known.set(key, made);
  return made;
}
