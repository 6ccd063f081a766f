import type { ContenderColour } from './palette.ts';

export type Shape = 'disc' | 'square' | 'triangle' | 'lozenge' | 'cross' | 'hourglass';
type Point = readonly [x: number, y: number];

/** How one contender looks in every chart of a report. */
export interface ContenderMark {
  readonly shape: Shape;
  /** Corners in multiples of the mark's radius, y down; a disc has none. */
  readonly corners: readonly Point[];
  readonly line: 'solid' | 'long dash' | 'dots' | 'dash dot' | 'short dash' | 'dash dot dot';
  /** Dashes and gaps of the 2 px line, px. */
  readonly dashes: readonly number[];
  readonly colour: ContenderColour;
}

/** Half sizes of a mark about its centre, px. */
export interface Extent {
  readonly left: number;
  readonly right: number;
  readonly up: number;
  readonly down: number;
}

const box = (halfWidth: number, up: number, down: number): readonly Point[] => [
  [-halfWidth, -up],
  [halfWidth, -up],
  [halfWidth, down],
  [-halfWidth, down],
];

const arm = 0.375;
const reach = 1.2;

/** Shape and line first, colour third: in grey the six differ by shape and line alone. In the order contenders are listed. */
export const contenderMarks: readonly ContenderMark[] = [
  { shape: 'disc', corners: [], line: 'solid', dashes: [], colour: 'umber' },
  {
    shape: 'square',
    corners: box(0.8875, 0.8875, 0.8875),
    line: 'long dash',
    dashes: [14, 4],
    colour: 'bluebell',
  },
  {
    shape: 'triangle',
    corners: [
      [0, -1.25],
      [1.15, 0.85],
      [-1.15, 0.85],
    ],
    line: 'dots',
    dashes: [2.5, 3],
    colour: 'pine',
  },
  {
    shape: 'lozenge',
    corners: [
      [0, -1.425],
      [0.9375, 0],
      [0, 1.425],
      [-0.9375, 0],
    ],
    line: 'dash dot',
    dashes: [12, 3, 2.5, 3],
    colour: 'rose',
  },
  {
    shape: 'cross',
    corners: [
      [-arm, -reach],
      [arm, -reach],
      [arm, -arm],
      [reach, -arm],
      [reach, arm],
      [arm, arm],
      [arm, reach],
      [-arm, reach],
      [-arm, arm],
      [-reach, arm],
      [-reach, -arm],
      [-arm, -arm],
    ],
    line: 'short dash',
    dashes: [5.5, 4],
    colour: 'heather',
  },
  {
    shape: 'hourglass',
    corners: [
      [-1.0625, -1.2],
      [1.0625, -1.2],
      [0.25, 0],
      [1.0625, 1.2],
      [-1.0625, 1.2],
      [-0.25, 0],
    ],
    line: 'dash dot dot',
    dashes: [10, 3, 2.5, 3, 2.5, 3],
    colour: 'lichen',
  },
];

/** The mark of the contender listed at `index`, counted from 0. Throws for a seventh contender. */
export const contenderMark = (index: number): ContenderMark => {
  const mark = contenderMarks[index];
  if (mark === undefined)
    throw new Error(`There are marks for ${contenderMarks.length} contenders, not for number ${index + 1}.`);
  return mark;
};

/** How far a mark of the given radius reaches from its centre, without outline. */
export const markExtent = (mark: ContenderMark, radius: number): Extent => {
  if (mark.corners.length === 0) return { left: radius, right: radius, up: radius, down: radius };
  const across = mark.corners.map(([x]) => x * radius);
  const along = mark.corners.map(([, y]) => y * radius);
  return {
    left: -Math.min(...across),
    right: Math.max(...across),
    up: -Math.min(...along),
    down: Math.max(...along),
  };
};
