import type { ContenderMark } from './contenderMarks.ts';
import { ownMark, type Mark } from './mark.ts';
import { paint } from './palette.ts';
import { at, type Spot, type Stretch } from './signs.ts';
import { svgElement } from './svgElement.ts';

/** An ellipse in px; `angle` from the right downwards, radians. */
export interface Outline {
  readonly centre: Spot;
  readonly halfAxes: readonly [number, number];
  readonly angle: number;
}

/** A curve of a contender, in its colour and line pattern. */
export const outlineCurve = (
  { centre: { x, y }, halfAxes: [rx, ry], angle }: Outline,
  { colour, dashes }: ContenderMark,
): Mark =>
  ownMark((document) =>
    svgElement(document, 'ellipse', {
      rx,
      ry,
      transform: `translate(${x},${y}) rotate(${(angle / Math.PI) * 180})`,
      fill: 'none',
      stroke: paint(colour),
      'stroke-width': 2,
      ...(dashes.length === 0 ? {} : { 'stroke-dasharray': dashes.join(' '), 'stroke-linecap': 'round' }),
    }),
  );

/** A straight piece of a contender's line. */
export const lineBetween =
  (from: Spot, to: Spot, { colour, dashes }: ContenderMark): Mark =>
  ({ line }) =>
    line([from, to], {
      ...at([from, to]),
      stroke: paint(colour),
      strokeWidth: 2,
      ...(dashes.length === 0 ? {} : { strokeDasharray: dashes.join(' ') }),
    });

/** A piece of it along the page, as a key. */
export const lineSample = (from: Spot, length: number, mark: ContenderMark): Mark =>
  lineBetween(from, { x: from.x + length, y: from.y }, mark);

/** The bracket: a counted share, of what lies along `stretch`, standing on `y`. */
export const bracket = ({ from, to }: Stretch, y: number): Mark => {
  const corners = [
    { x: from, y: y - 7 },
    { x: from, y },
    { x: to, y },
    { x: to, y: y - 7 },
  ];
  return ({ line }) =>
    line(corners, { ...at(corners), stroke: paint('ink'), strokeWidth: 2, strokeLinejoin: 'miter' });
};

/** Thick points of a line; some renderers leave out those without any length. */
const dotsAt = (spots: readonly Spot[]): string => spots.map(({ x, y }) => `M${x},${y}h.1`).join('');

const grey = {
  stroke: paint('axis'),
  'stroke-width': 3.2,
  'stroke-opacity': 0.7,
  'stroke-linecap': 'round',
} as const;

/** Grey dots: shots of other contenders. */
export const greyDots = (spots: readonly Spot[]): Mark =>
  ownMark((document) => svgElement(document, 'path', { d: dotsAt(spots), ...grey }));

const dotsOf = (contender: number): string => `dots-${contender}`;

/** The dots of every contender, drawn nowhere yet: most are wanted in several panels. */
export const dotsToCopy = (contenders: readonly (readonly Spot[])[]): Mark =>
  ownMark((document) =>
    svgElement(
      document,
      'defs',
      {},
      contenders.map((spots, contender) =>
        svgElement(document, 'path', { id: dotsOf(contender), d: dotsAt(spots) }),
      ),
    ),
  );

/** Those of some contenders, their own origin moved to `to`. */
export const copiedDots = (contenders: readonly number[], to: Spot): Mark =>
  ownMark((document) =>
    svgElement(
      document,
      'g',
      grey,
      contenders.map((contender) => svgElement(document, 'use', { href: `#${dotsOf(contender)}`, ...to })),
    ),
  );
