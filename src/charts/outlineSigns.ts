import { dot, line, type Markish } from '@observablehq/plot';
import type { ContenderMark } from './contenderMarks.ts';
import { paint } from './palette.ts';
import type { Spot, Stretch } from './signs.ts';

/** A closed curve of a contender through `spots`, in its colour and line pattern. */
export const outlineCurve = (spots: readonly Spot[], { colour, dashes }: ContenderMark): Markish =>
  line(spots, {
    x: 'x',
    y: 'y',
    curve: 'linear-closed',
    stroke: paint(colour),
    strokeWidth: 2,
    ...(dashes.length === 0 ? {} : { strokeDasharray: dashes.join(' ') }),
  });

/** A piece of a contender's line, as a key. */
export const lineSample = (from: Spot, length: number, { colour, dashes }: ContenderMark): Markish =>
  line([from, { x: from.x + length, y: from.y }], {
    x: 'x',
    y: 'y',
    stroke: paint(colour),
    strokeWidth: 2,
    ...(dashes.length === 0 ? {} : { strokeDasharray: dashes.join(' ') }),
  });

/** The bracket: a counted share, of what lies along `stretch`, standing on `y`. */
export const bracket = ({ from, to }: Stretch, y: number): Markish =>
  line(
    [
      { x: from, y: y - 7 },
      { x: from, y },
      { x: to, y },
      { x: to, y: y - 7 },
    ],
    { x: 'x', y: 'y', stroke: paint('ink'), strokeWidth: 2, strokeLinejoin: 'miter' },
  );

/** Grey dots: shots of the other contenders. */
export const greyDots = (spots: readonly Spot[]): Markish =>
  spots.length === 0 ? null : dot(spots, { x: 'x', y: 'y', r: 1.6, fill: paint('axis'), fillOpacity: 0.55 });
