import { normalUpper } from './distributions/normal.ts';
import { sumOverChi } from './distributions/sumOverChi.ts';
import type { Test } from './judgedBy.ts';
import { criticalT, meanCritical } from './welchPower.ts';

/** Level at which a gap in mini-blocks must show on the means of visits. */
const levelOfVisits = 0.9;

/**
 * Chance that a gap in mini-blocks is found: the interval on shots leaves out 0, and so does that of the additive model
 * of set of visits and group on the means of visits, at 90 %. Shots of one visit are taken as no more alike than
 * others: where they are, less is found. The error of visits is a part of the error of shots where there are two groups,
 * and nearly free of a pair's own with more; the average over both is taken by quadrature.
 *
 * @param gap in standard deviations of a shot
 * @param shotsAVisit of which n holds three or more
 */
export function visitPower(gap: number, test: Test, shotsAVisit: number): number {
  const { n, k } = test;
  const dfVisits = (n / shotsAVisit - 1) * (k - 1);
  const dfOther = 2 * n - 2 - (k === 2 ? dfVisits : 0);
  const ofVisits = criticalT(levelOfVisits, k, dfVisits);
  const ofShots = meanCritical(test);
  const delta = gap * Math.sqrt(n / 2);
  // As far as that nothing hides it: neither luck of 40 standard errors nor a spread that came out fifty times as large.
  if (delta - 40 > 50 * Math.max(ofShots, ofVisits)) return 1;
  const bend = (delta * delta) / 2;
  let sum = 0;
  const outer = sumOverChi(dfVisits, dfVisits + bend, 0, (sVisits, logVisits) => {
    const shared = k === 2 ? dfVisits * sVisits * sVisits : 0;
    let own = 0;
    const inner = sumOverChi(dfOther, dfOther + bend, 0, (sOther, logOther) => {
      const sShots = Math.sqrt((shared + dfOther * sOther * sOther) / (2 * n - 2));
      const critical = Math.max(ofShots * sShots, ofVisits * sVisits);
      const term =
        Math.exp(logVisits + logOther) * (normalUpper(critical - delta) + normalUpper(critical + delta));
      own += term;
      return term;
    });
    sum += own * inner;
    return own * inner;
  });
  return Math.min(1, sum * outer);
}
