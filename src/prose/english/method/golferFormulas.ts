import type { Formula } from './formula.ts';

/** Several golfers, and several reports. */
export const golferFormulas: readonly Formula[] = [
  {
    id: 'few-golfers',
    name: 'Two to five golfers',
    lines: [
      'd = \\frac{d_1 + … + d_H}{H}',
      'w^2 = \\frac{w_1^2 + … + w_H^2}{H^2}',
      'd ± \\frac{q_{0.95; k, f}}{\\sqrt{2}} w',
    ],
    where: "The d and w with a number are each golfer's own, as for two.",
    why: 'Each golfer counts alike, and nothing is said of others.',
    source: 'Satterthwaite 1946; Games and Howell 1976.',
  },
  {
    id: 'golfers-differ',
    name: 'Two golfers whose differences differ',
    lines: ['(d_1 − d_2) ± t_{1 − 0.025 / c; f} \\sqrt{w_1^2 + w_2^2}'],
    where: 'c counts the pairs of golfers.',
    why: 'Of many pairs of golfers, some would differ by luck alone.',
    source: "Welch 1938; Bonferroni's inequality.",
  },
  {
    id: 'many-golfers',
    name: 'Six golfers or more',
    lines: [
      'x = \\text{golfer} + \\text{thing tested} + \\text{rest}',
      '\\frac{q_{0.95; k, f}}{\\sqrt{2}} w \\text{ or } t_{0.975; H − 1} \\frac{s_d}{\\sqrt{H}}',
    ],
    where:
      "x is a golfer's average. To either side goes the larger of the two, with s with d below it the spread of the " +
      "golfers' own differences.",
    why: 'Golfers are counted and not shots, so the answer is about golfers like these.',
    source: 'Tukey 1953, Kramer 1956; Student 1908.',
  },
  {
    id: 'new-golfer',
    name: 'Another golfer',
    lines: ['d ± t_{0.975; H − 1} s_d \\sqrt{1 + \\frac{1}{H}}'],
    where: null,
    why: "What another golfer's own test of this length could show.",
    source: 'Prediction interval of one further value (Student 1908).',
  },
  {
    id: 'who-gained',
    name: 'How many gained',
    lines: ['P(X ≥ x) + P(X ≤ H − x)'],
    where:
      'X has a binomial distribution with H golfers, each as likely to gain as not; x is the larger count.',
    why: 'Seven of eight sounds like more than it is.',
    source: 'Exact sign test; range of the share by Clopper and Pearson 1934.',
  },
  {
    id: 'reports',
    name: 'Several reports combined',
    lines: ['d ± t_{0.975; r − 1} \\frac{s_d}{\\sqrt{r}}'],
    where: 'Over r reports; several reports of one golfer are averaged first.',
    why: 'Each report counts alike: weighting by size finds too many differences that are not there.',
    source: 'Student 1908; compared with Hartung and Knapp 2001 by simulation.',
  },
];
