import { own, type Formula } from './formula.ts';

/** The monitor and the flight model. */
export const modelFormulas: readonly Formula[] = [
  {
    id: 'equal-speed',
    name: 'At equal club speed',
    lines: ['y − b v'],
    where:
      'The difference of these instead of y, shot by shot: v is club speed, and b runs from the least to the most ' +
      'that the flight model gives. The wider ends of the two are printed.',
    why: 'A second line, never the first: club speed is partly the doing of the club.',
    source: own,
  },
  {
    id: 'monitor',
    name: "The monitor's own error",
    lines: ['\\sqrt{h^2 + {(1.6 a)}^2}'],
    where: 'h is half the width of the range, and a the stated accuracy to either side.',
    why: 'Where an error may differ from club to club, more shots do not average it out.',
    source: 'Even error within a either way for both, JCGM 100 (2008), 4.3.7, from memory.',
  },
  {
    id: 'flight',
    name: 'The flight of a ball',
    lines: ['F_d = \\frac{1}{2} D A c_d v^2', 'F_l = \\frac{1}{2} D A c_l v^2'],
    where:
      'Drag against the flight, lift across it and the spin axis, besides weight; D is the density of the air and A ' +
      'the area of the ball. Spin fades with time.',
    why: 'For carry where only the launch was measured, and for what a difference is worth.',
    source: 'Coefficients: Naruo and Mizota 2004; Smits and Smith 1994; a ball test of 2001.',
  },
  {
    id: 'parts',
    name: 'Parts of a difference in carry',
    lines: ['\\text{part} = \\text{average of } (y_2 − y_1)'],
    where:
      'y is the carry before and after one thing that differed is swapped, over every order of swapping.',
    why: 'No order of swapping is favoured, and the parts add up.',
    source: 'Shapley 1953; ranges from 2,000 seeded draws.',
  },
];
