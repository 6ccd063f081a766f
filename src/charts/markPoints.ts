import { markExtent, type ContenderMark } from './contenderMarks.ts';
import type { Spot } from './signs.ts';

const outside = 2;

/**
 * A mark's outline at one radius, px from its centre: corners as x, y, x, y, none for a disc. Points are asked for a million times a
 * report, so that they and corners lie in plain rows of numbers.
 */
export interface Outline {
  readonly radius: number;
  readonly corners: readonly number[];
}

export const outlineOf = ({ corners }: ContenderMark, radius: number): Outline => ({
  radius,
  corners: corners.flatMap(([x, y]) => [x * radius, y * radius]),
});

/** Whether a point so far from the centre, px, lies in an outline, by the even-odd rule. */
const holds = ({ radius, corners }: Outline, across: number, along: number): boolean => {
  const squared = across * across + along * along;
  const last = corners.length - 2;
  if (last < 0) return squared <= radius * radius;
  // No mark of radius 1 reaches so far: said before the corners are gone through, which takes most of the time of a crowd.
  if (squared > outside * outside * radius * radius) return false;
  let within = false;
  let startX = corners[last] ?? Number.NaN;
  let startY = corners[last + 1] ?? Number.NaN;
  for (let at = 0; at <= last; at += 2) {
    const endX = corners[at] ?? Number.NaN;
    const endY = corners[at + 1] ?? Number.NaN;
    if (
      startY > along !== endY > along &&
      across < startX + ((along - startY) / (endY - startY)) * (endX - startX)
    )
      within = !within;
    startX = endX;
    startY = endY;
  }
  return within;
};

/** Places, px, as x, y, x, y. */
export type Points = readonly number[];

const gridShares = Array.from({ length: 12 }, (_, step) => (step + 0.5) / 12);

/** Cells of a grid over a mark, by their middles as shares of its width and height: across, along, across, along. */
interface Cells {
  readonly inside: readonly number[];
  /** Those of which the digits of a place decide. */
  readonly onEdge: readonly number[];
}

/** Far more than digits can move a point of a mark of radius 1, and far less than anything of its shape. */
const edge = 1e-6;

const makeCells = (mark: ContenderMark): Cells => {
  const { left, right, up, down } = markExtent(mark, 1);
  const outline = outlineOf(mark, 1);
  const inside: number[] = [];
  const onEdge: number[] = [];
  for (const across of gridShares)
    for (const along of gridShares) {
      const [x, y] = [across * (left + right) - left, along * (up + down) - up];
      const held = [-edge, edge].flatMap((dx) => [-edge, edge].map((dy) => holds(outline, x + dx, y + dy)));
      if (held.every(Boolean)) inside.push(across, along);
      else if (held.some(Boolean)) onEdge.push(across, along);
    }
  return { inside, onEdge };
};

const cellsMade = new WeakMap<ContenderMark, Cells>();

const cellsOf = (mark: ContenderMark): Cells => {
  const cells = cellsMade.get(mark) ?? makeCells(mark);
  cellsMade.set(mark, cells);
  return cells;
};

/** Points all over a mark. */
export const pointsOf = ({ x, y }: Spot, mark: ContenderMark, radius: number): Points => {
  const { left, right, up, down } = markExtent(mark, radius);
  const { inside, onEdge } = cellsOf(mark);
  const points: number[] = [];
  for (let at = 0; at < inside.length; at += 2)
    points.push(
      x - left + (inside[at] ?? Number.NaN) * (left + right),
      y - up + (inside[at + 1] ?? Number.NaN) * (up + down),
    );
  if (onEdge.length === 0) return points;
  const outline = outlineOf(mark, radius);
  for (let at = 0; at < onEdge.length; at += 2) {
    const pointX = x - left + (onEdge[at] ?? Number.NaN) * (left + right);
    const pointY = y - up + (onEdge[at + 1] ?? Number.NaN) * (up + down);
    if (holds(outline, pointX - x, pointY - y)) points.push(pointX, pointY);
  }
  return points;
};

/** Those of the points that a mark leaves to be seen. */
export const uncoveredBy = (spot: Spot, outline: Outline, points: Points): Points => {
  const left: number[] = [];
  for (let at = 0; at < points.length; at += 2) {
    const x = points[at] ?? Number.NaN;
    const y = points[at + 1] ?? Number.NaN;
    if (!holds(outline, x - spot.x, y - spot.y)) left.push(x, y);
  }
  return left;
};
