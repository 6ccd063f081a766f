import type { ContenderMark } from './contenderMarks.ts';
import { outlineOf, pointsOf, uncoveredBy, type Outline, type Points } from './markPoints.ts';
import type { Spot } from './signs.ts';

/** A shot's mark at a place that may not be moved. */
export interface PlacedMark extends Spot {
  readonly mark: ContenderMark;
}

/** A mark with the radius it is drawn with, px. */
export type SizedMark<Placed extends PlacedMark = PlacedMark> = Placed & { readonly radius: number };

/** The hair of paper round a mark, px. */
const outline = 0.5;
/** Share of a mark that must show. */
const shows = 1 / 4;
/** Radii tried for a chart, px: the usual one, and smaller ones for crowds. */
const radii = [4.5, 3.8, 3.2, 2.7, 2.2] as const;
/** Of a mark that stands on another one, px. */
const leastOnTop = 1;
/** From more marks on, how they cover one another is not weighed. */
export const mostWeighed = 1000;
/** Marks that may be drawn smaller than the rest: one in so many. */
const rest = 5;

/** Spots by squares of the page, px wide: those within that distance of a spot lie in its square or the eight round it. */
const cells = (width: number) => {
  const rows = new Map<number, Map<number, number[]>>();
  const square = ({ x, y }: Spot): readonly [number, number] => [
    Math.floor(x / width),
    Math.floor(y / width),
  ];
  return {
    add: (spot: Spot, place: number): void => {
      const [column, row] = square(spot);
      const own = rows.get(row) ?? new Map<number, number[]>();
      rows.set(row, own);
      const there = own.get(column) ?? [];
      own.set(column, there);
      there.push(place);
    },
    near: (spot: Spot): readonly number[] => {
      const [column, row] = square(spot);
      return [-1, 0, 1].flatMap((down) =>
        [-1, 0, 1].flatMap((right) => rows.get(row + down)?.get(column + right) ?? []),
      );
    },
  };
};

/** Furthest a mark of radius 1 reaches from its centre. */
const furthest = 1.5;

/** Radii of marks drawn in this order: one that would hide too much of what lies under it is drawn smaller. */
const stacked = (placed: readonly PlacedMark[], radius: number): readonly number[] => {
  const sizes: number[] = [];
  const uncovered: Points[] = [];
  const whole: number[] = [];
  const { near, add } = cells(furthest * (2 * radius + outline));
  for (const [index, mark] of placed.entries()) {
    let size = radius;
    const under = near(mark).filter((place) => {
      const { x, y } = placed[place] ?? mark;
      return Math.hypot(x - mark.x, y - mark.y) < furthest * (radius + outline + (sizes[place] ?? radius));
    });
    add(mark, index);
    const leftOf = (place: number, cover: Outline): Points =>
      uncoveredBy(mark, cover, uncovered[place] ?? []);
    const hides = (cover: Outline): boolean =>
      under.some((place) => leftOf(place, cover).length < shows * (whole[place] ?? 0));
    let cover = outlineOf(mark.mark, size + outline);
    while (size > leastOnTop && hides(cover)) {
      size *= 0.9;
      cover = outlineOf(mark.mark, size + outline);
    }
    for (const place of under) uncovered[place] = leftOf(place, cover);
    const points = pointsOf(mark, mark.mark, size);
    sizes.push(size);
    uncovered.push(points);
    whole.push(points.length);
  }
  return sizes;
};

/** What a radius leads to: the radii of each panel's marks, and what speaks against them. */
interface Tried {
  readonly sizes: readonly (readonly number[])[];
  /** Marks that still hide one another. */
  readonly hidden: number;
  /** Marks drawn smaller beyond one in five, in the panel that has most of them, times five. */
  readonly smaller: number;
}

const tryRadius = (panels: readonly (readonly PlacedMark[])[], radius: number): Tried => {
  const sizes = panels.map((panel) => stacked(panel, radius));
  const smaller = sizes.map((panel) => panel.filter((size) => size < radius));
  return {
    sizes,
    hidden: smaller.flat().filter((size) => size <= leastOnTop).length,
    smaller: Math.max(0, ...smaller.map((found, at) => found.length * rest - (sizes[at]?.length ?? 0))),
  };
};

const isBetter = (one: Tried, other: Tried): boolean =>
  one.hidden < other.hidden || (one.hidden === other.hidden && one.smaller < other.smaller);

/**
 * Radii for marks at their true places, so that a quarter of every one shows: each panel's marks in order of drawing. All have one radius of
 * five, the largest that serves, but a mark that would hide the one under it shrinks until that one shows round it. Only from about five
 * shots on one spot up can one be hidden all the same. More than 1,000 marks, a grey area in any case, all have the smallest radius, and how
 * much of each shows is not looked at.
 */
export const truePlaces = <Placed extends PlacedMark>(
  panels: readonly (readonly Placed[])[],
): readonly (readonly SizedMark<Placed>[])[] => {
  const marks = panels.reduce((sum, { length }) => sum + length, 0);
  if (marks > mostWeighed)
    return panels.map((panel) => panel.map((placed) => ({ ...placed, radius: radii[4] })));
  let best: Tried | null = null;
  for (const radius of radii) {
    const tried = tryRadius(panels, radius);
    if (best === null || isBetter(tried, best)) best = tried;
    if (best.hidden === 0 && best.smaller === 0) break;
  }
  return panels.map((panel, at) =>
    panel.map((placed, index) => ({ ...placed, radius: best?.sizes[at]?.[index] ?? radii[0] })),
  );
};
