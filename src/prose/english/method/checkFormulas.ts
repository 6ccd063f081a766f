import type { Formula } from './formula.ts';

/** Order, checks, what a test can see, luck, spread and landing. */
export const checkFormulas: readonly Formula[] = [
  {
    id: 'lever',
    name: 'What a drift can do to a difference',
    lines: ['l = \\frac{\\abs{p_a − p_b}}{N − 1}', 'D_{\\text{needed}} = \\frac{\\abs{d}}{l}'],
    where: 'p is the average place among N shots; a drift of D moves the difference by D times l.',
    why: 'A golfer who warms up or tires makes differences between equal clubs.',
    source: 'Arithmetic; the limits of 0.25 and half of what matters are our judgement.',
  },
  {
    id: 'usual-strikes',
    name: 'Check: without extreme shots',
    lines: ['\\frac{(n − 1) s_w^2}{h (h − 1)}'],
    where:
      'This is the variance of an average without the lowest and highest fifth of the shots; h shots are kept, and s ' +
      'with w below it is the spread with each cut shot set to the nearest kept one.',
    why: 'Shows whether a few mishits make the answer.',
    source: 'Yuen 1974.',
  },
  {
    id: 'rounds',
    name: 'Check: round by round',
    lines: [
      'x = \\text{round} + \\text{thing tested} + \\text{rest}',
      'd ± \\frac{q_{0.95; k, f}}{\\sqrt{2}} w',
    ],
    where: 'Solved by least squares; w is the standard error of d.',
    why: 'Takes out what changed from round to round.',
    source: 'Two-way analysis of variance without interaction; Tukey 1953, Kramer 1956.',
  },
  {
    id: 'drift',
    name: 'Check: allowing for drift',
    lines: ['x = \\text{thing tested} + b p + \\text{rest}'],
    where: 'Solved by least squares; p is the place of the shot.',
    why: 'Shows what is left of a difference if the golfer changed steadily.',
    source: 'Analysis of covariance with a common slope.',
  },
  {
    id: 'one-shot',
    name: 'Leaving out any one shot',
    lines: ['\\frac{0.6745 \\abs{x − \\text{median}}}{\\text{median of } \\abs{x − \\text{median}}} > 3.5'],
    where: 'The difference is calculated again without each shot; this says which shots are far out.',
    why: 'One shot is not to carry an answer unseen.',
    source: 'Jackknife; the limit is that of Iglewicz and Hoaglin 1993, from memory.',
  },
  {
    id: 'reach',
    name: 'The difference found four times in five',
    lines: ['P(T > \\frac{q_{0.95; k, 2n − 2}}{\\sqrt{2}}) = 0.8', 'e = \\frac{g}{s} \\sqrt{\\frac{n}{2}}'],
    where:
      'T has a noncentral t distribution with 2n − 2 degrees of freedom and shift e; g is what we look for. In q the ' +
      'degrees of freedom are those of Welch, and we average over them. By pairs of rounds, both are n − 1. In ' +
      'spells the difference must show between spells too.',
    why: 'Says how large a difference could have stayed hidden. Never calculated from the one that was seen.',
    source:
      'Noncentral t, held against R 4.2.2; exact for two of equal spread, within 2% for more from eight shots on (our simulation).',
  },
  {
    id: 'shots-needed',
    name: 'Shots needed',
    lines: ['\\text{fewest } n \\text{ with } g ≤ M'],
    where: 'For both ends of the range of s, rounded up to 5.',
    why: 'The spread is known only roughly, so the number of shots is a range.',
    source: 'As above, with the range of s below.',
  },
  {
    id: 'spread-interval',
    name: 'Likely range of a spread',
    lines: [
      'c = \\frac{n}{n − z}',
      'h = z c \\sqrt{\\frac{K − (n − 3) / n}{n − 1}}',
      '\\exp ( \\frac{\\ln (c s^2) ± h}{2} )',
    ],
    where: 'K is the kurtosis about a trimmed average, and z is 1.96.',
    why: 'Golf shots have tails; the usual range holds 63 to 83 times in 100 with one mishit in ten (our simulation).',
    source: 'Bonett 2006. Not given under eight shots.',
  },
  {
    id: 'luck',
    name: 'What luck makes',
    lines: ['G = (1 − F_1) … (1 − F_k)', '∫ (1 − F_1 … F_k − G) dx'],
    where:
      'F is the normal distribution of each average, with spread s divided by the root of n. This is the average of ' +
      'largest minus smallest; beside it stands what is passed in 5 tests of 100.',
    why: 'Even equal clubs have a best and a worst.',
    source: 'Tippett 1925.',
  },
  {
    id: 'steadier',
    name: 'More consistent',
    lines: ['z = \\abs{x − \\text{median}}'],
    where:
      "Analysis of variance of z; each pair's p times the number of pairs not yet passed, smallest p first.",
    why: 'Tails that are not normal mislead the usual test of spreads.',
    source: 'Brown and Forsythe 1974; Holm 1979. Not judged under 12 shots.',
  },
  {
    id: 'straighter',
    name: 'More accurate',
    lines: ['z = \\abs{\\text{side} − \\text{target line}}'],
    where: 'The difference of the averages of z, as any other difference.',
    why: 'A golfer pays for distance from the line, to either side.',
    source: 'Games and Howell 1976.',
  },
  {
    id: 'share',
    name: 'Share near the line',
    lines: [
      'h = z \\sqrt{\\frac{p (1 − p)}{n} + \\frac{z^2}{4 n^2}}',
      '\\frac{p + \\frac{z^2}{2n} ± h}{1 + \\frac{z^2}{n}}',
    ],
    where: 'p is the share that was counted, and z is 1.96.',
    why: 'Ten of ten is not the same as always.',
    source: 'Wilson 1927.',
  },
  {
    id: 'curve',
    name: 'The curve round the shots',
    lines: ['\\sqrt{\\frac{2 (n + 1) (n − 1)}{n (n − 2)} F_{0.9; 2, n − 2}}'],
    where: "The largest distance from the average, in the shots' own spread (Mahalanobis).",
    why: 'Should hold nine in ten further shots, not the average.',
    source: 'Hotelling 1931; Chew 1966. Drawn from ten shots up.',
  },
];
