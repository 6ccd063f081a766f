/** A method of the analysis: what it is for, how it is worked out, and whose it is. */
export interface Formula {
  readonly id: string;
  readonly name: string;
  /** In plain signs; `_{...}` is set below the line, `^{...}` above it. */
  readonly formula: string;
  readonly why: string;
  readonly source: string;
}

const own = 'Our own rule.';
const simulated = 'Our own rule; how often it errs is in the tables below.';

/**
 * Every method that a report may use, in the order of the method page. Letters mean the same throughout: m an
 * average, s a standard deviation, n shots, k contenders, H golfers, d a gap of two averages, t and q the points of
 * Student's t and of the studentized range.
 */
export const formulas: readonly Formula[] = [
  {
    id: 'average',
    name: 'Average and spread',
    formula: 'm = (x_{1} + … + x_{n}) / n;  s^{2} = [(x_{1} − m)^{2} + … + (x_{n} − m)^{2}] / (n − 1)',
    why: 'Every counted shot weighs the same.',
    source: 'Computed as in Chan, Golub and LeVeque 1983.',
  },
  {
    id: 'average-interval',
    name: 'Interval of an average',
    formula: 'm ± t(0.975; n − 1) × s / n^{½}',
    why: 'Which averages would fit the shots.',
    source: 'Student 1908.',
  },
  {
    id: 'two',
    name: 'Gap of two contenders',
    formula:
      'd = m_{a} − m_{b};  d ± t(0.975; f) × w;  w^{2} = u_{a} + u_{b};  u = s^{2} / n;  f = w^{4} / [u_{a}^{2} / (n_{a} − 1) + u_{b}^{2} / (n_{b} − 1)]',
    why: 'Does not ask the two to scatter alike.',
    source: 'Welch 1938; degrees of freedom f by Satterthwaite 1946.',
  },
  {
    id: 'more',
    name: 'Gaps of three to six contenders',
    formula: 'd ± q(0.95; k, f) / 2^{½} × w, with w and f as for two',
    why: 'The intervals of all pairs hold together, however many pairs there are.',
    source: 'Games and Howell 1976.',
  },
  {
    id: 'all',
    name: 'All contenders at once',
    formula:
      'F = {[v_{1} (m_{1} − M)^{2} + … + v_{k} (m_{k} − M)^{2}] / (k − 1)} / [1 + 2 (k − 2) A / (k^{2} − 1)];  v = n / s^{2};  V their sum;  M the average weighted by v;  A the sum of (1 − v / V)^{2} / (n − 1); degrees of freedom k − 1 and (k^{2} − 1) / (3 A)',
    why: 'Says whether any differ; shown beside the pairs and never instead of them.',
    source: 'Welch 1951.',
  },
  {
    id: 'rounding',
    name: 'Readings that hardly vary',
    formula: 's^{2} is at least (step of the file)^{2} / 12',
    why: 'A file that rounds its readings hides a spread of that size.',
    source: 'Variance of an even spread over one step, as in JCGM 100 (2008), 4.3.7, from memory.',
  },
  {
    id: 'two-measures',
    name: 'Two main measures',
    formula: 'each at level 1 − 0.05 / 2',
    why: 'Two chances to be wrong are not to be one more than was promised.',
    source: "Bonferroni's inequality.",
  },
  {
    id: 'verdicts',
    name: 'From an interval to an answer',
    formula:
      'with limits L and U counted towards the one ahead, and M the smallest gap that matters: clear L > M; size unsure L > 0, d at least M, L not above M; no gap that matters −M < L and U < M; cannot tell L < 0 < U otherwise',
    why: 'Fixed before hitting, so that nobody words it afterwards.',
    source:
      'Our own rule; asking a 95\u00a0% interval to lie within ±M is stricter than two one-sided tests (Schuirmann 1987).',
  },
  {
    id: 'lever',
    name: 'What a drift can do to a gap',
    formula:
      'lever = |p_{a} − p_{b}| / (N − 1), p the average place in the order of N shots; a drift of D moves the gap by D × lever',
    why: 'A golfer who warms up or tires makes gaps between equal clubs.',
    source: 'Arithmetic; the limits of 0.25 and half of what matters are our judgement.',
  },
  {
    id: 'usual-strikes',
    name: 'Other way: without the extreme strikes',
    formula:
      'averages without the lowest and highest fifth of the shots; variance of each (n − 1) s_{w}^{2} / [h (h − 1)], h shots kept, s_{w} with each cut shot set to the nearest kept one',
    why: 'Shows whether a few mishits make the answer.',
    source: 'Yuen 1974.',
  },
  {
    id: 'turns',
    name: 'Other way: counted by turns',
    formula:
      'reading = turn + contender + rest, by least squares; d ± q(0.95; k, f) / 2^{½} × its standard error',
    why: 'Takes out what changed from turn to turn.',
    source: 'Two-way analysis of variance without interaction; Tukey 1953, Kramer 1956.',
  },
  {
    id: 'drift',
    name: 'Other way: drift taken out',
    formula: 'reading = contender + b × place + rest, by least squares',
    why: 'Shows what is left of a gap if the golfer changed steadily.',
    source: 'Analysis of covariance with a common slope.',
  },
  {
    id: 'one-shot',
    name: 'Leaving out any one shot',
    formula:
      'd worked out again without each shot; far out: 0.6745 |x − median| / (median of |x − median|) > 3.5',
    why: 'One shot is not to carry an answer unseen.',
    source: 'Jackknife; the limit is that of Iglewicz and Hoaglin 1993, from memory.',
  },
  {
    id: 'reach',
    name: 'The gap that a test finds four times in five',
    formula:
      'the g for which a noncentral t with 2n − 2 degrees of freedom and shift (g / s) (n / 2)^{½} passes q(0.95; k, 2n − 2) / 2^{½} with chance 0.8',
    why: 'Says how large a gap could have stayed hidden. Never worked out from the gap that was seen.',
    source:
      'Noncentral t; exact for two contenders of equal spread, within 2\u00a0% for more from eight shots on (our simulation).',
  },
  {
    id: 'shots-needed',
    name: 'Shots needed',
    formula:
      'the fewest n for which that g is what matters, for both ends of the interval of s, rounded up to 5',
    why: 'The spread is known only roughly, so the number of shots is a range.',
    source: 'As above, with the interval of s below.',
  },
  {
    id: 'spread-interval',
    name: 'Interval of a spread',
    formula:
      'ln(c s^{2}) ± z c [(K − (n − 3) / n) / (n − 1)]^{½}, then half the exponent;  c = n / (n − z);  K the kurtosis about a trimmed average',
    why: 'Golf shots have tails; the usual interval holds 63 to 83 times in 100 with one mishit in ten (our simulation).',
    source: 'Bonett 2006. Not given under eight shots.',
  },
  {
    id: 'luck',
    name: 'What luck makes',
    formula:
      'the average of largest minus smallest of k averages: integral of 1 − F_{1} … F_{k} − (1 − F_{1}) … (1 − F_{k}), F the normal distribution of each with s / n^{½}; and the distance passed in 5 of 100',
    why: 'Even equal clubs have a best and a worst.',
    source: 'Tippett 1925.',
  },
  {
    id: 'steadier',
    name: 'Steadier',
    formula:
      "analysis of variance of |x − median|; each pair's p times the number of pairs not yet passed, smallest p first",
    why: 'Tails that are not normal mislead the usual test of spreads.',
    source: 'Brown and Forsythe 1974; Holm 1979. Not judged under twelve shots.',
  },
  {
    id: 'straighter',
    name: 'Straighter',
    formula: 'the gap of the averages of |side − target line|, as any other gap',
    why: 'Distance from the line is what a golfer pays for, to either side.',
    source: 'Games and Howell 1976.',
  },
  {
    id: 'share',
    name: 'Share within the lane',
    formula: '{p + z^{2} / (2n) ± z [p (1 − p) / n + (z / (2n))^{2}]^{½}} / (1 + z^{2} / n)',
    why: 'Ten of ten is not the same as always.',
    source: 'Wilson 1927.',
  },
  {
    id: 'curve',
    name: 'The curve round the shots',
    formula:
      "all places whose distance from the average, in the shots' own spread (Mahalanobis), is at most [2 (n + 1) (n − 1) / (n (n − 2)) × F(0.9; 2, n − 2)]^{½}",
    why: 'Holds the next shot nine times in ten, not the average.',
    source: 'Hotelling 1931; Chew 1966. Drawn from ten shots up.',
  },
  {
    id: 'few-golfers',
    name: 'Two to five golfers',
    formula:
      "d = the average of the golfers' own gaps; w^{2} = the sum of s^{2} / n over golfers and both contenders, divided by H^{2}; q and f as above",
    why: 'Each golfer counts alike, and nothing is said of others.',
    source: 'Satterthwaite 1946; Games and Howell 1976.',
  },
  {
    id: 'many-golfers',
    name: 'Six golfers or more',
    formula:
      "a golfer's average = golfer + contender + rest; half-width the larger of q(0.95; k, f) / 2^{½} × its standard error and t(0.975; H − 1) s_{d} / H^{½}, s_{d} the spread of the golfers' own gaps",
    why: 'The golfer is the unit, so the answer is about golfers like these.',
    source: 'Tukey 1953, Kramer 1956; Student 1908.',
  },
  {
    id: 'new-golfer',
    name: 'Another golfer',
    formula: 'd ± t(0.975; H − 1) s_{d} (1 + 1 / H)^{½}',
    why: "What another golfer's own test of this length would show.",
    source: 'Prediction interval of one further value (Student 1908).',
  },
  {
    id: 'who-gained',
    name: 'How many gained',
    formula:
      'the chance of a count at least as uneven if each golfer were as likely to gain as not (two-sided binomial)',
    why: 'Seven of eight sounds like more than it is.',
    source: 'Exact sign test; range of the share by Clopper and Pearson 1934.',
  },
  {
    id: 'reports',
    name: 'Several reports together',
    formula:
      "the average of r reports' gaps ± t(0.975; r − 1) × their spread / r^{½}; several reports of one golfer averaged first",
    why: 'Each report counts alike: weighting by size finds gaps that are not there too often.',
    source: 'Student 1908; compared with Hartung and Knapp 2001 by simulation.',
  },
  {
    id: 'equal-speed',
    name: 'At equal club speed',
    formula:
      'd − B × (gap of club speeds); half-width [h_{d}^{2} + (B h_{speed})^{2}]^{½}, B from the flight model',
    why: "A second line, never the first: club speed is partly the club's own doing.",
    source: own,
  },
  {
    id: 'monitor',
    name: "The monitor's own error",
    formula: 'half-width [h^{2} + (1.6 a)^{2}]^{½}, a the stated accuracy to either side',
    why: 'Where an error may differ from club to club, shots cannot average it out.',
    source: 'Even error within ±a for both, JCGM 100 (2008), 4.3.7, from memory.',
  },
  {
    id: 'flight',
    name: 'The flight of a ball',
    formula:
      'force = weight + ½ × density of the air × area × speed^{2} × (drag coefficient against the flight + lift coefficient across it and the spin axis); spin fades with time',
    why: 'For carry where only the launch was read, and for what a difference is worth.',
    source: 'Coefficients: Naruo and Mizota 2004; Smits and Smith 1994; a ball test of 2001.',
  },
  {
    id: 'parts',
    name: 'Parts of a gap in carry',
    formula:
      'a part = the average, over every order of swapping what differed, of the carry with it swapped minus the carry before',
    why: 'No order of swapping is favoured, and the parts add up.',
    source: 'Shapley 1953; ranges from 2,000 seeded draws.',
  },
  {
    id: 'claims',
    name: 'A claim of at least x',
    formula:
      'borne out L > x; weaker than said 0 < L, L not above x, U at least x; contradicted U < x; else not shown',
    why: 'The same interval judges what a shop says.',
    source: simulated,
  },
];
